package org.standproud.audit.chain;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks an exported chain on any machine, with only the file, a key and checkpoints. */
@Command(
    name = "verify",
    description = {
      "Checks an exported chain of records.",
      "With the public key: was anything changed, and between which checkpoints?",
      "With the chain key too: which record was changed, deleted, moved or inserted?",
      "Exit code 0 for an intact chain, 1 for a broken one, 2 if it could not be checked."
    },
    mixinStandardHelpOptions = true)
public final class CheckChain implements Callable<Integer> {

  private static final int WHOLE = 0;
  private static final int BROKEN = 1;
  private static final int NOT_CHECKED = 2;

  @Spec private @Nullable CommandSpec spec;

  @Parameters(index = "0", paramLabel = "EXPORT", description = "the exported chain, NDJSON")
  private @Nullable Path export;

  @Option(
      names = "--public-key",
      required = true,
      paramLabel = "FILE",
      description = "public half of a key that signs checkpoints; may be repeated")
  private List<Path> publicKeys = List.of();

  @Option(
      names = "--checkpoints",
      paramLabel = "FILE",
      description = "checkpoints kept elsewhere; may be repeated")
  private List<Path> checkpoints = List.of();

  @Option(names = "--chain-key", paramLabel = "FILE", description = "the key that seals records")
  private @Nullable Path chainKey;

  /** Creates the command; picocli sets its arguments. */
  public CheckChain() {}

  /** Checks the file and prints the report. */
  @Override
  public Integer call() {
    PrintWriter out =
        spec == null
            ? new PrintWriter(System.out, false, Charset.defaultCharset())
            : spec.commandLine().getOut();
    int outcome = check(out);
    out.flush();
    return outcome;
  }

  private int check(PrintWriter out) {
    Path file = export;
    if (file == null) {
      return NOT_CHECKED;
    }
    try {
      refuseMissing(file);
      List<VerifyingKey> signers = publicKeys.stream().map(VerifyingKey::read).toList();
      ChainCheck check = new PublicCheck(signers);
      if (chainKey != null) {
        check = new ChainVerifier(new ChainKeyFile(chainKey).open(), signers);
      }
      List<String> outside = new ArrayList<>();
      checkpoints.forEach(c -> outside.addAll(new CheckpointFile(c).lines()));
      return print(ChainExport.verify(file, check, outside), out);
    } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException e) {
      out.println("not checked: " + e.getMessage());
      return NOT_CHECKED;
    }
  }

  private void refuseMissing(Path file) {
    Stream<Path> keys = chainKey == null ? Stream.of() : Stream.of(chainKey);
    Stream.of(Stream.of(file), publicKeys.stream(), checkpoints.stream(), keys)
        .flatMap(s -> s)
        .filter(Files::notExists)
        .findFirst()
        .ifPresent(
            missing -> {
              throw new IllegalArgumentException(missing + " does not exist");
            });
  }

  private static int print(ChainReport report, PrintWriter out) {
    for (ChainFault fault : report.faults()) {
      out.printf(
          "%s at %d to %d: %s%n", fault.kind(), fault.first(), fault.last(), fault.explanation());
    }
    out.printf(
        "%d intact record(s), the last at position %d; %s%n",
        report.intact(), report.last(), report.whole() ? "the chain is intact" : "IT IS BROKEN");
    return report.whole() ? WHOLE : BROKEN;
  }
}

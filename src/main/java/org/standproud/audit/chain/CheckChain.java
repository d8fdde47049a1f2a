package org.standproud.audit.chain;

import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Checks an exported chain on any machine, with nothing but the file, the key and checkpoints. */
public final class CheckChain {

  private static final int WHOLE = 0;
  private static final int BROKEN = 1;
  private static final int NOT_CHECKED = 2;

  private CheckChain() {}

  /**
   * Checks and says what was found; ends with 0 for a whole chain, 1 for a broken one, 2 when the
   * check could not be made.
   *
   * @param arguments export file, key file, any number of checkpoint files
   */
  public static void main(String[] arguments) {
    System.exit(check(Arrays.asList(arguments), System.out));
  }

  static int check(List<String> arguments, PrintStream out) {
    if (arguments.size() < 2) {
      out.println("usage: CheckChain <export.ndjson> <chain.key> [<checkpoints.ndjson> ...]");
      return NOT_CHECKED;
    }
    try {
      List<Path> files = arguments.stream().map(Path::of).toList();
      for (Path file : files) {
        if (Files.notExists(file)) {
          out.println(file + " does not exist");
          return NOT_CHECKED;
        }
      }
      List<String> outside = new ArrayList<>();
      files.subList(2, files.size()).forEach(f -> outside.addAll(new CheckpointFile(f).lines()));
      ChainKey key = new ChainKeyFile(files.get(1)).open();
      return tell(ChainExport.verify(files.get(0), key, outside), out);
    } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException e) {
      out.println("not checked: " + e.getMessage());
      return NOT_CHECKED;
    }
  }

  private static int tell(ChainReport report, PrintStream out) {
    for (ChainFault fault : report.faults()) {
      out.printf(
          "%s at %d to %d: %s%n", fault.kind(), fault.first(), fault.last(), fault.explanation());
    }
    out.printf(
        "%d record(s) as they were written, the last in place %d; %s%n",
        report.intact(), report.last(), report.whole() ? "the chain is whole" : "IT IS BROKEN");
    return report.whole() ? WHOLE : BROKEN;
  }
}

package org.standproud.command.records;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.h2.tools.Restore;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.records.ChainImport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Restores records and verifies their chain. */
@Command(
    name = "restore",
    description = {
      "Restores a file of backup (.zip) or export (any other name), then checks the chain.",
      "Put the keys and checkpoints of the service into the audit directory first. Nothing that"
          + " exists",
      "is overwritten."
    },
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {

  @Spec private @Nullable CommandSpec spec;
  @Mixin private Store store = new Store();

  @Parameters(index = "0", paramLabel = "FILE", description = "the file of backup or export")
  private Path file = Path.of("standproud.zip");

  @Override
  public Integer call() {
    if (Files.notExists(file) || Files.notExists(store.directory().resolve("chain.key"))) {
      throw new IllegalStateException(
          file + " and the keys in " + store.directory() + " must exist");
    }
    if (!file.toString().endsWith(".zip")) {
      store.migrate();
      ChainImport in = new ChainImport(store.dataSource(), store.seal());
      ChainReport read = in.read(file, store.checkpoints().lines());
      return read.whole() ? print(store.verify()) : print(read);
    }
    if (!store.inFiles() || Files.exists(store.file())) {
      throw new IllegalStateException(store.file() + " already exists");
    }
    Restore.execute(file.toString(), store.directory().toString(), "standproud");
    store.migrate();
    return print(store.verify());
  }

  private int print(ChainReport report) {
    PrintWriter out =
        spec == null
            ? new PrintWriter(System.out, false, Charset.defaultCharset())
            : spec.commandLine().getOut();
    report.faults().forEach(f -> out.println(f.kind() + " at " + f.first() + " to " + f.last()));
    out.println(report.intact() + " intact record(s)");
    out.flush();
    return report.whole() ? AuditCommand.WELL : AuditCommand.FOUND;
  }
}

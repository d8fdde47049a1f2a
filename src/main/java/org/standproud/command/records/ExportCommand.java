package org.standproud.command.records;

import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import org.standproud.audit.records.Records;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes the whole chain to a file, from either kind of database. */
@Command(
    name = "export",
    description = "Writes the whole chain as NDJSON, to be checked elsewhere or restored.",
    mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {

  @Mixin private Store store = new Store();

  @Parameters(index = "0", paramLabel = "FILE", description = "a file that does not exist yet")
  private Path file = Path.of("chain.ndjson");

  @Override
  public Integer call() throws Exception {
    store.migrate();
    try (Records records = store.records();
        Writer out = Files.newBufferedWriter(file, StandardOpenOption.CREATE_NEW)) {
      records.export(out);
    }
    return AuditCommand.WELL;
  }
}

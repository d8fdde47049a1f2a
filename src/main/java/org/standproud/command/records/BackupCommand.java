package org.standproud.command.records;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.springframework.jdbc.core.JdbcTemplate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Backs up an embedded database. */
@Command(
    name = "backup",
    description = {
      "Backs up the database in the audit directory to a zip file; the service must be stopped.",
      "Keys and checkpoints are not included: keep them apart. For PostgreSQL use pg_dump, for"
          + " either",
      "kind, while it runs, GET /v1/audit/chain."
    },
    mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {

  @Mixin private Store store = new Store();

  @Parameters(index = "0", paramLabel = "FILE", description = "a zip file that does not exist yet")
  private Path file = Path.of("standproud.zip");

  @Override
  public Integer call() {
    if (!store.inFiles()) {
      throw new IllegalStateException("a PostgreSQL database is backed up with pg_dump");
    }
    if (Files.notExists(store.file()) || Files.exists(file)) {
      throw new IllegalStateException(
          store.file() + " must exist, and " + file + " must not exist yet");
    }
    new JdbcTemplate(store.dataSource()).update("backup to ?", file.toAbsolutePath().toString());
    return AuditCommand.WELL;
  }
}

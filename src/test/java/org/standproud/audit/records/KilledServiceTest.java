package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.IntegrationTest;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.chain.ChainReport;

/**
 * Ends a service as kill -9 does, again and again on the same database. {@code
 * -Dtest.kill.rounds=200 -Dtest.kill.seed=7} makes it longer and different.
 */
@IntegrationTest
class KilledServiceTest {

  private static final int ROUNDS = Integer.getInteger("test.kill.rounds", 5);
  private static final int MOST_READ = 40;

  private @TempDir Path directory;

  @Test
  @DisplayName("a service killed at any moment has every record it acknowledged, whole and chained")
  void aServiceKilledAtAnyMomentHasEveryRecordItAcknowledgedWholeAndChained() throws Exception {
    Random moment = new Random(Long.getLong("test.kill.seed", 20260302L));
    Set<Stored> acknowledged = new HashSet<>();
    for (int round = 0; round < ROUNDS; round++) {
      List<Stored> heard = killAfterHearing(1 + moment.nextInt(MOST_READ));
      acknowledged.addAll(heard);
      assertKept(heard, acknowledged.size());
    }
    assertKept(List.copyOf(acknowledged), acknowledged.size());
  }

  private List<Stored> killAfterHearing(int count) throws IOException, InterruptedException {
    Process service =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", // Starts faster; what is tested is the disk.
                "-cp",
                System.getProperty("java.class.path"),
                AppendsUntilKilled.class.getName(),
                directory.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    List<Stored> heard = new ArrayList<>();
    try (BufferedReader lines = service.inputReader()) {
      String line;
      while ((line = lines.readLine()) != null) {
        // What was said before the end counts too, but a line cut short was not said.
        if (line.endsWith(" .")) {
          heard.add(stored(line));
        }
        if (heard.size() == count) {
          // By its handle, because Process.destroyForcibly closes the pipe that is still to be
          // read.
          service.toHandle().destroyForcibly();
        }
      }
    } finally {
      service.destroyForcibly().waitFor();
    }
    assertThat(heard).as("heard before the end").hasSizeGreaterThanOrEqualTo(count);
    return heard;
  }

  private void assertKept(List<Stored> expected, int atLeast) {
    JdbcConnectionPool database = AppendsUntilKilled.database(directory);
    try (Records records = AppendsUntilKilled.open(database, directory)) {
      for (Stored stored : expected) {
        StoredRecord found = records.find(stored.id()).orElseThrow();
        assertThat(found.stored()).isEqualTo(stored);
        assertThat(found.record().findings()).extracting(RecordedFinding::kind).hasSize(2);
        assertThat(AuditRecord.from(found.record().body())).isEqualTo(found.record());
      }
      assertThat(recordsWithoutTheirKey(database)).isZero();
      ChainReport report = records.verify();
      assertThat(report.faults()).isEmpty();
      assertThat(report.intact()).isGreaterThanOrEqualTo(atLeast);
    } finally {
      database.dispose(); // Lets go of the file for the next round.
    }
  }

  /** A foreign key sees to it that no key is without its record. */
  private static long recordsWithoutTheirKey(JdbcConnectionPool database) {
    return JdbcClient.create(database)
        .sql(
            "select count(*) from audit_record"
                + " where id not in (select record_id from idempotency_key)")
        .query(Long.class)
        .single();
  }

  private static Stored stored(String line) {
    String[] parts = line.split(" ");
    return new Stored(UUID.fromString(parts[0]), Long.parseLong(parts[1]), parts[2]);
  }
}

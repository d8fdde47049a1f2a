package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.advice.DemoShop;
import org.standproud.api.RunningService;
import org.standproud.assessment.Assessor;
import org.standproud.audit.AuditRecord;

/** The demonstration set-ups, which the dictionary was not trained on. */
@IntegrationTest
class RecordBytesTest {

  private static final int MOST_BYTES = 8 * 1024;

  @Test
  void aRecordTakesAtMostEightKilobytes() throws IOException, InterruptedException {
    List<AuditRecord> records = new ArrayList<>();
    Assessor assessor =
        new Assessor(
            () -> DemoShop.CATALOGUE,
            () -> DemoShop.CARDS,
            job -> List.of(),
            (record, numbers) -> records.add(record),
            "0.5.0",
            Clock.systemUTC());
    for (Path setup : RunningService.seedFiles()) {
      assessor.assess(Files.readString(setup), "demo");
    }
    assertThat(records).hasSize(12);
    for (AuditRecord record : records) {
      byte[] packed = PackedText.of(record.body());
      assertThat(packed.length).as(record.judged().verdict()).isLessThan(MOST_BYTES);
      assertThat(PackedText.text(packed)).isEqualTo(record.body().text());
    }
  }
}

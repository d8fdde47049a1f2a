package org.standproud.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;

class AuditRecordTest {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00.123456789Z");

  @Test
  void aRecordReadBackIsTheRecordThatWasWritten() {
    AuditRecord stopped = SampleRecords.stopped("J-1", SEVEN);
    AuditRecord passed = SampleRecords.passed(SEVEN);

    assertThat(AuditRecord.from(stopped.body())).isEqualTo(stopped);
    assertThat(AuditRecord.from(passed.body())).isEqualTo(passed);
  }

  @Test
  void theTextOfARecordIsCanonicalAsAWhole() {
    CanonicalJson body = SampleRecords.stopped("J-1", SEVEN).body();

    assertThat(CanonicalJson.parse(body.text())).isEqualTo(body);
  }

  @Test
  void theAnswerStandsInTheRecordByteForByte() {
    AuditRecord record = SampleRecords.stopped("J-1", SEVEN);

    assertThat(record.body().text()).contains("\"answer\":" + record.account().answer().text());
  }

  @Test
  void timeIsKeptToTheMicrosecondAsBothDatabasesKeepIt() {
    assertThat(SampleRecords.passed(SEVEN).time())
        .isEqualTo(Instant.parse("2026-03-02T07:00:00.123456Z"));
  }

  // UUID version 7, RFC 9562 section 5.7 [memory]: 48 bits of time lead, then version 7, variant 2.
  @Test
  void idsMadeOneAfterAnotherSortInThatOrder() {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < 5_000; i++) {
      UUID id = AuditRecord.newId();
      assertThat(id.version()).isEqualTo(7);
      assertThat(id.variant()).isEqualTo(2);
      ids.add(id.toString());
    }

    List<String> sorted = new ArrayList<>(ids);
    Collections.sort(sorted);
    assertThat(ids).isEqualTo(sorted).doesNotHaveDuplicates();
  }

  @Test
  void wordsThatNoColumnHoldsAreRefusedBeforeTheyReachADatabase() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Asked("page", "J".repeat(201), null, null, null))
        .withMessageContaining("job order");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Asked("pa\u0000ge", null, null, null, null))
        .withMessageContaining("caller");
    assertThatIllegalArgumentException().isThrownBy(() -> new RecordedFinding(" ", "stop", "fail"));
  }

  @Test
  void aScoreOffItsScaleIsRefused() {
    assertThat(new Judged("not judged", null).score()).isNull();
    assertThatIllegalArgumentException().isThrownBy(() -> new Judged("run", 100.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Judged("run", Double.NaN));
  }

  @Test
  void aTextThatIsNoRecordIsRefused() {
    assertThat(
            org.assertj.core.api.Assertions.catchThrowable(
                () -> AuditRecord.from(CanonicalJson.parse("{\"id\":5}"))))
        .isInstanceOf(NotCanonical.class)
        .hasMessageContaining("not a record");
  }
}

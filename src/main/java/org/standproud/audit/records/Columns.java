package org.standproud.audit.records;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.Judged;
import org.standproud.audit.RecordType;
import org.standproud.audit.Versions;
import org.standproud.audit.Withdrawal;

/** The columns of a row, copied from its record for searching. */
record Columns(
    String recordType,
    UUID id,
    @Nullable UUID about,
    OffsetDateTime recordedAt,
    @Nullable String caller,
    @Nullable String jobOrder,
    @Nullable String workMaster,
    @Nullable String operation,
    @Nullable String machine,
    @Nullable String verdict,
    @Nullable Double score,
    @Nullable String ruleBase,
    @Nullable String catalogue,
    @Nullable String engine) {

  /** Replaces a value that cannot be trusted. */
  static final String ALTERED = "not as it was sealed";

  Columns {
    recordedAt = recordedAt.withOffsetSameInstant(ZoneOffset.UTC);
  }

  static Columns of(ChainRecord record) {
    if (record instanceof AuditRecord answer) {
      return of(answer);
    } else if (record instanceof Acceptance given) {
      return of(record, given.assessment(), given.jobOrder());
    } else if (record instanceof Withdrawal withdrawal) {
      return of(record, withdrawal.acceptance(), null);
    }
    return of(record, null, null);
  }

  private static Columns of(ChainRecord record, @Nullable UUID about, @Nullable String jobOrder) {
    return new Columns(
        RecordType.of(record).word(),
        record.id(),
        about,
        utc(record.time()),
        null,
        jobOrder,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private static Columns of(AuditRecord record) {
    return new Columns(
        RecordType.ASSESSMENT.word(),
        record.id(),
        null,
        utc(record.time()),
        record.asked().caller(),
        record.asked().jobOrder(),
        record.asked().workMaster(),
        record.asked().operation(),
        record.asked().machine(),
        record.judged().verdict(),
        record.judged().score(),
        record.versions().ruleBase(),
        record.versions().catalogue(),
        record.versions().engine());
  }

  /**
   * Position and columns as one text; each is prefixed with its length, so that the text is unique.
   */
  String filing(long sequence) {
    StringBuilder text = new StringBuilder(Long.toString(sequence));
    Stream.of(
            recordType,
            id,
            about,
            recordedAt.toInstant(),
            caller,
            jobOrder,
            workMaster,
            operation,
            machine,
            verdict,
            score,
            ruleBase,
            catalogue,
            engine)
        .forEach(
            column -> {
              String word = column == null ? "" : column.toString();
              text.append('\n')
                  .append(column == null ? -1 : word.length())
                  .append(' ')
                  .append(word);
            });
    return text.toString();
  }

  /** What can be shown of a record that is not as sealed. */
  Columns altered() {
    return new Columns(
        recordType,
        id,
        about,
        recordedAt,
        ALTERED,
        null,
        null,
        null,
        null,
        ALTERED,
        null,
        ALTERED,
        ALTERED,
        ALTERED);
  }

  RecordSummary summary(long sequence, String seal) {
    return new RecordSummary(
        new Stored(id, sequence, seal),
        recordedAt.toInstant(),
        new Asked(kept(caller), jobOrder, workMaster, operation, machine),
        new Judged(kept(verdict), score),
        new Versions(kept(ruleBase), kept(catalogue), kept(engine)));
  }

  private static String kept(@Nullable String word) {
    return Objects.requireNonNull(word, "every assessment has it");
  }

  private static OffsetDateTime utc(Instant time) {
    return time.atOffset(ZoneOffset.UTC);
  }
}

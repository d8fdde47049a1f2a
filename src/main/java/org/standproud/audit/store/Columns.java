package org.standproud.audit.store;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Judged;
import org.standproud.audit.Versions;

/** What a row repeats of its record, named as the columns are, so that it can be searched. */
record Columns(
    UUID id,
    OffsetDateTime recordedAt,
    String caller,
    @Nullable String jobOrder,
    @Nullable String workMaster,
    @Nullable String operation,
    @Nullable String machine,
    String verdict,
    @Nullable Double score,
    String ruleBase,
    String catalogue,
    String engine) {

  Columns {
    recordedAt = recordedAt.withOffsetSameInstant(ZoneOffset.UTC);
  }

  static Columns of(AuditRecord record) {
    return new Columns(
        record.id(),
        record.time().atOffset(ZoneOffset.UTC),
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

  RecordSummary summary(long sequence, String seal) {
    return new RecordSummary(
        new Stored(id, sequence, seal),
        recordedAt.toInstant(),
        new Asked(caller, jobOrder, workMaster, operation, machine),
        new Judged(verdict, score),
        new Versions(ruleBase, catalogue, engine));
  }
}

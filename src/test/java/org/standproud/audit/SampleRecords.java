package org.standproud.audit;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;

/** Records as a shop would leave them, made up for tests. */
public final class SampleRecords {

  private SampleRecords() {}

  /** A tall plate asked about by a mill hand and stopped. */
  public static AuditRecord stopped(String jobOrder, Instant time) {
    return record(
        AuditRecord.newId(),
        time,
        new Asked("traveler", jobOrder, "WM-7", "20", "knee mill 2"),
        new Judged("do not run", 12.5),
        List.of(
            new RecordedFinding("holding-tall-plate", "stop", "fail"),
            new RecordedFinding("direction-lengthwise-bite", "caution", "pass")));
  }

  /** A low block asked about without a job, and let run. */
  public static AuditRecord passed(Instant time) {
    return record(
        AuditRecord.newId(),
        time,
        new Asked("page", null, null, null, null),
        new Judged("run", 91.0),
        List.of(new RecordedFinding("holding-tall-plate", "stop", "pass")));
  }

  /** A record with every part chosen by the test. */
  public static AuditRecord record(
      UUID id, Instant time, Asked asked, Judged judged, List<RecordedFinding> findings) {
    return new AuditRecord(
        id,
        time,
        asked,
        judged,
        new Versions("rules-1", "catalogue-1", "0.1.0"),
        new RecordPayload(
            CanonicalJson.parse("{\"units\":\"metric\",\"stick-out\":47.50}"),
            CanonicalJson.parse("{\"stickOutM\":0.0475,\"material\":\"P\"}"),
            new Results.Short(
                CanonicalJson.parse(
                    "{\"cards\":{\"holding-tall-plate\":true},\"facts\":{\"lift\":[1e-7,2E+3]}}")),
            CanonicalJson.parse("{\"id\":\"" + id + "\",\"say\":\"\u00d8 10 \u20ac\\u0000\"}")),
        findings);
  }
}

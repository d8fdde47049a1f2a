package org.standproud.audit;

import com.github.f4b6a3.uuid.UuidCreator;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * One answer with everything it stood on, enough to explain it and to give it again.
 *
 * @param id record id, printed on the traveler
 * @param time when the answer was made, to the microsecond
 * @param asked who asked, about what
 * @param judged the answer in short
 * @param versions what the answer was made with
 * @param account the answer in full
 * @param findings the result of each card, in the answer's order
 */
public record AuditRecord(
    UUID id,
    Instant time,
    Asked asked,
    Judged judged,
    Versions versions,
    RecordPayload account,
    List<RecordedFinding> findings)
    implements ChainRecord {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  /** Cuts the time to what both databases keep. */
  public AuditRecord {
    time = time.truncatedTo(ChronoUnit.MICROS);
    findings = List.copyOf(findings);
  }

  /**
   * A new record id: UUID version 7 of RFC 9562, so that ids sort by the time they were made.
   *
   * @return an id never given before
   */
  public static UUID newId() {
    return UuidCreator.getTimeOrderedEpoch();
  }

  @Override
  public CanonicalJson body() {
    return CanonicalJson.object(
        Map.of(
            "id", kept(id),
            "time", kept(time),
            "asked", kept(asked),
            "judged", kept(judged),
            "versions", kept(versions),
            "findings", kept(findings),
            "account",
                CanonicalJson.object(
                    Map.of(
                        "request", account.request(),
                        "setup", account.setup(),
                        "evidence", account.evidence(),
                        "trace", account.trace(),
                        "answer", account.answer()))));
  }

  /**
   * Reads a record back.
   *
   * @param body what {@link #body()} wrote
   * @return the record
   * @throws NotCanonical when the text is no record
   */
  public static AuditRecord from(CanonicalJson body) {
    try {
      return MAPPER.treeToValue(body.tree(), AuditRecord.class);
    } catch (JacksonException e) {
      throw new NotCanonical("not a record: " + e.getOriginalMessage());
    }
  }

  private static CanonicalJson kept(Object part) {
    return CanonicalJson.of(MAPPER.valueToTree(part));
  }
}

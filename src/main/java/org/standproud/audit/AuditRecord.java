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
 * One answer with everything it is based on, enough to explain and replay it.
 *
 * @param id record id, printed on the traveler
 * @param time time of the answer, to the microsecond
 * @param asked caller and job
 * @param judged verdict and score
 * @param versions the versions that produced it
 * @param account the answer with its inputs
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

  /** Truncates the time to what both databases store. */
  public AuditRecord {
    time = time.truncatedTo(ChronoUnit.MICROS);
    findings = List.copyOf(findings);
  }

  /**
   * A new record id: UUID version 7 of RFC 9562, so that ids sort by creation time.
   *
   * @return a new id
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
            "account", account.text()));
  }

  /**
   * Reads a record.
   *
   * @param body the text from {@link #body()}
   * @return the record
   * @throws NotCanonical if the text is not a record
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

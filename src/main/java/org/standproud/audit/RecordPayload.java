package org.standproud.audit;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The answer with its inputs, part by part.
 *
 * @param request the request as sent
 * @param setup the set-up with names resolved by the catalogue
 * @param results what was computed and judged
 * @param answer the answer as sent
 */
public record RecordPayload(
    CanonicalJson request, CanonicalJson setup, Results results, CanonicalJson answer) {

  private static final String REQUEST = "request";
  private static final String SETUP = "setup";
  private static final String RESULTS = "results";
  private static final String EVIDENCE = "evidence";
  private static final String TRACE = "trace";
  private static final String ANSWER = "answer";

  /** Refuses a missing part. */
  public RecordPayload {
    Objects.requireNonNull(request, REQUEST);
    Objects.requireNonNull(setup, SETUP);
    Objects.requireNonNull(results, RESULTS);
    Objects.requireNonNull(answer, ANSWER);
  }

  @JsonCreator
  static RecordPayload from(
      @JsonProperty(REQUEST) CanonicalJson request,
      @JsonProperty(SETUP) CanonicalJson setup,
      @JsonProperty(RESULTS) @Nullable CanonicalJson results,
      @JsonProperty(EVIDENCE) @Nullable CanonicalJson evidence,
      @JsonProperty(TRACE) @Nullable CanonicalJson trace,
      @JsonProperty(ANSWER) CanonicalJson answer) {
    return new RecordPayload(
        request,
        setup,
        results != null
            ? new Results.Short(results)
            : new Results.Full(
                Objects.requireNonNull(evidence, EVIDENCE), Objects.requireNonNull(trace, TRACE)),
        answer);
  }

  /** The parts by their names in the sealed text. */
  CanonicalJson text() {
    Map<String, CanonicalJson> parts = new TreeMap<>();
    parts.put(REQUEST, request);
    parts.put(SETUP, setup);
    if (results instanceof Results.Full full) {
      parts.put(EVIDENCE, full.evidence());
      parts.put(TRACE, full.trace());
    } else if (results instanceof Results.Short brief) {
      parts.put(RESULTS, brief.text());
    }
    parts.put(ANSWER, answer);
    return CanonicalJson.object(parts);
  }
}

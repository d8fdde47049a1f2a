package org.standproud.events;

import io.cloudevents.CloudEvent;
import io.cloudevents.core.builder.CloudEventBuilder;
import io.cloudevents.types.Time;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.Withdrawal;
import org.standproud.audit.Withholding;
import org.standproud.audit.replay.KeptRuleBase;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Something that happened. It links to the details, and contains no more of the job than is needed
 * to file it.
 *
 * @param type its type
 * @param id id of the record or revision, the same however often it is sent
 * @param time time of the event
 * @param data the data for the subscriber
 */
record Event(EventType type, String id, Instant time, Map<String, @Nullable Object> data) {

  private static final JsonMapper JSON = JsonMapper.shared();

  /** The event of a new record. */
  static Event of(ChainRecord record) {
    if (record instanceof AuditRecord answer) {
      return of(EventType.ASSESSMENT_JUDGED, record, judged(answer));
    } else if (record instanceof Acceptance given) {
      return of(EventType.FINDING_ACCEPTED, record, accepted(given));
    } else if (record instanceof Withdrawal taken) {
      return of(EventType.ACCEPTANCE_WITHDRAWN, record, data("acceptance", taken.acceptance()));
    }
    Withholding withheld = (Withholding) record;
    return of(EventType.RECORDS_WITHHELD, record, data("records", withheld.taken().size()));
  }

  /** The event of a rule base that goes into service. */
  static Event of(KeptRuleBase kept) {
    Map<String, @Nullable Object> data = data("ruleBase", kept.revision().id());
    data.put("cards", kept.cards().size());
    data.put("author", kept.revision().author());
    data.put("note", kept.revision().note());
    return new Event(
        EventType.RULE_BASE_PUBLISHED, kept.revision().id(), kept.revision().time(), data);
  }

  /**
   * Converts it to a CloudEvent 1.0 in structured JSON mode.
   *
   * @param source the source attribute of this service
   */
  String json(URI source) {
    CloudEvent event =
        CloudEventBuilder.v1()
            .withId(id)
            .withSource(source)
            .withType(type.code())
            .withSubject(id)
            .withTime(time.atOffset(ZoneOffset.UTC))
            .withData("application/json", JSON.writeValueAsBytes(data))
            .build();
    ObjectNode written = JSON.createObjectNode();
    written.put("specversion", event.getSpecVersion().toString());
    for (String name : event.getAttributeNames()) {
      written.put(name, text(event.getAttribute(name)));
    }
    byte[] bytes = Objects.requireNonNull(event.getData()).toBytes();
    written.set("data", JSON.readTree(new String(bytes, StandardCharsets.UTF_8)));
    return written.toString();
  }

  private static String text(@Nullable Object attribute) {
    return attribute instanceof OffsetDateTime time
        ? Time.writeTime(time)
        : String.valueOf(attribute);
  }

  private static Event of(EventType type, ChainRecord record, Map<String, @Nullable Object> data) {
    return new Event(type, record.id().toString(), record.time(), data);
  }

  private static Map<String, @Nullable Object> judged(AuditRecord answer) {
    Map<String, @Nullable Object> data = data("assessment", answer.id());
    data.put("jobOrder", answer.asked().jobOrder());
    data.put("workMaster", answer.asked().workMaster());
    data.put("operation", answer.asked().operation());
    data.put("verdict", answer.judged().verdict());
    data.put("score", answer.judged().score());
    data.put("ruleBase", answer.versions().ruleBase());
    data.put("self", "/v1/assessments/" + answer.id());
    data.values().removeIf(Objects::isNull);
    return data;
  }

  private static Map<String, @Nullable Object> accepted(Acceptance given) {
    Map<String, @Nullable Object> data = data("acceptance", given.id());
    data.put("assessment", given.assessment());
    data.put("jobOrder", given.jobOrder());
    data.put("card", given.card());
    data.put("severity", given.severity());
    data.put("role", given.by().role());
    data.put("expires", given.expires().toString());
    data.put("self", "/v1/assessments/" + given.assessment() + "/acceptances");
    data.values().removeIf(Objects::isNull);
    return data;
  }

  private static Map<String, @Nullable Object> data(String name, Object value) {
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    data.put(name, value);
    return data;
  }
}

package org.standproud.web.recorded;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.standproud.advice.Grade;
import org.standproud.assessment.AssessmentDocument;
import org.standproud.assessment.ResultsInShort;
import org.standproud.assessment.TraceDocument;
import org.standproud.audit.RecordPayload;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.SourceKind;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import org.standproud.setup.request.CanonicalText;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * A recorded assessment read back from storage. Nothing is computed again, so that page and sheet
 * show the original answer.
 *
 * @param setup the set-up, names resolved
 * @param answer the answer
 * @param evidence the values of its facts
 * @param margins how far each finding was from flipping, by card id
 */
public record RecordedAnswer(
    Setup setup,
    AssessmentDocument answer,
    Evidence evidence,
    Map<String, TraceDocument.Distance> margins) {

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .addModule(
              new SimpleModule("words read")
                  .addDeserializer(UnitSystem.class, new ByWords<>(UnitSystem.values()))
                  .addDeserializer(Grade.class, new ByWords<>(Grade.values()))
                  .addDeserializer(SourceKind.class, new ByWords<>(SourceKind.values())))
          .build();

  /** Copies the map. */
  public RecordedAnswer {
    margins = Map.copyOf(margins);
  }

  /**
   * Reads a record.
   *
   * @param account the recorded payload
   */
  public static RecordedAnswer of(RecordPayload account) {
    ResultsInShort results = ResultsInShort.read(account.results());
    return new RecordedAnswer(
        CanonicalText.setup(account.setup().text()),
        MAPPER.readValue(account.answer().text(), AssessmentDocument.class),
        results.evidence(),
        results.margins());
  }

  /** The time of the assessment, to the minute. */
  public String made() {
    return MINUTE.format(answer.time());
  }

  /** Finds an enum constant by its words. */
  private static final class ByWords<E extends Worded> extends ValueDeserializer<E> {

    private final List<E> choices;

    ByWords(E[] choices) {
      this.choices = List.of(choices);
    }

    @Override
    public E deserialize(JsonParser parser, DeserializationContext context) {
      String words = parser.getString();
      return choices.stream()
          .filter(choice -> choice.words().equals(words))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no such recorded choice: " + words));
    }
  }
}

package org.standproud.assessment;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.request.FieldPointer;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * All evidence, in SI units and unrounded.
 *
 * @param facts every fact
 * @param shortened what is left out and why, where a later program computes other numbers than the
 *     record; absent if it is whole
 */
public record EvidenceDocument(List<FactLine> facts, @Nullable String shortened) {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

  /** The facts of this program by name. */
  static final Map<String, Fact> FACTS =
      Vocabulary.all().stream().collect(Collectors.toMap(Fact::name, Function.identity()));

  /**
   * A fact with its formula and inputs.
   *
   * @param value its value
   * @param formula the class of its formula, or that the request states it
   * @param inputs the fields of the request it is computed from
   * @param assumptions the assumptions made
   */
  public record FactLine(
      FactValue value, String formula, List<FieldPointer> inputs, List<Assumption> assumptions) {}

  static EvidenceDocument of(Evidence evidence) {
    return new EvidenceDocument(
        evidence.values().stream().map(EvidenceDocument::line).toList(), null);
  }

  /** The evidence of a record that has it in full, including facts this program does not know. */
  static EvidenceDocument kept(CanonicalJson kept) {
    return MAPPER.readValue(kept.text(), EvidenceDocument.class);
  }

  private static FactLine line(EvidenceValue value) {
    return new FactLine(
        FactValue.of(value.fact(), value.value()),
        value.fact().formula(),
        value.inputs(),
        value.assumptions());
  }
}

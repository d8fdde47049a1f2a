package org.standproud.api.assessing;

import java.util.List;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;

/**
 * All evidence for one set-up, in SI units and unrounded, in the order of the vocabulary.
 *
 * @param facts every fact
 */
public record EvidenceAccount(List<FactLine> facts) {

  /**
   * One fact with what it stood on.
   *
   * @param value its value
   * @param formula what gave it
   * @param inputs the request paths or other facts it was computed from
   * @param assumptions what was assumed on the way
   */
  public record FactLine(
      FactValue value, String formula, List<String> inputs, List<Assumption> assumptions) {}

  static EvidenceAccount of(Evidence evidence) {
    return new EvidenceAccount(evidence.values().stream().map(EvidenceAccount::line).toList());
  }

  private static FactLine line(EvidenceValue value) {
    return new FactLine(
        FactValue.of(value.fact(), value.value()),
        value.fact().formula(),
        value.inputs(),
        value.assumptions());
  }
}

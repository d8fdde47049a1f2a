package org.standproud.advice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Reading;

/** The inputs that are missing and that a card needs. */
final class MissingInputs {

  private MissingInputs() {}

  /** What to measure or state for one card, in the order in which the card reads its facts. */
  static List<String> of(CardTrace card, Evidence evidence) {
    return of(
        card.conditions().stream()
            .flatMap(condition -> condition.read().stream())
            .map(Reading::fact)
            .toList(),
        evidence);
  }

  /** What to measure or state for some facts, in their order. */
  static List<String> of(List<Fact> facts, Evidence evidence) {
    Set<String> measures = new LinkedHashSet<>();
    facts.stream().map(evidence::detail).forEach(value -> collect(value, measures));
    return List.copyOf(measures);
  }

  private static void collect(EvidenceValue value, Set<String> measures) {
    if (value.value() instanceof Value.Missing missing && !missing.letsGo()) {
      measures.add(missing.measure());
    }
    for (Assumption assumption : value.assumptions()) {
      String measure = assumption.measure();
      if (measure != null) {
        measures.add(measure);
      }
    }
  }
}

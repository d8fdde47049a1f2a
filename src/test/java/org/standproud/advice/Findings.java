package org.standproud.advice;

import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/** Findings of the demonstration set-ups, and of a set-up of which nothing is known. */
final class Findings {

  static final Evidence NOTHING = new Evidence(List.of());

  private static final List<CardTrace> ALL = all();

  private Findings() {}

  private static List<CardTrace> all() {
    List<CardTrace> all = new ArrayList<>();
    for (String name : DemoShop.names()) {
      Evidence evidence = EvidenceGathering.of(DemoShop.setup(name));
      all.addAll(DemoShop.CARDS.evaluate(evidence).findings());
    }
    all.addAll(DemoShop.CARDS.evaluate(NOTHING).findings());
    return all;
  }

  static List<CardTrace> everything() {
    return ALL;
  }

  static CardTrace sure(Severity severity) {
    return ALL.stream()
        .filter(f -> f.severity() == severity && f.truth() == Truth.TRUE)
        .findFirst()
        .orElseThrow();
  }

  static CardTrace open(Severity severity) {
    return ALL.stream()
        .filter(f -> f.severity() == severity && f.kind() == Kind.OPEN)
        .findFirst()
        .orElseThrow();
  }
}

package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.Changed;
import org.standproud.rules.trace.Kind;

/** Kind and severity of each card, from what the engine found. */
final class Weighing {

  private final Network.Outcome outcome;
  private final Readings readings;
  private final Judgements judgements;
  private final Map<String, List<Changed>> changes = new HashMap<>();

  Weighing(List<CompiledCard> cards, Network.Outcome outcome, Readings readings) {
    this.outcome = outcome;
    this.readings = readings;
    this.judgements = name -> outcome.judgements().getOrDefault(name, Truth.UNKNOWN);
    if (outcome.acted().isEmpty()) {
      return;
    }
    for (CompiledCard card : cards) {
      SeverityChange change = card.card().change();
      if (change != null && outcome.acted().contains(card.id())) {
        changes
            .computeIfAbsent(change.card().text(), id -> new ArrayList<>())
            .add(new Changed(card.id(), change.overrides(), change.to(), change.because()));
      }
    }
  }

  Readings readings() {
    return readings;
  }

  Judgements judgements() {
    return judgements;
  }

  /** Every judgement with its truth. */
  Map<String, Truth> judged() {
    return outcome.judgements();
  }

  /** Whether the engine has a finding of the card. */
  boolean flagged(CompiledCard card) {
    return outcome.flagged().contains(card.id());
  }

  List<Changed> changed(CompiledCard card) {
    return changes.getOrDefault(card.id(), List.of());
  }

  /** The gravest override counts; without one, the easing that leaves the finding gravest. */
  Severity severity(CompiledCard card) {
    List<Changed> changed = changed(card);
    if (changed.isEmpty()) {
      return card.card().severity();
    }
    boolean overridden = changed.stream().anyMatch(Changed::overrides);
    return changed.stream()
        .filter(c -> c.overrides() == overridden)
        .map(Changed::to)
        .max(Severity::compareTo)
        .orElse(card.card().severity());
  }

  static Kind kind(Card card, Truth applies, Truth truth) {
    if (applies == Truth.FALSE) {
      return Kind.NOT_APPLICABLE;
    }
    return switch (truth) {
      case TRUE, EITHER -> card.flags() ? Kind.FAIL : Kind.INFORMATIONAL;
      case FALSE -> Kind.PASS;
      case UNKNOWN -> Kind.OPEN;
    };
  }

  /** The short answer; a flagging card the engine has no finding of is not looked at again. */
  CardKind kind(CompiledCard card) {
    Truth applies = card.applies(readings);
    boolean quiet = card.card().flags() && !flagged(card);
    Truth truth = quiet ? Truth.FALSE : card.truth(readings, judgements);
    Kind kind = kind(card.card(), applies, truth);
    boolean finding = card.card().flags() && (kind == Kind.FAIL || kind == Kind.OPEN);
    return new CardKind(card.id(), kind, truth, severity(card), finding);
  }
}

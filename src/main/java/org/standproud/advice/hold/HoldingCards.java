package org.standproud.advice.hold;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.holding.other.ClampedMargins;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;
import org.standproud.setup.Band;

/**
 * The cards that set limits to the margins of a hold, whatever holds the stock: those that protect
 * holding and read a margin, themselves or through a judgement, and nothing of jaws or packing.
 */
final class HoldingCards {

  private static final Set<Fact> MARGINS =
      Set.of(
          Vocabulary.SLIP_MARGIN,
          Vocabulary.LIFT_MARGIN,
          Vocabulary.TIP_MARGIN_FIXED,
          Vocabulary.TIP_MARGIN_MOVABLE,
          Vocabulary.HOLDING_MARGIN);

  private static final Set<Fact> OF_THE_VISE =
      Set.of(
          Vocabulary.FIXED_JAW_PACKING,
          Vocabulary.MOVABLE_JAW_PACKING,
          Vocabulary.FIXED_PACKING_DEPTH,
          Vocabulary.MOVABLE_PACKING_DEPTH,
          Vocabulary.BEST_PACKING_DEPTH,
          Vocabulary.JAW_SURFACE,
          Vocabulary.JAW_HEIGHT,
          Vocabulary.JAW_WIDTH);

  private final RuleBase ruleBase;
  private final Set<String> ids;

  HoldingCards(RuleBase ruleBase) {
    this.ruleBase = ruleBase;
    Set<String> judgements =
        ruleBase.cards().stream()
            .filter(card -> card.card().derives() != null && reads(card, MARGINS))
            .map(HoldingCards::derived)
            .collect(Collectors.toSet());
    this.ids =
        ruleBase.cards().stream()
            .filter(card -> card.card().flags() && card.card().protects() == Protects.HOLDING)
            .filter(card -> !reads(card, OF_THE_VISE))
            .filter(
                card ->
                    reads(card, MARGINS) || !Collections.disjoint(card.judgements(), judgements))
            .map(CompiledCard::id)
            .collect(Collectors.toSet());
  }

  private static String derived(CompiledCard card) {
    return card.card().derives() == null ? "" : card.card().derives().text();
  }

  private static boolean reads(CompiledCard card, Set<Fact> facts) {
    return !Collections.disjoint(new HashSet<>(card.facts()), facts);
  }

  /** The cards asked. */
  Set<String> ids() {
    return ids;
  }

  /** What the cards say of evidence with other margins in it, gravest first. */
  List<CardTrace> findings(Evidence evidence) {
    return ruleBase.evaluate(evidence).findings().stream()
        .filter(finding -> ids.contains(finding.id()))
        .filter(finding -> finding.severity() != Severity.NOTE)
        .sorted((a, b) -> b.severity().compareTo(a.severity()))
        .toList();
  }

  /** Evidence of the cut with the margins and the standing height of another hold in it. */
  static Evidence with(Evidence evidence, ClampedMargins margins, double standsM, double backedM) {
    return evidence.with(
        List.of(
            value(Vocabulary.SLIP_MARGIN, margins.slipMargin()),
            value(Vocabulary.LIFT_MARGIN, margins.liftMargin()),
            value(Vocabulary.TIP_MARGIN_FIXED, margins.tipMarginTowardSupport()),
            value(Vocabulary.TIP_MARGIN_MOVABLE, margins.tipMarginAway()),
            value(Vocabulary.HOLDING_MARGIN, margins.combinedMargin()),
            value(Vocabulary.STICK_OUT, Band.exactly(standsM)),
            value(Vocabulary.GRIP_DEPTH, Band.exactly(backedM))));
  }

  private static EvidenceValue value(Fact fact, Band band) {
    return new EvidenceValue(fact, new Value.Quantity(band), List.of("another hold"), List.of());
  }
}

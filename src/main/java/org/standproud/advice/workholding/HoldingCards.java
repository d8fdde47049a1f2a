package org.standproud.advice.workholding;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;

/**
 * The cards that apply to a job in any hold: all but those that read facts of jaws and packing,
 * directly or through a judgement.
 */
final class HoldingCards {

  private static final Set<Fact> OF_THE_VISE =
      Set.of(
          Vocabulary.FIXED_JAW_PACKING,
          Vocabulary.MOVABLE_JAW_PACKING,
          Vocabulary.FIXED_PACKING_DEPTH,
          Vocabulary.MOVABLE_PACKING_DEPTH,
          Vocabulary.BEST_PACKING_DEPTH,
          Vocabulary.JAW_SURFACE,
          Vocabulary.JAW_HEIGHT,
          Vocabulary.JAW_WIDTH,
          Vocabulary.EXIT_OVERHANG,
          Vocabulary.RACKING_RATIO,
          Vocabulary.LOAD_JAW,
          Vocabulary.FIRST_CONTACT_JAW,
          Vocabulary.MAY_ROCK,
          Vocabulary.CONTACT_RATIO,
          Vocabulary.CONTACT_LENGTH,
          Vocabulary.JAW_GAP_DEPTH,
          Vocabulary.TURNING_STIFFNESS_FIXED,
          Vocabulary.TURNING_STIFFNESS_MOVABLE,
          Vocabulary.NO_GAP_MARGIN,
          Vocabulary.JAW_PRESSURE_RATIO,
          Vocabulary.CLAMP_BOW,
          Vocabulary.SEAT,
          Vocabulary.VISE_RUN_OUT,
          Vocabulary.VISE_FORCE,
          Vocabulary.STATED_CLAMPING_FORCE);

  private final RuleBase ruleBase;
  private final Set<String> asked;
  private final Set<String> notAsked;

  HoldingCards(RuleBase ruleBase) {
    this.ruleBase = ruleBase;
    Set<String> ofTheVise =
        ruleBase.cards().stream()
            .filter(card -> reads(card, OF_THE_VISE))
            .map(HoldingCards::derived)
            .collect(Collectors.toSet());
    this.notAsked =
        ids(ruleBase.cards().stream().filter(card -> isOfTheVise(card, ofTheVise)).toList());
    this.asked = ids(ruleBase.cards());
    this.asked.removeAll(notAsked);
  }

  private static boolean isOfTheVise(CompiledCard card, Set<String> judgements) {
    return reads(card, OF_THE_VISE) || !Collections.disjoint(card.judgements(), judgements);
  }

  private static Set<String> ids(List<CompiledCard> cards) {
    return cards.stream()
        .filter(card -> card.card().flags())
        .map(CompiledCard::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String derived(CompiledCard card) {
    return card.card().derives() == null ? "" : card.card().derives().text();
  }

  private static boolean reads(CompiledCard card, Set<Fact> facts) {
    return !Collections.disjoint(new HashSet<>(card.facts()), facts);
  }

  /** The cards used, in the order of their ids. */
  Set<String> asked() {
    return asked;
  }

  /** The cards that read facts of jaws and packing, in the order of their ids. */
  Set<String> notAsked() {
    return notAsked;
  }

  /** The outcome of the cards for a job held another way. */
  List<CardTrace> findings(Evidence evidence) {
    return ruleBase.evaluate(evidence).findings().stream()
        .filter(finding -> asked.contains(finding.id()))
        .toList();
  }
}

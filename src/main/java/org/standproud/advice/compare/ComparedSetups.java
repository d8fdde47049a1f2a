package org.standproud.advice.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Adviser;
import org.standproud.advice.HoldReserve;
import org.standproud.advice.Score;
import org.standproud.advice.Verdict;
import org.standproud.advice.Wording;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Setup;

/**
 * Two set-ups judged by the same cards, in the units of the first.
 *
 * @param changes the fields that differ
 * @param verdictBefore verdict of the first
 * @param verdictAfter verdict of the second
 * @param scoreBefore score of the first
 * @param scoreAfter score of the second
 * @param moves how each finding of either moves, worst first
 */
public record ComparedSetups(
    List<FieldChange> changes,
    Verdict verdictBefore,
    Verdict verdictAfter,
    int scoreBefore,
    int scoreAfter,
    List<FindingMove> moves) {

  /** Copies the lists. */
  public ComparedSetups {
    changes = List.copyOf(changes);
    moves = List.copyOf(moves);
  }

  /**
   * Compares two set-ups.
   *
   * @param before the one
   * @param after the other
   * @param ruleBase the cards
   */
  public static ComparedSetups of(Setup before, Setup after, RuleBase ruleBase) {
    Evidence from = EvidenceGathering.of(before);
    Evidence to = EvidenceGathering.of(after);
    RuleTrace was = ruleBase.evaluate(from);
    RuleTrace is = ruleBase.evaluate(to);
    Wording wording = new Wording(before.units());
    return new ComparedSetups(
        SetupFields.changes(before, after),
        Adviser.verdict(was, from),
        Adviser.verdict(is, to),
        Score.of(was.findings(), HoldReserve.of(from)).whole(),
        Score.of(is.findings(), HoldReserve.of(to)).whole(),
        moves(was.cards(), is.cards(), wording));
  }

  /** Both traces list every card of one revision in the same order. */
  private static List<FindingMove> moves(List<CardTrace> was, List<CardTrace> is, Wording wording) {
    return IntStream.range(0, was.size())
        .filter(i -> was.get(i).isFinding() || is.get(i).isFinding())
        .mapToObj(i -> move(was.get(i), is.get(i), wording))
        .sorted(Comparator.comparing(FindingMove::move).thenComparing(FindingMove::card))
        .toList();
  }

  private static FindingMove move(CardTrace was, CardTrace is, Wording wording) {
    return new FindingMove(
        was.id(),
        was.card().title(),
        move(was, is),
        severity(was),
        severity(is),
        Reserve.of(was, wording),
        Reserve.of(is, wording));
  }

  private static Move move(CardTrace was, CardTrace is) {
    if (!was.isFinding() || !is.isFinding()) {
      return is.isFinding() ? Move.NEW : Move.GONE;
    }
    int graver = is.severity().compareTo(was.severity());
    if (graver == 0) {
      return Objects.equals(severity(was), severity(is))
          ? Move.STAYS
          : Score.share(is.kind(), is.severity()) < Score.share(was.kind(), was.severity())
              ? Move.GRAVER
              : Move.EASED;
    }
    return graver > 0 ? Move.GRAVER : Move.EASED;
  }

  private static @Nullable String severity(CardTrace card) {
    return card.isFinding() ? card.severity().words() + " (" + card.kind().words() + ")" : null;
  }
}

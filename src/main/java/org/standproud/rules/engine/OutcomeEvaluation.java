package org.standproud.rules.engine;

import java.util.List;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.Kind;

/** An evaluation that keeps the outcome of each card without reasons. */
final class OutcomeEvaluation extends Evaluation {

  private final List<CompiledCard> cards;
  private final DrawTruth[] applies;
  private final DrawTruth[] truths;

  OutcomeEvaluation(List<CompiledCard> cards, Readings readings) {
    super(readings);
    this.cards = cards;
    applies = new DrawTruth[cards.size()];
    truths = new DrawTruth[cards.size()];
  }

  @Override
  DrawTruth early(int card) {
    CompiledCard compiled = cards.get(card);
    applies[card] = compiled.applies(readings());
    truths[card] =
        applies[card].isFalse()
            ? DrawTruth.FALSE
            : applies[card].and(compiled.onFacts().evaluate(readings(), Judgements.NONE));
    return truths[card];
  }

  @Override
  DrawTruth whole(int card, Judgements judgements) {
    truths[card] =
        truths[card].and(cards.get(card).onJudgements().evaluate(readings(), judgements));
    return truths[card];
  }

  /**
   * The outcome of a card. Conditions that the engine did not evaluate are evaluated here: it skips
   * those of a card excluded by a word of the set-up, or without a finding to change.
   */
  CardKind kind(int card, SeverityResolver weighing) {
    CompiledCard compiled = cards.get(card);
    if (truths[card] == null) {
      early(card);
    }
    DrawTruth truth =
        truths[card].isFalse() || !compiled.judges() ? truths[card] : whole(card, this::judged);
    Kind kind = SeverityResolver.kind(compiled.card(), applies[card], truth, weighing.level(card));
    boolean finding = compiled.card().flags() && kind.isFinding();
    return new CardKind(compiled.id(), kind, truth, weighing.severity(card), finding);
  }
}

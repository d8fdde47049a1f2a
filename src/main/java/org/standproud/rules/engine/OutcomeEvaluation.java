package org.standproud.rules.engine;

import java.util.List;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.Kind;

/** A hearing that keeps what each card comes to and no reasons. */
final class OutcomeEvaluation extends Evaluation {

  private final List<CompiledCard> cards;
  private final Truth[] applies;
  private final Truth[] truths;

  OutcomeEvaluation(List<CompiledCard> cards, Readings readings) {
    super(readings);
    this.cards = cards;
    applies = new Truth[cards.size()];
    truths = new Truth[cards.size()];
  }

  @Override
  Truth early(int card) {
    CompiledCard compiled = cards.get(card);
    applies[card] = compiled.applies(readings());
    truths[card] =
        applies[card] == Truth.FALSE
            ? Truth.FALSE
            : applies[card].and(compiled.onFacts().evaluate(readings(), Judgements.NONE));
    return truths[card];
  }

  @Override
  Truth whole(int card, Judgements judgements) {
    truths[card] =
        truths[card].and(cards.get(card).onJudgements().evaluate(readings(), judgements));
    return truths[card];
  }

  /**
   * What a card came to. What the engine did not ask of it is asked here: it does not when the
   * words of the set-up keep the card out, or when there is no finding that it could change.
   */
  CardKind kind(int card, SeverityResolver weighing) {
    CompiledCard compiled = cards.get(card);
    if (truths[card] == null) {
      early(card);
    }
    Truth truth =
        truths[card] == Truth.FALSE || !compiled.judges()
            ? truths[card]
            : whole(card, this::judged);
    Kind kind = SeverityResolver.kind(compiled.card(), applies[card], truth);
    boolean finding = compiled.card().flags() && (kind == Kind.FAIL || kind == Kind.OPEN);
    return new CardKind(compiled.id(), kind, truth, weighing.severity(card), finding);
  }
}

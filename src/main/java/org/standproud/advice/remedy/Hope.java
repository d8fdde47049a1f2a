package org.standproud.advice.remedy;

import java.util.List;
import org.standproud.advice.trial.Judged;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;

/**
 * How near a set-up is to being right, to order the search only: the logarithm of its score and of
 * the least of each margin. Two set-ups that fail on the same cards differ by it; no answer rests
 * on it.
 */
final class Hope {

  private static final List<Fact> MARGINS =
      List.of(
          Vocabulary.SLIP_MARGIN,
          Vocabulary.LIFT_MARGIN,
          Vocabulary.TIP_MARGIN_FIXED,
          Vocabulary.TIP_MARGIN_MOVABLE,
          Vocabulary.HOLDING_MARGIN,
          Vocabulary.TABLE_HOLD_MARGIN,
          Vocabulary.CUTTER_STRENGTH_MARGIN);

  /** Margins beyond this add no hope; below the other, none is left. */
  private static final double AMPLE = 5;

  private static final double NONE = 0.01;

  private Hope() {}

  static double of(Judged judged) {
    double hope = 2 * Math.log(judged.left()) - 2 * judged.stops().size();
    for (Fact margin : MARGINS) {
      if (judged.evidence().get(margin) instanceof Value.Quantity q) {
        hope += Math.log(Math.max(NONE, Math.min(q.band().low(), AMPLE)));
        hope += 0.2 * Math.log(Math.max(NONE, Math.min(q.band().likely(), AMPLE)));
      }
    }
    return hope;
  }
}

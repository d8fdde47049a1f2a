package org.standproud.advice;

import java.util.List;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;

/**
 * How far a hold is from letting go, as a factor of the score. With r the 5th percentile of the
 * least of the reserves against letting go and against tipping toward either jaw (capacity over
 * demand), the factor is 1 - 1/2 / (1 + r^2): one half at r = 0, three quarters where capacity
 * equals demand, nearly one from a reserve of ten up. It is continuous and rises with r, so that of
 * two holds with equal findings the stronger one scores higher. The form is our choice.
 *
 * @param times r, not negative
 */
public record HoldReserve(double times) {

  private static final List<Fact> RESERVES =
      List.of(
          Vocabulary.HOLDING_MARGIN, Vocabulary.TIP_MARGIN_FIXED, Vocabulary.TIP_MARGIN_MOVABLE);

  private static final double LEFT_WITHOUT_RESERVE = 0.5;

  /** Refuses a negative reserve. */
  public HoldReserve {
    if (!(times >= 0)) {
      throw new IllegalArgumentException("a reserve is not negative: " + times);
    }
  }

  /** The reserve of a set-up, from those of its facts that are known; full if none is. */
  public static HoldReserve of(Evidence evidence) {
    double least = Vocabulary.GREATEST_MARGIN;
    for (Fact fact : RESERVES) {
      if (evidence.get(fact) instanceof Value.Quantity quantity) {
        least = Math.min(least, quantity.band().low());
      }
    }
    return new HoldReserve(Math.max(0, least));
  }

  /** The factor, from one half to one. */
  public double share() {
    return 1 - (1 - LEFT_WITHOUT_RESERVE) / (1 + times * times);
  }
}

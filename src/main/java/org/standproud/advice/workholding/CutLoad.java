package org.standproud.advice.workholding;

import java.util.Optional;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * The force of the cut on the stock, from the evidence, as a load on another hold. A push into the
 * table is left out: it would only help.
 */
final class CutLoad {

  private static final double LEAST_HEIGHT_M = 1e-4;

  private CutLoad() {}

  /**
   * The load, with the support on the side of positive Y.
   *
   * @param evidence forces of the cut
   * @param setup the set-up
   * @param mirrored whether the support is really on the side of negative Y
   * @param heightM height of the cut above the top of the support, or above the table, in m
   * @return empty if the forces could not be computed
   */
  static Optional<HoldingLoad> of(
      Evidence evidence, Setup setup, boolean mirrored, double heightM) {
    Fact toward = mirrored ? Vocabulary.PUSH_MOVABLE : Vocabulary.PUSH_FIXED;
    Fact away = mirrored ? Vocabulary.PUSH_FIXED : Vocabulary.PUSH_MOVABLE;
    Optional<Band> plusX = band(evidence, Vocabulary.PUSH_PLUS_X);
    Optional<Band> minusX = band(evidence, Vocabulary.PUSH_MINUS_X);
    Optional<Band> up = band(evidence, Vocabulary.LIFT_FORCE);
    return plusX.flatMap(
        px ->
            minusX.flatMap(
                mx ->
                    up.flatMap(
                        z ->
                            band(evidence, toward)
                                .flatMap(
                                    t ->
                                        band(evidence, away)
                                            .map(a -> load(px, mx, t, a, z, setup, heightM))))));
  }

  private static HoldingLoad load(
      Band plusX, Band minusX, Band toward, Band away, Band up, Setup setup, double heightM) {
    return new HoldingLoad(
        minusX.times(-1),
        plusX,
        away.times(-1),
        toward,
        Band.exactly(0),
        up,
        Math.max(LEAST_HEIGHT_M, heightM),
        setup.stock().lengthM() / 2,
        setup.stock().thicknessM() / 2);
  }

  static Optional<Band> band(Evidence evidence, Fact fact) {
    return evidence.get(fact) instanceof Value.Quantity q
        ? Optional.of(q.band())
        : Optional.empty();
  }
}

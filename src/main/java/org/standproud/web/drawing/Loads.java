package org.standproud.web.drawing;

import static org.standproud.mechanics.evidence.Vocabulary.EDGE_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.LIFT_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.LOAD_JAW;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_MINUS_X;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_MOVABLE;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_PLUS_X;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;
import org.standproud.setup.JawSide;

/**
 * The forces of the cut on the stock; null where the evidence has none.
 *
 * @param plusXN greatest push toward positive x in N
 * @param minusXN greatest push toward negative x in N
 * @param fixedN greatest push toward the fixed jaw in N
 * @param movableN greatest push toward the movable jaw in N
 * @param liftN greatest pull out of the jaws in N
 * @param edgeDeflectionM greatest deflection of the top edge in m
 * @param loadJaw the jaw that takes the greater push
 */
public record Loads(
    @Nullable Band plusXN,
    @Nullable Band minusXN,
    @Nullable Band fixedN,
    @Nullable Band movableN,
    @Nullable Band liftN,
    @Nullable Band edgeDeflectionM,
    @Nullable JawSide loadJaw) {

  /**
   * Reads the evidence.
   *
   * @param evidence the evidence of a set-up
   */
  public static Loads of(Evidence evidence) {
    return new Loads(
        band(evidence, PUSH_PLUS_X),
        band(evidence, PUSH_MINUS_X),
        band(evidence, PUSH_FIXED),
        band(evidence, PUSH_MOVABLE),
        band(evidence, LIFT_FORCE),
        band(evidence, EDGE_DEFLECTION),
        jaw(evidence));
  }

  private static @Nullable Band band(Evidence evidence, Fact fact) {
    return evidence.get(fact) instanceof Value.Quantity quantity ? quantity.band() : null;
  }

  private static @Nullable JawSide jaw(Evidence evidence) {
    if (evidence.get(LOAD_JAW) instanceof Value.Text text) {
      return JawSide.FIXED.words().equals(text.word()) ? JawSide.FIXED : JawSide.MOVABLE;
    }
    return null;
  }
}

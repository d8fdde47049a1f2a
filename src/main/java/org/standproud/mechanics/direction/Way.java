package org.standproud.mechanics.direction;

import org.standproud.mechanics.force.AxisForce;
import org.standproud.setup.Band;

/** A way in which the stock may be pushed, in the vise frame. */
public enum Way {
  /** Along the jaws toward positive x. */
  LENGTHWISE_PLUS,
  /** Along the jaws toward negative x. */
  LENGTHWISE_MINUS,
  /** Across the stock toward the fixed jaw, positive y. */
  TOWARD_FIXED_JAW,
  /** Across the stock toward the movable jaw, negative y. */
  TOWARD_MOVABLE_JAW,
  /** Out of the jaws, positive z. */
  UP,
  /** Down onto what it stands on, negative z. */
  DOWN;

  /** The greatest push this way, given the three components, in N; zero if there is none. */
  Band peakN(AxisForce x, AxisForce y, AxisForce z) {
    Band signed =
        switch (this) {
          case LENGTHWISE_PLUS -> x.greatestN();
          case LENGTHWISE_MINUS -> x.leastN().times(-1);
          case TOWARD_FIXED_JAW -> y.greatestN();
          case TOWARD_MOVABLE_JAW -> y.leastN().times(-1);
          case UP -> z.greatestN();
          case DOWN -> z.leastN().times(-1);
        };
    return signed.map(n -> Math.max(0, n));
  }
}

package org.standproud.mechanics.reach;

/** A body in the side view of a pass. */
public enum Body {
  /** The part of the cutter that has edges. */
  CUTTING_PART,
  /** The cutter above its edges, up to the end of its flutes or of its body. */
  CUTTER_BODY,
  /** The shank or arbor between cutter and holder. */
  SHANK,
  /** The holder up to the spindle nose. */
  HOLDER,
  /** The fixed jaw, on the positive Y side. */
  FIXED_JAW,
  /** The movable jaw, on the negative Y side. */
  MOVABLE_JAW,
  /** The stock as it stands before the pass. */
  STOCK
}

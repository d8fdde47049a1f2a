package org.standproud.mechanics.direction;

/** Where on the end of the stock a tooth touches first. */
public enum ContactPlace {
  /** On the end face, between its corners. */
  END_FACE,
  /** The corner of the end on the fixed-jaw side. */
  CORNER_AT_FIXED_JAW_SIDE,
  /** The corner of the end on the movable-jaw side. */
  CORNER_AT_MOVABLE_JAW_SIDE
}

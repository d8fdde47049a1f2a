package org.standproud.mechanics.engagement;

/** A stretch of a pass. */
public enum PassStretch {
  /** The cutter comes in over the end of the stock. */
  LEAD_IN,
  /** The whole arc is in the stock. */
  STEADY,
  /** The cutter leaves over the other end. */
  RUN_OUT
}

package org.standproud.mechanics.engagement;

/** How the chip changes from the entry of a tooth to its exit. */
public enum ChipTrend {
  /** Thinner where the tooth enters than where it leaves. */
  THIN_TO_THICK,
  /** Thicker where the tooth enters than where it leaves. */
  THICK_TO_THIN,
  /** The same at both ends. */
  EVEN
}

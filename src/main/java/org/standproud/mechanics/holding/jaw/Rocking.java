package org.standproud.mechanics.holding.jaw;

/** Whether the stock may rock in the jaws on one unknown line of contact, and on what it hangs. */
public enum Rocking {
  /** It lies on what it is meant to lie on. */
  NO,
  /** It may, by the assumed high spot of an unmeasured face. */
  ON_AN_ASSUMED_SPOT,
  /** It may, by a high spot that was measured or by a jaw that lifts or is worn. */
  ON_A_GAP
}

package org.standproud.rules.language;

/**
 * What can be said of a condition when numbers are bands and facts may be missing. It extends the
 * three values of FEEL (OMG DMN: true, false, null) by one: the condition depends on where in its
 * band a number lies.
 */
public enum Truth {
  /** Holds for every value in the bands. */
  TRUE,
  /** Holds for no value in the bands. */
  FALSE,
  /** Holds for some values in the bands and not for others. */
  EITHER,
  /** Cannot be said: a fact is missing. */
  UNKNOWN;

  /** The truth of a plain yes or no. */
  public static Truth of(boolean holds) {
    return holds ? TRUE : FALSE;
  }

  /** Both: FALSE dominates, then UNKNOWN, then EITHER. */
  public Truth and(Truth other) {
    if (this == FALSE || other == FALSE) {
      return FALSE;
    }
    if (this == UNKNOWN || other == UNKNOWN) {
      return UNKNOWN;
    }
    return this == EITHER || other == EITHER ? EITHER : TRUE;
  }

  /** One or the other: TRUE dominates, then UNKNOWN, then EITHER. */
  public Truth or(Truth other) {
    return not().and(other.not()).not();
  }

  /** The opposite; EITHER and UNKNOWN are their own. */
  public Truth not() {
    return switch (this) {
      case TRUE -> FALSE;
      case FALSE -> TRUE;
      case EITHER, UNKNOWN -> this;
    };
  }

  /** Whether the condition holds for at least some value in the bands, no fact missing. */
  public boolean mayHold() {
    return this == TRUE || this == EITHER;
  }
}

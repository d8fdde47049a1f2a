package org.standproud.mechanics.evidence;

import org.standproud.setup.Band;

/** The value of a fact for one set-up. */
public sealed interface Value {

  /**
   * A number with its band.
   *
   * @param band least, likely and greatest value in the SI unit of the fact
   */
  record Quantity(Band band) implements Value {}

  /**
   * A word.
   *
   * @param word one of the words the fact allows
   */
  record Text(String word) implements Value {}

  /**
   * Yes or no.
   *
   * @param yes the truth
   */
  record Truth(boolean yes) implements Value {}

  /**
   * Not known, and no conservative band would be honest.
   *
   * @param measure what has to be measured or stated, as a machinist would say it
   */
  record Missing(String measure) implements Value {}
}

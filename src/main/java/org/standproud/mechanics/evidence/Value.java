package org.standproud.mechanics.evidence;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
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
   * Numbers in an order that means something, each with its band; perhaps none.
   *
   * @param bands least, likely and greatest value of each in the SI unit of the fact
   */
  record Quantities(List<Band> bands) implements Value {
    /** What stands between two numbers of a list in words. */
    public static final String THEN = " then ";

    /** A list of no numbers in words. */
    public static final String NONE = "none";

    /** Copies the list. */
    public Quantities {
      bands = List.copyOf(bands);
    }

    /**
     * The list in words: "3 mm then 1 mm", or "none".
     *
     * @param words one number in words
     */
    public String words(Function<Band, String> words) {
      return bands.isEmpty() ? NONE : bands.stream().map(words).collect(Collectors.joining(THEN));
    }
  }

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

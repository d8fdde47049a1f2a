package org.standproud.mechanics.evidence;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standproud.setup.Band;

/** The value of a fact for one set-up. */
public sealed interface Value {

  /**
   * A number over the draws of one joint sample.
   *
   * @param sample its values in the SI unit of the fact
   */
  record Quantity(Sample sample) implements Value {

    /** A number of which only the percentiles are known, see {@link Sample#spread}. */
    public Quantity(Band band) {
      this(Sample.spread(band, 0));
    }

    /** Its 5th, 50th and 95th percentile. */
    public Band band() {
      return sample.band();
    }
  }

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
   * A word, perhaps another one in some draws.
   *
   * @param word the word of most draws, one of those the fact allows
   * @param draws the draws of each word; empty if the word is the same in every draw
   */
  record Text(String word, Map<String, DrawSet> draws) implements Value {
    /** Copies the map. */
    public Text {
      draws = Map.copyOf(draws);
    }

    /** A word that is the same in every draw. */
    public Text(String word) {
      this(word, Map.of());
    }
  }

  /**
   * Yes or no, perhaps one in some draws and the other in the rest.
   *
   * @param draws the draws in which it is yes; one draw stands for all where the answer is the same
   */
  record Truth(DrawSet draws) implements Value {

    /** The same answer in every draw. */
    public Truth(boolean yes) {
      this(yes ? DrawSet.all(1) : DrawSet.none(1));
    }

    /** Whether it is yes in more than half of the draws. */
    public boolean yes() {
      return draws.share() > 0.5;
    }
  }

  /**
   * Not known, and no conservative band would be honest.
   *
   * @param measure what has to be measured or stated, as a machinist would say it
   * @param letsGo whether nothing is unknown: the number does not exist, because the set-up lets go
   *     in every draw
   */
  record Missing(String measure, boolean letsGo) implements Value {

    /** Not known. */
    public Missing(String measure) {
      this(measure, false);
    }
  }
}

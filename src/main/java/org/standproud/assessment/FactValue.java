package org.standproud.assessment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;

/**
 * The value of a fact in SI units; one of band, bands, word, yes and measure is present.
 *
 * @param fact name of the fact
 * @param band 5th percentile, median and 95th percentile over the draws, if it is a number
 * @param bands the same for each number in its order, if it is a list of them
 * @param unit SI unit of the numbers; absent for a pure number
 * @param word the word, if it is a word
 * @param yes true or false, if it is yes or no
 * @param measure what to measure or state, if it is not known
 * @param share share of the draws in which it is true, or in which the number exists because the
 *     set-up holds, 0 to 1; absent if all
 */
public record FactValue(
    String fact,
    @Nullable Numbers band,
    @Nullable List<Numbers> bands,
    @Nullable String unit,
    @Nullable String word,
    @Nullable Boolean yes,
    @Nullable String measure,
    @Nullable Double share) {

  /**
   * A number over the draws.
   *
   * @param low 5th percentile
   * @param likely median
   * @param high 95th percentile
   */
  public record Numbers(double low, double likely, double high) {
    static Numbers of(Band band) {
      return new Numbers(band.low(), band.likely(), band.high());
    }

    Band asBand() {
      return new Band(low, likely, high);
    }
  }

  static FactValue of(Fact fact, Value value) {
    String name = fact.name();
    Fact.Number number = fact.number();
    String unit = number == null ? null : unit(number.dimension().siUnit());
    if (value instanceof Value.Quantity one) {
      Double share = part(one.sample().share());
      return new FactValue(name, Numbers.of(one.band()), null, unit, null, null, null, share);
    } else if (value instanceof Value.Quantities list) {
      List<Numbers> bands = list.bands().stream().map(Numbers::of).toList();
      return new FactValue(name, null, bands, unit, null, null, null, null);
    } else if (value instanceof Value.Text text) {
      DrawSet draws = text.draws().get(text.word());
      Double share = draws == null ? null : part(draws.share());
      return new FactValue(name, null, null, null, text.word(), null, null, share);
    } else if (value instanceof Value.Truth truth) {
      boolean yes = truth.yes();
      double share = truth.draws().share();
      return new FactValue(name, null, null, null, null, yes, null, part(yes ? share : 1 - share));
    }
    String measure = ((Value.Missing) value).measure();
    return new FactValue(name, null, null, null, null, null, measure, null);
  }

  private static @Nullable Double part(double share) {
    return share == 1 ? null : (Double) share;
  }

  /** A value with only its percentiles. */
  Value value() {
    if (band != null) {
      return new Value.Quantity(band.asBand());
    }
    if (bands != null) {
      return new Value.Quantities(bands.stream().map(Numbers::asBand).toList());
    }
    if (word != null) {
      return new Value.Text(word);
    }
    if (yes != null) {
      return new Value.Truth(yes);
    }
    return new Value.Missing(measure == null ? fact : measure);
  }

  /** A unit; null for the pure number. */
  static @Nullable String unit(String code) {
    return code.isEmpty() ? null : code;
  }
}

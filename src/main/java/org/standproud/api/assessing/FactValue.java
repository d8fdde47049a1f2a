package org.standproud.api.assessing;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;

/**
 * The value of a fact in SI units; one of band, word, yes and measure is there.
 *
 * @param fact name of the fact
 * @param band least, likely and greatest value, if it is a number
 * @param unit the SI unit of the numbers, absent for pure numbers
 * @param word the word, if it is one
 * @param yes true or false, if it is that
 * @param measure what has to be measured or stated, if it is not known
 */
public record FactValue(
    String fact,
    @Nullable Numbers band,
    @Nullable String unit,
    @Nullable String word,
    @Nullable Boolean yes,
    @Nullable String measure) {

  /**
   * A band.
   *
   * @param low least value
   * @param likely likely value
   * @param high greatest value
   */
  public record Numbers(double low, double likely, double high) {}

  static FactValue of(Fact fact, Value value) {
    String name = fact.name();
    if (value instanceof Value.Quantity number) {
      Band band = number.band();
      return new FactValue(
          name,
          new Numbers(band.low(), band.likely(), band.high()),
          fact.type() instanceof Fact.Number type ? unit(type.dimension().siUnit()) : null,
          null,
          null,
          null);
    } else if (value instanceof Value.Text text) {
      return new FactValue(name, null, null, text.word(), null, null);
    } else if (value instanceof Value.Truth truth) {
      return new FactValue(name, null, null, null, truth.yes(), null);
    }
    return new FactValue(name, null, null, null, null, ((Value.Missing) value).measure());
  }

  /** The value told. */
  Value value() {
    if (band != null) {
      return new Value.Quantity(new Band(band.low(), band.likely(), band.high()));
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

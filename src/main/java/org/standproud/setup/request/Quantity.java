package org.standproud.setup.request;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import tools.jackson.databind.JsonNode;

/**
 * A number with a dimension, known exactly.
 *
 * @param name name in the request
 * @param range kind and plausible range
 * @param required whether it has to be given
 * @param getter the value in a record, in SI
 * @param meaning what it means
 * @param title short name in the trade; null where it is the name in words
 */
record Quantity<O>(
    String name,
    Range range,
    boolean required,
    Function<O, @Nullable Double> getter,
    String meaning,
    @Nullable String title)
    implements Field<O, Double> {

  static <O> Quantity<O> of(
      String name,
      QuantityKind kind,
      double least,
      double greatest,
      Function<O, @Nullable Double> getter,
      String meaning) {
    return new Quantity<>(name, new Range(kind, least, greatest), true, getter, meaning, null);
  }

  Quantity<O> mayBeUnknown() {
    return new Quantity<>(name, range, false, getter, meaning, title);
  }

  /** The same under a short name of the trade. */
  Quantity<O> called(String other) {
    return new Quantity<>(name, range, required, getter, meaning, other);
  }

  @Override
  public @Nullable Double from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable Double read(JsonNode node, FieldLocation place) {
    return range.number(node, place);
  }

  @Override
  public JsonNode write(Double value, UnitSystem units) {
    return range.write(value.doubleValue(), units);
  }

  @Override
  public String allowed(UnitSystem units) {
    return range.allowed(units);
  }
}

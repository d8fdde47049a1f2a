package org.standproud.setup.request;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import tools.jackson.databind.JsonNode;

/**
 * A number with a dimension that may be given as a band.
 *
 * @param name name in the request
 * @param range kind and plausible range
 * @param required whether it has to be given
 * @param getter the value in a record, in SI
 * @param meaning what it means
 */
record BandField<O>(
    String name, Range range, boolean required, Function<O, @Nullable Band> getter, String meaning)
    implements Field<O, Band> {

  static <O> BandField<O> of(
      String name,
      QuantityKind kind,
      double least,
      double greatest,
      Function<O, @Nullable Band> getter,
      String meaning) {
    return new BandField<>(name, new Range(kind, least, greatest), true, getter, meaning);
  }

  BandField<O> mayBeUnknown() {
    return new BandField<>(name, range, false, getter, meaning);
  }

  @Override
  public @Nullable Band from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable Band read(JsonNode node, FieldLocation place) {
    return range.band(node, place);
  }

  @Override
  public JsonNode write(Band value, UnitSystem units) {
    return range.write(value, units);
  }

  @Override
  public String allowed(UnitSystem units) {
    return range.allowed(units) + ", or a band with low and high";
  }
}

package org.standproud.setup.request;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * A whole number.
 *
 * @param name name in the request
 * @param least least count
 * @param greatest greatest count
 * @param getter the value in a record
 * @param meaning what it means
 * @param title short name in the trade; null where it is the name in words
 */
record Count<O>(
    String name,
    int least,
    int greatest,
    Function<O, Integer> getter,
    String meaning,
    @Nullable String title)
    implements Field<O, Integer> {

  @Override
  public boolean required() {
    return true;
  }

  @Override
  public Integer from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable Integer read(JsonNode node, FieldLocation place) {
    return read(node, place, least, greatest);
  }

  static @Nullable Integer read(JsonNode node, FieldLocation place, int least, int greatest) {
    String allowed = "a whole number from " + least + " to " + greatest;
    if (!node.isNumber()) {
      place.fault(node, "enter a whole number", allowed, null, null);
      return null;
    }
    double value = node.numberValue().doubleValue();
    if (value != Math.rint(value) || value < least || value > greatest) {
      place.fault(node, Problem.OUT_OF_RANGE, allowed, null, null);
      return null;
    }
    return (int) value;
  }

  @Override
  public JsonNode write(Integer value, UnitSystem units) {
    return JsonNodeFactory.instance.numberNode(value.intValue());
  }

  @Override
  public String allowed(UnitSystem units) {
    return "a whole number from " + least + " to " + greatest;
  }
}

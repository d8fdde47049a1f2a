package org.standproud.setup.request;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * A list of numbers of one kind; empty when left out.
 *
 * @param name name in the request
 * @param range kind and plausible range of each
 * @param most greatest count
 * @param getter the values in a record, in SI
 * @param meaning what they mean
 */
record Quantities<O>(
    String name, Range range, int most, Function<O, List<Double>> getter, String meaning)
    implements Field<O, List<Double>> {

  @Override
  public boolean required() {
    return false;
  }

  @Override
  public List<Double> from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable List<Double> read(JsonNode node, FieldLocation place) {
    return Sequences.read(node, place, most, range::number);
  }

  @Override
  public JsonNode write(List<Double> value, UnitSystem units) {
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    value.forEach(v -> node.add(range.write(v.doubleValue(), units)));
    return node;
  }

  @Override
  public String allowed(UnitSystem units) {
    return "at most " + most + " numbers, each " + range.allowed(units);
  }
}

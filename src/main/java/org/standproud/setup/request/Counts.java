package org.standproud.setup.request;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * A list of whole numbers from zero; empty when left out.
 *
 * @param name name in the request
 * @param greatest greatest number
 * @param most greatest count of numbers
 * @param getter the values in a record
 * @param meaning what they mean
 */
record Counts<O>(
    String name, int greatest, int most, Function<O, List<Integer>> getter, String meaning)
    implements Field<O, List<Integer>> {

  @Override
  public boolean required() {
    return false;
  }

  @Override
  public List<Integer> from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable List<Integer> read(JsonNode node, FieldLocation place) {
    return Sequences.read(node, place, most, (n, p) -> Count.read(n, p, 0, greatest));
  }

  @Override
  public JsonNode write(List<Integer> value, UnitSystem units) {
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    value.forEach(v -> node.add(v.intValue()));
    return node;
  }

  @Override
  public String allowed(UnitSystem units) {
    return "at most " + most + " whole numbers from 0 to " + greatest;
  }
}

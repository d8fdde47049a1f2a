package org.standproud.setup.request;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * A list of items of one shelf, each given as such an item may be: by name, in the words of a shop,
 * or described.
 *
 * @param name name in the request
 * @param item how one of them is read; its getter is not used
 * @param most greatest count
 * @param getter the items of a record
 * @param meaning what they mean
 */
record ItemList<O, P>(
    String name, ObjectField<P, P> item, int most, Function<O, List<P>> getter, String meaning)
    implements Field<O, List<Values>> {

  @Override
  public boolean required() {
    return false;
  }

  @Override
  public List<Values> from(O owner) {
    return getter.apply(owner).stream().map(item.shape()::of).toList();
  }

  @Override
  public @Nullable List<Values> read(JsonNode node, FieldLocation place) {
    List<Values> items = Sequences.read(node, place, most, item::read);
    if (items != null && items.isEmpty()) {
      place.fault(node, "name at least one", allowed(place.units()), null, null);
      return null;
    }
    return items;
  }

  @Override
  public JsonNode write(List<Values> value, UnitSystem units) {
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    value.forEach(v -> node.add(item.write(v, units)));
    return node;
  }

  @Override
  public String allowed(UnitSystem units) {
    return "1 to " + most + " of them, each " + item.allowed(units);
  }
}

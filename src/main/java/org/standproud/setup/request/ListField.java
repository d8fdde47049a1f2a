package org.standproud.setup.request;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * A list of objects.
 *
 * @param name name in the request
 * @param shape fields of each
 * @param most greatest count
 * @param required whether it has to be given; if not, leaving it out says that there are none
 * @param getter the parts of a record
 * @param meaning what they mean
 * @param title short name in the trade; null where it is the name in words
 */
record ListField<O, P>(
    String name,
    ObjectSchema<P> shape,
    int most,
    boolean required,
    Function<O, List<P>> getter,
    String meaning,
    @Nullable String title)
    implements Field<O, List<Values>> {

  ListField(
      String name,
      ObjectSchema<P> shape,
      int most,
      boolean required,
      Function<O, List<P>> getter,
      String meaning) {
    this(name, shape, most, required, getter, meaning, null);
  }

  @Override
  public List<Values> from(O owner) {
    return getter.apply(owner).stream().map(shape::of).toList();
  }

  @Override
  public List<P> kept(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable List<Values> read(JsonNode node, FieldLocation place) {
    return Sequences.read(node, place, most, shape::read);
  }

  @Override
  public JsonNode write(List<Values> value, UnitSystem units) {
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    value.forEach(v -> node.add(shape.write(v, units)));
    return node;
  }

  @Override
  public String allowed(UnitSystem units) {
    return "at most " + most + " objects";
  }
}

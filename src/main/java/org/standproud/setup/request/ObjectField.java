package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An object inside an object. One that has a shelf in the catalogue may be given as its name there,
 * or as an object whose name is there and whose other fields stand in place of the catalogue's, or
 * described in full.
 *
 * @param name name in the request
 * @param shape its fields
 * @param shelf where it stands in the catalogue; null if it does not
 * @param required whether it has to be given
 * @param getter the part of a record
 * @param meaning what it means
 */
record ObjectField<O, P>(
    String name,
    ObjectSchema<P> shape,
    @Nullable Function<Catalogue, Map<String, P>> shelf,
    boolean required,
    Function<O, P> getter,
    String meaning)
    implements Field<O, Values> {

  static <O, P> ObjectField<O, P> of(
      String name, ObjectSchema<P> shape, Function<O, P> getter, String meaning) {
    return new ObjectField<>(name, shape, null, true, getter, meaning);
  }

  static <O, P> ObjectField<O, P> onShelf(
      String name,
      ObjectSchema<P> shape,
      Function<Catalogue, Map<String, P>> shelf,
      Function<O, P> getter,
      String meaning) {
    return new ObjectField<>(name, shape, shelf, true, getter, meaning);
  }

  @Override
  public Values from(O owner) {
    return shape.of(getter.apply(owner));
  }

  @Override
  public @Nullable Values read(JsonNode node, FieldLocation place) {
    if (shelf == null) {
      return shape.read(node, place);
    }
    Map<String, P> items = shelf.apply(place.catalogue());
    if (node.isString()) {
      return byName(node, items, place);
    }
    JsonNode given = node.isObject() ? node.get("name") : null;
    if (given == null || !given.isString()) {
      return shape.read(node, place);
    }
    P item = items.get(given.stringValue());
    return item != null
        ? shape.read(node, place, shape.of(item))
        : described(node, given, items, place);
  }

  private @Nullable Values byName(JsonNode node, Map<String, P> items, FieldLocation place) {
    P item = items.get(node.stringValue());
    if (item == null) {
      place.notOneOf(
          node, "no " + shape.name() + " of this name is in the catalogue", items.keySet());
      return null;
    }
    return shape.of(item);
  }

  /** A misspelt name would otherwise show as a dozen missing fields. */
  private Values described(
      JsonNode node, JsonNode given, Map<String, P> items, FieldLocation place) {
    List<String> lacking = new ArrayList<>();
    for (Field<P, ?> field : shape.fields()) {
      if (field.required() && !node.has(field.name())) {
        lacking.add(field.name());
      }
    }
    if (lacking.isEmpty()) {
      return shape.read(node, place);
    }
    place
        .child("name")
        .notOneOf(
            given,
            "no "
                + shape.name()
                + " of this name is in the catalogue, and the description here lacks "
                + MessageText.list(lacking),
            items.keySet());
    return shape.readWhatIsThere(node, place);
  }

  @Override
  public JsonNode write(Values value, UnitSystem units) {
    ObjectNode node = shape.write(value, units);
    if (shelf != null) {
      // A field left out would be filled from the catalogue item of the same name.
      shape.fields().stream().filter(f -> !node.has(f.name())).forEach(f -> node.putNull(f.name()));
    }
    return node;
  }

  @Override
  public String allowed(UnitSystem units) {
    return shelf == null ? "an object" : "a name in the catalogue, or an object";
  }
}

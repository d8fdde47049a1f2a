package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An object inside an object. One that has a shelf in the catalogue may be given as its name there,
 * in the words of a shop, or as an object whose name is there and whose other fields stand in place
 * of the catalogue's, or described in full.
 *
 * @param name name in the request
 * @param shape its fields
 * @param shelf where it stands in the catalogue; null if it does not
 * @param spoken items that are understood by the words of a shop; null if there are none
 * @param required whether it has to be given
 * @param getter the part of a record
 * @param meaning what it means
 * @param shown fields that are compared apart from its name where another item takes its place
 */
record ObjectField<O, P>(
    String name,
    ObjectSchema<P> shape,
    @Nullable Function<Catalogue, Map<String, P>> shelf,
    @Nullable Supplier<SpokenItems<P>> spoken,
    boolean required,
    Function<O, P> getter,
    String meaning,
    List<Field<P, ?>> shown)
    implements Field<O, Values> {

  ObjectField {
    shown = List.copyOf(shown);
  }

  static <O, P> ObjectField<O, P> of(
      String name, ObjectSchema<P> shape, Function<O, P> getter, String meaning) {
    return new ObjectField<>(name, shape, null, null, true, getter, meaning, List.of());
  }

  static <O, P> ObjectField<O, P> onShelf(
      String name,
      ObjectSchema<P> shape,
      Function<Catalogue, Map<String, P>> shelf,
      Supplier<SpokenItems<P>> spoken,
      Function<O, P> getter,
      String meaning) {
    return new ObjectField<>(name, shape, shelf, spoken, true, getter, meaning, List.of());
  }

  /** The same, with fields that are compared also where another item takes its place. */
  ObjectField<O, P> showing(List<Field<P, ?>> fields) {
    return new ObjectField<>(name, shape, shelf, spoken, required, getter, meaning, fields);
  }

  @Override
  public ObjectField<O, P> part() {
    return this;
  }

  /** Whether it may be an item of the catalogue, which has a name. */
  boolean isNamed() {
    return shelf != null;
  }

  /** The name of an item; null where it is none of the catalogue. */
  @Nullable String itemName(P item) {
    return isNamed() ? (String) shape.fields().get(0).from(item) : null;
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
    if (item != null) {
      return shape.read(node, place, shape.of(item));
    }
    List<String> lacking = lacking(node);
    P typical = lacking.isEmpty() || spoken == null ? null : spoken.get().item(given.stringValue());
    return typical == null
        ? described(node, given, lacking, items, place)
        : changed(node, typical, place);
  }

  /** A typical item with some values replaced; its name still shows what it is. */
  private Values changed(JsonNode node, P typical, FieldLocation place) {
    Values values = shape.read(node, place, shape.of(typical));
    if (spoken != null) {
      Text<P> title = spoken.get().kind().name();
      values.put(title, title.from(typical));
    }
    return values;
  }

  private @Nullable Values byName(JsonNode node, Map<String, P> items, FieldLocation place) {
    P item = item(node.stringValue(), items);
    if (item == null) {
      unknown(node, "no " + shape.name() + " of this name is in the catalogue", items, place);
      return null;
    }
    return shape.of(item);
  }

  /** The catalogue comes first, then the words of a shop. */
  private @Nullable P item(String name, Map<String, P> items) {
    P item = items.get(name);
    return item != null || spoken == null ? item : spoken.get().item(name);
  }

  private void unknown(JsonNode given, String message, Map<String, P> items, FieldLocation place) {
    List<String> near =
        spoken == null ? List.of() : spoken.get().nearest(given.stringValue(), items.keySet());
    place.fault(
        given,
        message,
        MessageText.list(items.keySet()),
        null,
        near.isEmpty() ? null : "did you mean " + quoted(near) + "?");
  }

  private static String quoted(List<String> names) {
    String last = "\"" + names.get(names.size() - 1) + "\"";
    return names.size() == 1
        ? last
        : "\"" + String.join("\", \"", names.subList(0, names.size() - 1)) + "\" or " + last;
  }

  /** A misspelt name would otherwise show as a dozen missing fields. */
  private Values described(
      JsonNode node,
      JsonNode given,
      List<String> lacking,
      Map<String, P> items,
      FieldLocation place) {
    if (lacking.isEmpty()) {
      return shape.read(node, place);
    }
    unknown(
        given,
        "no "
            + shape.name()
            + " of this name is in the catalogue, and the description here lacks "
            + MessageText.list(lacking),
        items,
        place.child("name"));
    return shape.readWhatIsThere(node, place);
  }

  private List<String> lacking(JsonNode node) {
    List<String> lacking = new ArrayList<>();
    for (Field<P, ?> field : shape.fields()) {
      if (field.required() && !node.has(field.name())) {
        lacking.add(field.name());
      }
    }
    return lacking;
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

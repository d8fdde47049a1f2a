package org.standproud.setup.request;

import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of one kind of object, and what must hold between them.
 *
 * @param <O> the record the object stands for
 * @param name what the object is called in messages
 * @param fields its fields, in the order of documentation
 * @param check looks at what was read and reports what does not fit together; it must bear with
 *     fields that are not there
 */
record ObjectSchema<O>(
    String name, List<Field<O, ?>> fields, BiConsumer<Values, FieldLocation> check) {

  ObjectSchema {
    fields = List.copyOf(fields);
  }

  /** A shape with nothing to check between its fields. */
  ObjectSchema(String name, List<Field<O, ?>> fields) {
    this(name, fields, (values, place) -> {});
  }

  /** The values of a record. */
  Values of(O owner) {
    Values values = new Values();
    fields.forEach(f -> copy(f, owner, values));
    return values;
  }

  private static <O, T> void copy(Field<O, T> field, O owner, Values into) {
    into.put(field, field.from(owner));
  }

  Values read(JsonNode node, FieldLocation place) {
    return read(node, place, new Values(), true);
  }

  /** Reads with the values of a catalogue item where the object is silent. */
  Values read(JsonNode node, FieldLocation place, Values base) {
    return read(node, place, base, true);
  }

  /** Reads without complaint about what is missing. */
  Values readWhatIsThere(JsonNode node, FieldLocation place) {
    return read(node, place, new Values(), false);
  }

  private Values read(JsonNode node, FieldLocation place, Values values, boolean complete) {
    if (!node.isObject()) {
      place.fault(node, "describe the " + name + " here as an object");
      return values;
    }
    refuseUnknown(node, place);
    for (Field<O, ?> field : fields) {
      readField(field, node.get(field.name()), place.child(field.name()), values, complete);
    }
    check.accept(values, place);
    return values;
  }

  private <T> void readField(
      Field<O, T> field,
      @Nullable JsonNode node,
      FieldLocation place,
      Values values,
      boolean complete) {
    if (node == null) {
      if (complete && field.required() && !values.has(field)) {
        place.fault(null, Problem.MISSING, field.allowed(place.units()), null, null);
      }
    } else if (node.isNull() || field.isUnknown(node)) {
      values.put(field, null);
      if (field.required()) {
        place.fault(node, Problem.UNKNOWN, field.allowed(place.units()), null, null);
      }
    } else {
      values.put(field, field.read(node, place));
    }
  }

  private void refuseUnknown(JsonNode node, FieldLocation place) {
    List<String> names = fields.stream().map(Field::name).toList();
    for (String key : node.propertyNames()) {
      if (!names.contains(key)) {
        String nearest = MessageText.nearest(key, names);
        place
            .stranger(key)
            .fault(
                node.get(key),
                "the " + name + " has no such field",
                MessageText.list(names),
                null,
                nearest == null ? null : "did you mean \"" + nearest + "\"?");
      }
    }
  }

  /** The object as it would stand in a request; what is unknown is left out. */
  ObjectNode write(Values values, UnitSystem units) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    fields.forEach(f -> writeField(f, values, units, node));
    return node;
  }

  private static <T> void writeField(
      Field<?, T> field, Values values, UnitSystem units, ObjectNode into) {
    T value = values.get(field);
    if (value != null) {
      into.set(field.name(), field.write(value, units));
    }
  }
}

package org.standproud.setup.request;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * True or false.
 *
 * @param name name in the request
 * @param required whether it has to be given
 * @param getter the value in a record
 * @param meaning what it means
 * @param title short name in the trade; null where it is the name in words
 */
record BooleanField<O>(
    String name,
    boolean required,
    Function<O, @Nullable Boolean> getter,
    String meaning,
    @Nullable String title)
    implements Field<O, Boolean> {

  BooleanField(
      String name, boolean required, Function<O, @Nullable Boolean> getter, String meaning) {
    this(name, required, getter, meaning, null);
  }

  @Override
  public @Nullable Boolean from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable Boolean read(JsonNode node, FieldLocation place) {
    if (!node.isBoolean()) {
      place.fault(node, "enter true or false", "true, false", null, null);
      return null;
    }
    return node.booleanValue();
  }

  @Override
  public JsonNode write(Boolean value, UnitSystem units) {
    return JsonNodeFactory.instance.booleanNode(value.booleanValue());
  }

  @Override
  public String allowed(UnitSystem units) {
    return "true, false";
  }
}

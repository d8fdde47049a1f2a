package org.standproud.setup.request;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * A line of text.
 *
 * @param name name in the request
 * @param longest greatest count of characters
 * @param required whether it has to be given
 * @param getter the value in a record
 * @param meaning what it means
 * @param title short name in the trade; null where it is the name in words
 */
record Text<O>(
    String name,
    int longest,
    boolean required,
    Function<O, @Nullable String> getter,
    String meaning,
    @Nullable String title)
    implements Field<O, String> {

  Text(
      String name,
      int longest,
      boolean required,
      Function<O, @Nullable String> getter,
      String meaning) {
    this(name, longest, required, getter, meaning, null);
  }

  @Override
  public @Nullable String from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable String read(JsonNode node, FieldLocation place) {
    String allowed = allowed(place.units());
    if (!node.isString()) {
      place.fault(node, "enter a text", allowed, null, null);
      return null;
    }
    String text = node.stringValue();
    if (text.isBlank() || text.length() > longest) {
      place.fault(node, "this text is blank or too long", allowed, null, null);
      return null;
    }
    if (text.codePoints().anyMatch(Text::breaksARecord)) {
      place.fault(node, "this text holds characters that cannot be printed", allowed, null, null);
      return null;
    }
    return text;
  }

  /** Control characters and line ends break a line; half a surrogate pair cannot be stored. */
  private static boolean breaksARecord(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  @Override
  public JsonNode write(String value, UnitSystem units) {
    return JsonNodeFactory.instance.stringNode(value);
  }

  @Override
  public String allowed(UnitSystem units) {
    return "one line of 1 to " + longest + " characters";
  }
}

package org.standproud.setup.request;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * One of a closed list of words.
 *
 * @param name name in the request
 * @param options the choices
 * @param alsoSaid other words for some of them
 * @param required whether it has to be given
 * @param getter the choice in a record
 * @param meaning what it means
 * @param title short name in the trade; null where it is the name in words
 */
record Choice<O, E extends Enum<E> & Worded>(
    String name,
    List<E> options,
    Map<String, E> alsoSaid,
    boolean required,
    Function<O, @Nullable E> getter,
    String meaning,
    @Nullable String title)
    implements Field<O, E> {

  static <O, E extends Enum<E> & Worded> Choice<O, E> of(
      String name, Class<E> type, Function<O, @Nullable E> getter, String meaning) {
    return new Choice<>(
        name, Arrays.asList(type.getEnumConstants()), Map.of(), true, getter, meaning, null);
  }

  Choice<O, E> mayBeUnknown() {
    return new Choice<>(name, options, alsoSaid, false, getter, meaning, title);
  }

  /** The same with another word for one of the choices. */
  Choice<O, E> alsoSaid(String words, E option) {
    return new Choice<>(name, options, Map.of(words, option), required, getter, meaning, title);
  }

  /** The same under a short name of the trade. */
  Choice<O, E> called(String other) {
    return new Choice<>(name, options, alsoSaid, required, getter, meaning, other);
  }

  @Override
  public @Nullable E from(O owner) {
    return getter.apply(owner);
  }

  @Override
  public @Nullable E read(JsonNode node, FieldLocation place) {
    for (E option : options) {
      if (node.isString() && option.words().equals(node.stringValue())) {
        return option;
      }
    }
    if (node.isString() && alsoSaid.containsKey(node.stringValue())) {
      return alsoSaid.get(node.stringValue());
    }
    place.notOneOf(node, "this is not one of the choices", words());
    return null;
  }

  private List<String> words() {
    return Stream.concat(options.stream().map(Worded::words), alsoSaid.keySet().stream()).toList();
  }

  @Override
  public JsonNode write(E value, UnitSystem units) {
    return JsonNodeFactory.instance.stringNode(value.words());
  }

  @Override
  public String allowed(UnitSystem units) {
    return MessageText.list(words());
  }
}

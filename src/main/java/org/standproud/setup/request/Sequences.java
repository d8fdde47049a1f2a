package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** How a list is read: bounded, item by item, with all of its faults. */
final class Sequences {

  private Sequences() {}

  static <T> @Nullable List<T> read(
      JsonNode node,
      FieldLocation place,
      int most,
      BiFunction<JsonNode, FieldLocation, @Nullable T> item) {
    if (!node.isArray()) {
      place.fault(node, "enter a list");
      return null;
    }
    if (node.size() > most) {
      place.fault(node, "this list is too long", "at most " + most + " items", null, null);
      return null;
    }
    List<T> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      T read = item.apply(node.get(i), place.item(i));
      if (read != null) {
        items.add(read);
      }
    }
    return items.size() == node.size() ? items : null;
  }
}

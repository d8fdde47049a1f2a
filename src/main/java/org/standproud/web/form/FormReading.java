package org.standproud.web.form;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Converts form values to a request and a request to form values. */
final class FormReading {

  /** Number of pieces of packing and planned passes in the form, unless there are more. */
  static final int LIST_ROOM = 2;

  private static final int MOST_ITEMS = 50;

  private FormReading() {}

  /**
   * The request for the values of a form.
   *
   * @param values value of each field, by its path
   * @param units the units of the form
   */
  static ObjectNode request(Map<String, String> values, UnitSystem units) {
    ObjectNode request = object(Guide.of(units), "", UnitSwitch.meant(values));
    request.put("units", units.words());
    return request;
  }

  private static ObjectNode object(List<Guide> fields, String above, Map<String, String> values) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    for (Guide field : fields) {
      String path = above + "/" + field.name();
      String typed = values.getOrDefault(path, "").strip();
      switch (field.sort()) {
        case PART -> {
          ObjectNode part = object(field.inside(), path, values);
          // Part of a top must be present for its fields to be reported as missing.
          if (!part.isEmpty() || above.isEmpty()) {
            node.set(field.name(), part);
          }
        }
        case SHELVED_PART -> putShelved(node, field, path, typed, values);
        case PARTS -> putList(node, field, path, values);
        default -> {
          if (!typed.isEmpty()) {
            node.set(field.name(), TypedValue.node(typed, field.sort()));
          }
        }
      }
    }
    return node;
  }

  private static void putShelved(
      ObjectNode into, Guide field, String path, String name, Map<String, String> values) {
    ObjectNode part = object(field.inside(), path, values);
    if (part.isEmpty() && !name.isEmpty()) {
      into.put(field.name(), name);
    } else if (!part.isEmpty()) {
      if (!name.isEmpty()) {
        part.put("name", name);
      }
      into.set(field.name(), part);
    }
  }

  private static void putList(
      ObjectNode into, Guide field, String path, Map<String, String> values) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < items(path, values); i++) {
      ObjectNode item = object(field.inside(), path + "/" + i, values);
      if (!item.isEmpty()) {
        list.add(item);
      }
    }
    if (!list.isEmpty()) {
      into.set(field.name(), list);
    }
  }

  /** Number of list items in the values. */
  static int items(String path, Map<String, String> values) {
    int items = LIST_ROOM;
    while (items < MOST_ITEMS && speaksOf(path + "/" + items + "/", values)) {
      items++;
    }
    return items;
  }

  private static boolean speaksOf(String prefix, Map<String, String> values) {
    return values.keySet().stream().anyMatch(key -> key.startsWith(prefix));
  }

  /**
   * The form values of a request.
   *
   * @param request a request
   * @param units the units of the form
   */
  static Map<String, String> values(JsonNode request, UnitSystem units) {
    Map<String, String> values = new TreeMap<>();
    flatten(Guide.of(units), "", request, values);
    return values;
  }

  private static void flatten(
      List<Guide> fields, String above, JsonNode node, Map<String, String> values) {
    for (Guide field : fields) {
      JsonNode there = node.get(field.name());
      String path = above + "/" + field.name();
      if (there != null) {
        flatten(field, path, there, values);
      }
    }
  }

  private static void flatten(
      Guide field, String path, JsonNode there, Map<String, String> values) {
    switch (field.sort()) {
      case PART -> flatten(field.inside(), path, there, values);
      case SHELVED_PART -> {
        if (there.isObject()) {
          flatten(field.inside(), path, there, values);
          String name = values.remove(path + "/name");
          values.put(path, name == null ? "" : name);
        } else {
          values.put(path, TypedValue.typed(there));
        }
      }
      case PARTS -> {
        for (int i = 0; i < there.size(); i++) {
          flatten(field.inside(), path + "/" + i, there.get(i), values);
        }
      }
      default -> values.put(path, TypedValue.typed(there));
    }
  }
}

package org.standproud.web.form;

import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.FieldGuide.Sort;
import org.standproud.setup.request.WrittenQuantity;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Converts between the text of a field and its value in a request. Text that is not a {@link
 * WrittenQuantity} goes into the request unchanged, and the request reader refuses it.
 */
public final class TypedValue {

  /** Typed for a value that is not known, as opposed to one from the catalogue. */
  static final String NOT_KNOWN = "?";

  /** Conversion leaves digits such as 500.00000000000006 that were not typed. */
  private static final MathContext SHOWN = new MathContext(12);

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private TypedValue() {}

  /** The request value for typed text, which is not blank. */
  public static JsonNode node(String typed, Sort sort) {
    String text = typed.strip();
    boolean unknown = sort != Sort.TEXT && text.equalsIgnoreCase(FieldGuide.UNKNOWN);
    if (unknown || text.equals(NOT_KNOWN)) {
      return JSON.nullNode();
    }
    return switch (sort) {
      case QUANTITY, BAND, COUNT -> quantity(text);
      case QUANTITIES, COUNTS -> list(text);
      case YES_NO ->
          text.equals("true") || text.equals("false")
              ? JSON.booleanNode(text.equals("true"))
              : JSON.stringNode(text);
      case CHOICE, TEXT, PART, SHELVED_PART, PARTS, SHELVED_PARTS -> JSON.stringNode(text);
    };
  }

  private static JsonNode quantity(String text) {
    try {
      return quantity(WrittenQuantity.of(text));
    } catch (WrittenQuantity.Unclear unclear) {
      return JSON.stringNode(text);
    }
  }

  private static JsonNode quantity(WrittenQuantity written) {
    if (written.unit() == null && written.high() == null) {
      return JSON.numberNode(written.low());
    }
    ObjectNode node = JSON.objectNode();
    node.set(written.high() == null ? "value" : "low", JSON.numberNode(written.low()));
    if (written.high() != null) {
      node.set("high", JSON.numberNode(written.high()));
    }
    if (written.likely() != null) {
      node.set("likely", JSON.numberNode(written.likely()));
    }
    if (written.unit() != null) {
      node.put("unit", written.unit());
    }
    return node;
  }

  private static JsonNode list(String text) {
    ArrayNode list = JSON.arrayNode();
    for (String item : text.split(",")) {
      list.add(quantity(item.strip()));
    }
    return list;
  }

  /** The text for a request value. */
  public static String typed(JsonNode node) {
    if (node.isNull()) {
      return NOT_KNOWN;
    } else if (node.isArray()) {
      List<String> items = new ArrayList<>();
      node.forEach(item -> items.add(typed(item)));
      return String.join(", ", items);
    } else if (node.isObject()) {
      return quantity(node);
    } else if (node.isNumber()) {
      return plain(node);
    }
    return node.asString();
  }

  private static String quantity(JsonNode node) {
    @Nullable JsonNode value = node.get("value");
    StringBuilder typed = new StringBuilder();
    if (value != null) {
      typed.append(plain(value));
    } else if (node.has("low") && node.has("high")) {
      typed.append(plain(node.get("low"))).append(" to ").append(plain(node.get("high")));
      if (node.has("likely")) {
        typed.append(" likely ").append(plain(node.get("likely")));
      }
    }
    return node.has("unit") ? typed + " " + node.get("unit").asString() : typed.toString();
  }

  private static String plain(JsonNode number) {
    return number.isNumber()
        ? number.decimalValue().round(SHOWN).stripTrailingZeros().toPlainString()
        : number.asString();
  }
}

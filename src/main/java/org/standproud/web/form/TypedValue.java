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
 * What is typed into a field and what stands in a request, one made from the other. What is no
 * {@link WrittenQuantity} goes into the request as it was typed, for the reader of requests to
 * refuse.
 */
final class TypedValue {

  /** Typed where something is not known, as against taken from the catalogue. */
  static final String NOT_KNOWN = "?";

  /** What a conversion leaves behind, such as 500.00000000000006, is nobody's number. */
  private static final MathContext SHOWN = new MathContext(12);

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private TypedValue() {}

  /** What goes into the request for what was typed, which is not blank. */
  static JsonNode node(String typed, Sort sort) {
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
      case CHOICE, TEXT, PART, SHELVED_PART, PARTS -> JSON.stringNode(text);
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

  /** What would be typed for what stands in a request. */
  static String typed(JsonNode node) {
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

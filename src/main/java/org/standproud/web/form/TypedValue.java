package org.standproud.web.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.request.FieldGuide.Sort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is typed into a field and what stands in a request, one made from the other. A number may
 * have its unit behind it, and a band is written as its ends: {@code 25 to 35 kN}. What cannot be
 * made out goes into the request as it was typed, for the reader of requests to find fault with: in
 * particular a comma, which stands for a point in one shop and for thousands in the next.
 */
final class TypedValue {

  /** Typed where something is not known, as against taken from the catalogue. */
  static final String NOT_KNOWN = "?";

  private static final String NUMBER = "[-+]?[0-9]{1,15}(?:\\.[0-9]{1,30})?";
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<low>"
              + NUMBER
              + ")(?: ?to ?(?<high>"
              + NUMBER
              + ")(?:,? ?likely ?(?<likely>"
              + NUMBER
              + "))?)? ?(?<unit>[A-Za-z%°µ][A-Za-z0-9%°µ/.^*-]*)?");

  /** What a conversion leaves behind, such as 500.00000000000006, is nobody's number. */
  private static final MathContext SHOWN = new MathContext(12);

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private TypedValue() {}

  /** What goes into the request for what was typed, which is not blank. */
  static JsonNode node(String typed, Sort sort) {
    String text = typed.strip();
    if (text.equals(NOT_KNOWN)) {
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
    Matcher matcher = QUANTITY.matcher(text.replaceAll("\\s+", " "));
    if (!matcher.matches()) {
      return JSON.stringNode(text);
    }
    String unit = matcher.group("unit");
    String high = matcher.group("high");
    if (unit == null && high == null) {
      return number(matcher.group("low"));
    }
    ObjectNode node = JSON.objectNode();
    node.set(high == null ? "value" : "low", number(matcher.group("low")));
    if (high != null) {
      node.set("high", number(high));
    }
    if (matcher.group("likely") != null) {
      node.set("likely", number(matcher.group("likely")));
    }
    if (unit != null) {
      node.put("unit", unit);
    }
    return node;
  }

  private static JsonNode number(String digits) {
    return JSON.numberNode(new BigDecimal(digits));
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

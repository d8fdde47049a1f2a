package org.standproud.assessment.batch;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A set-up built cell by cell. */
final class Row {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,30}(\\.\\d{1,30})?");

  private final ObjectNode setup;

  /**
   * Creates a row without its own values.
   *
   * @param common the values of every row
   */
  Row(ObjectNode common) {
    this.setup = common.deepCopy();
  }

  /** Sets the field of a column; text in place of a number is refused later. */
  void put(ColumnMap.Column column, String cell) {
    String[] steps = column.pointer().substring(1).split("/");
    JsonNode at = setup;
    for (int i = 0; i < steps.length - 1; i++) {
      at = inside(at, steps[i], isPlace(steps[i + 1]));
    }
    set(at, steps[steps.length - 1], value(column, cell));
  }

  ObjectNode setup() {
    return setup;
  }

  private static JsonNode value(ColumnMap.Column column, String cell) {
    return switch (column.sort()) {
      case QUANTITY, BAND -> quantity(cell, column);
      case COUNT -> number(cell);
      case YES_NO ->
          switch (cell.toLowerCase(Locale.ROOT)) {
            case "true", "yes" -> NODES.booleanNode(true);
            case "false", "no" -> NODES.booleanNode(false);
            default -> NODES.stringNode(cell);
          };
      default -> NODES.stringNode(cell);
    };
  }

  private static JsonNode quantity(String cell, ColumnMap.Column column) {
    JsonNode number = number(cell);
    return column.unit() == null
        ? number
        : NODES.objectNode().put("unit", column.unit()).set("value", number);
  }

  private static JsonNode number(String cell) {
    return NUMBER.matcher(cell).matches()
        ? NODES.numberNode(new BigDecimal(cell))
        : NODES.stringNode(cell);
  }

  private static JsonNode inside(JsonNode at, String step, boolean list) {
    JsonNode there = at.path(isPlace(step) ? "" : step);
    if (at instanceof ArrayNode items && isPlace(step)) {
      there = items.path(Integer.parseInt(step));
    }
    if (there.isContainer()) {
      return there;
    }
    JsonNode made = list ? NODES.arrayNode() : NODES.objectNode();
    set(at, step, made);
    return made;
  }

  /** Lists have no gaps: an item after an empty one moves up. */
  private static void set(JsonNode at, String step, JsonNode value) {
    if (at instanceof ArrayNode items && isPlace(step)) {
      int place = Integer.parseInt(step);
      if (place < items.size()) {
        items.set(place, value);
      } else {
        items.add(value);
      }
    } else if (at instanceof ObjectNode object) {
      object.set(step, value);
    }
  }

  private static boolean isPlace(String step) {
    return step.chars().allMatch(Character::isDigit);
  }
}

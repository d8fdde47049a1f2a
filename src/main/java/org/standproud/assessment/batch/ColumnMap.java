package org.standproud.assessment.batch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.refusal.BadParameterException;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.FieldGuide.Sort;
import org.standproud.setup.request.RequestText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Maps the columns of a table to fields of a set-up.
 *
 * @param columns by heading
 * @param common what every row has in common
 * @param ignore headings of columns that are skipped
 * @param key heading of the idempotency key, null if there is none
 * @param separator the cell separator
 */
public record ColumnMap(
    Map<String, Column> columns,
    ObjectNode common,
    Set<String> ignore,
    @Nullable String key,
    char separator) {

  private static final String NAME = "map";
  private static final Set<String> MEMBERS =
      Set.of("columns", "common", "ignore", "key", "separator");
  private static final Set<Sort> ONE_CELL =
      Set.of(
          Sort.QUANTITY,
          Sort.BAND,
          Sort.COUNT,
          Sort.CHOICE,
          Sort.YES_NO,
          Sort.TEXT,
          Sort.SHELVED_PART);

  /** Every field by its pointer; the same in either system. */
  private static final Map<String, Sort> FIELDS = fields();

  /**
   * A column.
   *
   * @param pointer the field, as an RFC 6901 JSON Pointer
   * @param sort the type of the field
   * @param unit unit of its numbers, null for the unit of the set-up
   */
  record Column(String pointer, Sort sort, @Nullable String unit) {}

  /**
   * Parses a map.
   *
   * @param json the map as sent
   * @throws BadParameterException if it is invalid, or names a field that does not fit a cell
   */
  public static ColumnMap read(String json) {
    JsonNode tree = tree(json);
    for (String member : tree.propertyNames()) {
      if (!MEMBERS.contains(member)) {
        throw refused("the members are columns, common, ignore, key and separator");
      }
    }
    JsonNode columns = tree.path("columns");
    if (!columns.isObject() || columns.isEmpty()) {
      throw refused("columns must name a field for each heading");
    }
    Map<String, Column> read = new LinkedHashMap<>();
    columns.properties().forEach(e -> read.put(e.getKey(), column(e.getKey(), e.getValue())));
    return new ColumnMap(
        read,
        common(tree),
        Set.copyOf(tree.path("ignore").valueStream().map(JsonNode::asString).toList()),
        tree.has("key") ? tree.path("key").asString() : null,
        separator(tree.path("separator").asString(",")));
  }

  private static ObjectNode common(JsonNode tree) {
    if (!tree.has("common")) {
      return JsonNodeFactory.instance.objectNode();
    } else if (tree.get("common") instanceof ObjectNode common) {
      return common;
    }
    throw refused("common must be an object, part of a set-up");
  }

  private static JsonNode tree(String json) {
    try {
      JsonNode tree = RequestText.json(json);
      if (tree.isObject()) {
        return tree;
      }
    } catch (RequestText.Malformed e) {
      throw refused(String.valueOf(e.getMessage()));
    }
    throw refused("must be a JSON object");
  }

  private static Column column(String heading, JsonNode described) {
    String pointer =
        described.isString() ? described.stringValue() : described.path("field").asString("");
    String unit = described.has("unit") ? described.path("unit").asString() : null;
    Sort sort =
        Optional.ofNullable(FIELDS.get(pointer.replaceAll("/\\d+(?=/|$)", "/*")))
            .filter(ONE_CELL::contains)
            .orElseThrow(
                () ->
                    refused(
                        heading + " names " + pointer + ", which is not a field that fits a cell"));
    if (unit != null && sort != Sort.QUANTITY && sort != Sort.BAND) {
      throw refused(heading + " has a unit, but " + pointer + " has none");
    }
    return new Column(pointer, sort, unit);
  }

  private static char separator(String text) {
    if (!List.of(",", ";", "\t", "|").contains(text)) {
      throw refused("separator must be a comma, semicolon, tab or bar");
    }
    return text.charAt(0);
  }

  private static Map<String, Sort> fields() {
    Map<String, Sort> fields = new TreeMap<>();
    FieldGuide.entries(UnitSystem.METRIC).forEach(e -> fields.put(e.path(), e.sort()));
    return fields;
  }

  private static BadParameterException refused(String wanted) {
    return new BadParameterException(NAME, wanted);
  }
}

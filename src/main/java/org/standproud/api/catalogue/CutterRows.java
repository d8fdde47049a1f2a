package org.standproud.api.catalogue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.request.CatalogueShelf;
import org.standproud.setup.request.FieldGuide;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads cutters as tool data exchange writes them: each property by its ISO 13399 symbol, the rest
 * by field name. The symbols are those in the descriptions of the cutter fields; there is no second
 * list.
 */
final class CutterRows {

  /** Most rows in one import. */
  static final int MOST = 5_000;

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Pattern SYMBOL = Pattern.compile("([A-Z]{2,6}), .*");

  /** Possessive, because a heading may be as long as the file. */
  private static final Pattern COLUMN =
      Pattern.compile("\\s*+([A-Za-z]++)\\s*+(?:[\\[(]([^\\[\\]()]++)[\\])]\\s*+)?+");

  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,15}(?:\\.[0-9]{1,15})?");
  private static final Map<String, FieldGuide.Entry> FIELDS = fields();

  private CutterRows() {}

  /**
   * A column of a table.
   *
   * @param field the field of a cutter
   * @param unit the unit of its numbers; null for the unit of the file
   */
  private record Column(FieldGuide.Entry field, @Nullable String unit) {

    String name() {
      return field.path().substring(1);
    }
  }

  private static Map<String, FieldGuide.Entry> fields() {
    Map<String, FieldGuide.Entry> byName = new LinkedHashMap<>();
    for (FieldGuide.Entry field : CatalogueShelf.CUTTERS.fields()) {
      byName.put(field.path().substring(1), field);
      Matcher symbol = SYMBOL.matcher(field.meaning());
      if (symbol.matches()) {
        byName.put(symbol.group(1), field);
      }
    }
    return byName;
  }

  /**
   * Reads cutters from a table with headings such as {@code DC [mm]}, {@code APMX}, {@code name}.
   *
   * @param text comma-separated values by RFC 4180
   * @return one cutter a row, in the form a request uses; an invalid cell is kept as it is, so that
   *     the cutter reader reports it
   */
  static List<ObjectNode> ofTable(String text) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
    List<ObjectNode> rows = new ArrayList<>();
    try (CSVParser table = CSVParser.parse(new StringReader(text), format)) {
      List<Column> columns = table.getHeaderNames().stream().map(CutterRows::column).toList();
      refuseTwice(columns);
      for (CSVRecord row : table) {
        rows.add(row(row, columns));
        refuseTooMany(rows.size());
      }
    } catch (CSVException | IllegalArgumentException e) {
      throw refused("Not a CSV table: " + e.getMessage());
    } catch (IOException e) {
      throw new IllegalStateException("text in memory is always readable", e);
    }
    return rows;
  }

  /**
   * Reads cutters from a list of objects keyed by symbols.
   *
   * @param list the list
   */
  static List<ObjectNode> ofList(JsonNode list) {
    if (!list.isArray()) {
      throw refused("The member cutters must be a list of cutters.");
    }
    List<ObjectNode> rows = new ArrayList<>();
    for (JsonNode item : list) {
      refuseTooMany(rows.size() + 1);
      ObjectNode row = JSON.objectNode();
      item.properties()
          .forEach(property -> row.set(nameOf(property.getKey()), property.getValue()));
      rows.add(row);
    }
    return rows;
  }

  /** Unknown keys are kept, so that the cutter reader reports them. */
  private static String nameOf(String key) {
    FieldGuide.Entry field = FIELDS.get(key);
    return field == null ? key : field.path().substring(1);
  }

  private static Column column(String heading) {
    Matcher matcher = COLUMN.matcher(heading);
    FieldGuide.Entry field = matcher.matches() ? FIELDS.get(matcher.group(1)) : null;
    if (field == null) {
      throw refused(
          "Unknown column \""
              + heading.substring(0, Math.min(heading.length(), 40))
              + "\"; the columns are "
              + String.join(", ", FIELDS.keySet())
              + ", each with a unit in brackets if its numbers are not in the units of the file.");
    }
    String unit = matcher.group(2);
    return new Column(field, unit == null ? null : unit.strip());
  }

  private static void refuseTwice(List<Column> columns) {
    columns.stream()
        .collect(Collectors.groupingBy(Column::name, Collectors.counting()))
        .forEach(
            (name, times) -> {
              if (times > 1) {
                throw refused("There are " + times + " columns for the field " + name + ".");
              }
            });
  }

  private static void refuseTooMany(int rows) {
    if (rows > MOST) {
      throw refused("At most " + MOST + " rows can be imported at once.");
    }
  }

  private static ObjectNode row(CSVRecord row, List<Column> columns) {
    ObjectNode item = JSON.objectNode();
    for (int i = 0; i < columns.size() && i < row.size(); i++) {
      if (!row.get(i).isEmpty()) {
        item.set(columns.get(i).name(), cell(row.get(i), columns.get(i)));
      }
    }
    if (row.size() > columns.size()) {
      item.put("more cells than headings", row.size() - columns.size());
    }
    return item;
  }

  private static JsonNode cell(String text, Column column) {
    return switch (column.field().sort()) {
      case QUANTITY, COUNT -> {
        JsonNode number = number(text);
        yield column.unit() == null
            ? number
            : JSON.objectNode().set("value", number).put("unit", column.unit());
      }
      case COUNTS -> {
        ArrayNode list = JSON.arrayNode();
        for (String one : text.split("[ ;]+")) {
          list.add(number(one));
        }
        yield list;
      }
      default -> JSON.stringNode(text);
    };
  }

  private static JsonNode number(String text) {
    return NUMBER.matcher(text).matches()
        ? JSON.numberNode(new BigDecimal(text))
        : JSON.stringNode(text);
  }

  private static Refusal refused(String detail) {
    return new Refusal(RefusalKind.IMPORT_REFUSED, detail, Map.of("rows", List.of()));
  }
}

package org.standproud.mechanics.published;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Measured results kept beside the tests: a table of comma-separated values whose first lines, from
 * a number sign on, name source and licence.
 */
public final class MeasuredTable {

  private MeasuredTable() {}

  /**
   * The rows of a table, by column.
   *
   * @param name file under {@code mechanics/measured}
   */
  public static List<Map<String, String>> rows(String name) {
    InputStream file = MeasuredTable.class.getResourceAsStream("/mechanics/measured/" + name);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(Objects.requireNonNull(file, name), UTF_8))) {
      List<String> lines = reader.lines().filter(line -> !line.startsWith("#")).toList();
      String[] columns = lines.get(0).split(",", -1);
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        String[] values = line.split(",", -1);
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
          row.put(columns[i], values[i]);
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A number of a row. */
  public static double number(Map<String, String> row, String column) {
    return Double.parseDouble(Objects.requireNonNull(row.get(column), column));
  }
}

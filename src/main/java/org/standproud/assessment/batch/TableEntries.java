package org.standproud.assessment.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.MalformedRequestException;
import org.standproud.assessment.SetupRequest;
import org.standproud.refusal.BadParameterException;

/** The rows of a table, each converted to a set-up by a column map. */
public final class TableEntries implements OrderedParallelism.Source<Entry> {

  private final Iterator<CSVRecord> rows;
  private final ColumnMap map;
  private long row;
  private boolean broken;

  private TableEntries(CSVParser table, ColumnMap map) {
    this.rows = table.iterator();
    this.map = map;
  }

  /**
   * Reads the headings.
   *
   * @param in the table, UTF-8
   * @param map its column map
   * @throws BadParameterException if a heading is missing, or is neither mapped nor ignored
   * @throws MalformedRequestException if the headings cannot be read
   */
  public static TableEntries open(InputStream in, ColumnMap map) throws IOException {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(map.separator())
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .get();
    try {
      // Closed with the request.
      CSVParser table = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format);
      refuseUnheard(table.getHeaderNames(), map);
      return new TableEntries(table, map);
    } catch (IllegalArgumentException e) {
      throw new MalformedRequestException("the headings cannot be read: " + e.getMessage());
    }
  }

  private static void refuseUnheard(List<String> headings, ColumnMap map) {
    for (String wanted : map.columns().keySet()) {
      if (!headings.contains(wanted)) {
        throw new BadParameterException("map", "the table has no column " + wanted);
      }
    }
    if (map.key() != null && !headings.contains(map.key())) {
      throw new BadParameterException("map", "the table has no column " + map.key());
    }
    for (String heading : headings) {
      if (!map.columns().containsKey(heading)
          && !map.ignore().contains(heading)
          && !heading.equals(map.key())) {
        throw new BadParameterException(
            "map", "the column " + heading + " is neither mapped nor ignored");
      }
    }
  }

  @Override
  public @Nullable Entry next() throws IOException {
    try {
      if (broken || !rows.hasNext()) {
        return null;
      }
      CSVRecord cells = rows.next();
      return new Entry(++row, () -> read(cells));
    } catch (UncheckedIOException e) {
      return broken(e);
    } catch (IllegalStateException e) {
      return broken(e);
    }
  }

  /** After unmatched quotes the start of the next row is not known. */
  private Entry broken(Exception why) {
    broken = true;
    String reason = "the table cannot be read from here on: " + why.getMessage();
    return new Entry(
        ++row,
        () -> {
          throw new MalformedRequestException(reason);
        });
  }

  private Entry.Parsed read(CSVRecord cells) {
    if (!cells.isConsistent()) {
      throw new MalformedRequestException(
          "the row has " + cells.size() + " cells, the heading has another number");
    }
    Row setup = new Row(map.common());
    Map<String, String> columns = new LinkedHashMap<>();
    map.columns()
        .forEach(
            (heading, column) -> {
              columns.put(column.pointer(), heading);
              String cell = cells.get(heading);
              if (!cell.isEmpty()) {
                setup.put(column, cell);
              }
            });
    String key = map.key() == null ? null : cells.get(map.key());
    return new Entry.Parsed(
        new SetupRequest(setup.setup()), key == null || key.isEmpty() ? null : key, columns);
  }
}

package org.standproud.advice.everyday;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The table of everyday set-ups. */
final class EverydayTable {

  private static final Path FILE = Path.of("src/test/resources/everyday/set-ups.csv");
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private EverydayTable() {}

  /** The rows in order. */
  static List<EverydaySetup> rows() {
    try (Reader text = Files.newBufferedReader(FILE)) {
      return FORMAT.parse(text).stream().map(CSVRecord::toMap).map(EverydaySetup::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

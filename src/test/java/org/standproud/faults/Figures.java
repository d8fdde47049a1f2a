package org.standproud.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What a trial found, as lines of key=value in the order in which it was found. */
final class Figures {

  /** Where the figures lie that api-docs/reliability.md shows. */
  static final Path KEPT = Path.of("api-docs/reliability");

  private final Map<String, String> lines = new LinkedHashMap<>();

  /** A figure; a number with a fraction keeps one digit of it. */
  void put(String key, Object value) {
    boolean fraction = value instanceof Double || value instanceof Float;
    lines.put(key, fraction ? String.format(Locale.ROOT, "%.1f", value) : String.valueOf(value));
  }

  /** Keeps them where the page is made from them. */
  void keep(String trial) throws IOException {
    Files.createDirectories(KEPT);
    Files.writeString(KEPT.resolve(trial + ".properties"), text());
  }

  String text() {
    return lines.entrySet().stream()
        .map(line -> line.getKey() + "=" + line.getValue() + "\n")
        .collect(Collectors.joining());
  }
}

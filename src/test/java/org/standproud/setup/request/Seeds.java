package org.standproud.setup.request;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The demo shop, as the tests read it. */
final class Seeds {

  static final Catalogue CATALOGUE = catalogue();
  static final SetupReader READER = new SetupReader(CATALOGUE);
  private static final JsonMapper JSON = JsonMapper.shared();

  private Seeds() {}

  private static Catalogue catalogue() {
    try {
      CatalogueReading reading = CatalogueReader.read(Path.of("seeds"));
      if (reading instanceof CatalogueReading.Loaded loaded) {
        return loaded.catalogue();
      }
      throw new IllegalStateException(reading.toString().replace("Problem[", "\nProblem["));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Path> setups() {
    try (Stream<Path> files = Files.list(Path.of("seeds/setups"))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static ObjectNode request(String start) {
    Path file =
        setups().stream()
            .filter(p -> p.getFileName().toString().startsWith(start))
            .findFirst()
            .orElseThrow();
    return (ObjectNode) JSON.readTree(text(file));
  }

  static ObjectNode object(JsonNode request, String name) {
    return (ObjectNode) request.get(name);
  }

  static JsonNode json(String text) {
    return JSON.readTree(text.replace('\'', '"'));
  }

  static Setup accepted(JsonNode request) {
    Reading reading = READER.read(request);
    if (reading instanceof Reading.Accepted accepted) {
      return accepted.setup();
    }
    throw new AssertionError(reading.toString().replace("Problem[", "\nProblem["));
  }

  static List<Problem> problems(JsonNode request) {
    return READER.read(request) instanceof Reading.Refused refused ? refused.problems() : List.of();
  }
}

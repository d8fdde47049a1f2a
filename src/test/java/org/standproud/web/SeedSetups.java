package org.standproud.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/** The demonstration set-ups that come with the project. */
public final class SeedSetups {

  private static final Path SEEDS = Path.of("seeds");

  private SeedSetups() {}

  /** Their names, in order. */
  public static List<String> names() {
    try (Stream<Path> files = Files.list(SEEDS.resolve("setups"))) {
      return files.map(f -> f.getFileName().toString().replace(".json", "")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The request of one, as it is written. */
  public static String json(String name) {
    try {
      return Files.readString(SEEDS.resolve("setups").resolve(name + ".json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The set-up of one. */
  public static Setup setup(String name) {
    return read(json(name));
  }

  /** The set-up of a request. */
  public static Setup read(String json) {
    return ((Reading.Accepted) new SetupReader(catalogue()).readJson(json)).setup();
  }

  /** The demonstration catalogue. */
  public static Catalogue catalogue() {
    try {
      return ((CatalogueReading.Loaded) CatalogueReader.read(SEEDS)).catalogue();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

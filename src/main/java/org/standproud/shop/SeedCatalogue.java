package org.standproud.shop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.CatalogueShelf;
import org.standproud.setup.request.Problem;
import tools.jackson.databind.node.ObjectNode;

/**
 * The catalogue read from a folder of files, or the error. An empty database starts with it, and
 * the demonstration set-ups, on which cards are tried, always use it.
 */
public final class SeedCatalogue {

  private final CatalogueReading.@Nullable Loaded loaded;
  private final String fault;

  private SeedCatalogue(CatalogueReading.@Nullable Loaded loaded, String fault) {
    this.loaded = loaded;
    this.fault = fault;
  }

  /**
   * Reads the four files of a folder.
   *
   * @param folder the folder
   */
  public static SeedCatalogue read(Path folder) {
    try {
      CatalogueReading reading = CatalogueReader.read(folder);
      if (reading instanceof CatalogueReading.Loaded loaded) {
        return new SeedCatalogue(loaded, "");
      }
      CatalogueReading.Refused refused = (CatalogueReading.Refused) reading;
      Problem first = refused.problems().get(0);
      return new SeedCatalogue(
          null,
          "the catalogue has %d faults; the first: %s: %s"
              .formatted(refused.problems().size(), first.pointer(), first.message()));
    } catch (IOException e) {
      return new SeedCatalogue(null, "the catalogue cannot be read: " + e.getMessage());
    }
  }

  /** The catalogue; empty if it could not be read. */
  public Optional<Catalogue> get() {
    return Optional.ofNullable(loaded).map(CatalogueReading.Loaded::catalogue);
  }

  /** Its items as written, by shelf and name; empty if it could not be read. */
  public Map<CatalogueShelf, Map<String, ObjectNode>> items() {
    return loaded == null ? Map.of() : loaded.items();
  }

  /** Why there is no catalogue; empty if there is one. */
  public String fault() {
    return fault;
  }
}

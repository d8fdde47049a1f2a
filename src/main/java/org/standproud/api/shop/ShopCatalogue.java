package org.standproud.api.shop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.reading.CatalogueReader;
import org.standproud.setup.reading.CatalogueReading;
import org.standproud.setup.reading.Problem;

/** The catalogue as it was read when the service started, or why there is none. */
public final class ShopCatalogue {

  private final @Nullable Catalogue catalogue;
  private final String fault;

  private ShopCatalogue(@Nullable Catalogue catalogue, String fault) {
    this.catalogue = catalogue;
    this.fault = fault;
  }

  /**
   * Reads the four files of a folder.
   *
   * @param folder the folder
   */
  public static ShopCatalogue read(Path folder) {
    try {
      CatalogueReading reading = CatalogueReader.read(folder);
      if (reading instanceof CatalogueReading.Loaded loaded) {
        return new ShopCatalogue(loaded.catalogue(), "");
      }
      CatalogueReading.Refused refused = (CatalogueReading.Refused) reading;
      Problem first = refused.problems().get(0);
      return new ShopCatalogue(
          null,
          "the catalogue has %d faults; the first: %s: %s"
              .formatted(refused.problems().size(), first.pointer(), first.message()));
    } catch (IOException e) {
      return new ShopCatalogue(null, "the catalogue cannot be read: " + e.getMessage());
    }
  }

  /** The catalogue; empty if it could not be read. */
  public Optional<Catalogue> get() {
    return Optional.ofNullable(catalogue);
  }

  /** Why there is no catalogue; empty if there is one. */
  public String fault() {
    return fault;
  }
}

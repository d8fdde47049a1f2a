package org.standproud.shop;

import java.nio.file.Path;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.settings.SettingRefused;

/**
 * The catalogue of the shop.
 *
 * @param directory the folder with machines.yaml, vises.yaml, cutters.yaml and materials.yaml, and
 *     setups/ for the examples of cards
 */
@ConfigurationProperties("standproud.catalogue")
public record CatalogueProperties(Path directory) {

  /** Checks the value. */
  public CatalogueProperties {
    SettingRefused.given("standproud.catalogue.directory", directory, "A folder is required.");
  }

  /** The folder of demonstration set-ups. */
  public Path setups() {
    return directory.resolve("setups");
  }
}

package org.standproud.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SeedCatalogueTest {

  @Test
  void aCatalogueThatCannotBeReadSaysWhy() {
    SeedCatalogue none = SeedCatalogue.read(Path.of("seeds/none"));
    assertThat(none.get()).isEmpty();
    assertThat(none.fault()).startsWith("the catalogue cannot be read");
  }
}

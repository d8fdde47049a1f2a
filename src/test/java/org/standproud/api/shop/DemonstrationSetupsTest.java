package org.standproud.api.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.catalogue.Catalogue;

class DemonstrationSetupsTest {

  private final DemonstrationSetups setups =
      new DemonstrationSetups(
          Path.of("seeds/setups"), ShopCatalogue.read(Path.of("seeds")).get().orElseThrow());

  @Test
  void anExampleMayStartFromASetUpOfTheDemoShop() {
    assertThat(setups.evidence("03-tall-plate-barely-gripped"))
        .hasValueSatisfying(
            evidence ->
                assertThat(evidence.get(Vocabulary.GRIP_DEPTH))
                    .isEqualTo(new Value.Quantity(Band.exactly(0.008))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"none", "", "../cutters", "../../api-docs/examples/setup", "."})
  void noNameLeadsToAnythingElse(String name) {
    assertThat(setups.evidence(name)).isEmpty();
  }

  @Test
  void aFolderWithoutSetUpsHasNone() {
    DemonstrationSetups none = new DemonstrationSetups(Path.of("seeds/none"), Catalogue.EMPTY);
    assertThat(none.evidence("03-tall-plate-barely-gripped")).isEmpty();
  }

  @Test
  void aCatalogueThatCannotBeReadSaysWhy() {
    ShopCatalogue none = ShopCatalogue.read(Path.of("seeds/none"));
    assertThat(none.get()).isEmpty();
    assertThat(none.fault()).startsWith("the catalogue cannot be read");
  }
}

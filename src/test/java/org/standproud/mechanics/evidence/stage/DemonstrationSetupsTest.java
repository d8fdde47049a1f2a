package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;

class DemonstrationSetupsTest {

  private static DemonstrationSetups setups;

  @BeforeAll
  static void openTheShop() throws IOException {
    setups =
        new DemonstrationSetups(
            Path.of("seeds/setups"),
            ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue());
  }

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
}

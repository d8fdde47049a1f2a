package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;

class SeedShopTest {

  @Test
  void theShopHasThreeMillsFourVisesTwentyCuttersAndThirtyMaterials() {
    assertThat(Seeds.CATALOGUE.machines()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(Seeds.CATALOGUE.vises()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(Seeds.CATALOGUE.cutters()).hasSizeGreaterThanOrEqualTo(20);
    assertThat(Seeds.CATALOGUE.materials()).hasSizeGreaterThanOrEqualTo(30);
    assertThat(Seeds.setups()).hasSizeGreaterThanOrEqualTo(12);
    assertThat(Seeds.CATALOGUE.revision()).matches("[0-9a-f]{64}");
  }

  /** Every row says where it was read or that it is from memory. */
  @Test
  void everyMaterialNamesItsSourceAndHowSurely() {
    assertThat(Seeds.CATALOGUE.materials().values())
        .extracting(Material::source)
        .allMatch(s -> s.contains("read") || s.contains("from memory"));
  }

  static Stream<Path> setups() {
    return Seeds.setups().stream();
  }

  @ParameterizedTest
  @MethodSource("setups")
  void everySeedSetUpReads(Path file) {
    assertThat(Seeds.READER.readJson(Seeds.text(file))).isInstanceOf(Reading.Accepted.class);
  }

  @ParameterizedTest
  @MethodSource("setups")
  void aKeptSetUpComesBackEqual(Path file) {
    Setup setup = Seeds.accepted(Seeds.json(Seeds.text(file).replace('\'', ' ')));
    String text = CanonicalText.of(setup);
    assertThat(CanonicalText.setup(text)).isEqualTo(setup);
    assertThat(CanonicalText.of(CanonicalText.setup(text))).isEqualTo(text);
    assertThat(text).doesNotContain("\"exact\"");
  }

  @ParameterizedTest
  @MethodSource("setups")
  void theSameSetUpInInchesAndInMillimetresIsTheSameSetUp(Path file) {
    Setup setup = Seeds.accepted(Seeds.json(Seeds.text(file).replace('\'', ' ')));
    for (UnitSystem units : UnitSystem.values()) {
      Setup again = Seeds.accepted(CanonicalText.request(setup, units));
      assertThat(again.units()).isEqualTo(units);
      Likeness.check(CanonicalText.of(setup), CanonicalText.of(again));
    }
  }

  @Test
  void aCatalogueWithAnotherNumberHasAnotherRevision() {
    String vises = Seeds.text(Path.of("seeds/vises.yaml"));
    String revision = revision(vises);
    assertThat(revision(vises + "\n# a remark\n")).isEqualTo(revision);
    assertThat(revision(vises.replace("jawWidth: 152", "jawWidth: 153"))).isNotEqualTo(revision);
  }

  private static String revision(String vises) {
    return ((CatalogueReading.Loaded) CatalogueReader.read(Map.of("vises.yaml", vises)))
        .catalogue()
        .revision();
  }
}

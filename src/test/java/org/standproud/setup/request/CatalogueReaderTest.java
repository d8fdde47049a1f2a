package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standproud.setup.catalogue.Catalogue;

class CatalogueReaderTest {

  private static List<Problem> problems(String file, String text) {
    return CatalogueReader.read(Map.of(file, text)) instanceof CatalogueReading.Refused refused
        ? refused.problems()
        : List.of();
  }

  @Test
  void aWrongRowIsNamedByFilePlaceAndRange() {
    String text =
        Seeds.text(Path.of("seeds/vises.yaml"))
            .replace("jawWidth: 125", "jawWidth: 12500")
            .replace("bedHeight: 80", "bedHieght: 80");
    assertThat(problems("vises.yaml", text))
        .extracting(Problem::pointer)
        .containsExactlyInAnyOrder(
            "vises.yaml#/vises/1/bedHieght",
            "vises.yaml#/vises/1/bedHeight",
            "vises.yaml#/vises/2/jawWidth");
  }

  @Test
  void oneNameStandsForOneThing() {
    String text =
        Seeds.text(Path.of("seeds/machines.yaml"))
            .replace("name: small knee mill", "name: large knee mill");
    assertThat(problems("machines.yaml", text))
        .singleElement()
        .satisfies(p -> assertThat(p.pointer()).isEqualTo("machines.yaml#/machines/1/name"));
  }

  @Test
  void textThatIsNoCatalogueIsRefusedInWords() {
    assertThat(problems("cutters.yaml", "units: [")).singleElement();
    assertThat(problems("cutters.yaml", "")).isNotEmpty();
    assertThat(problems("cutters.yaml", "- 1")).isNotEmpty();
    assertThat(problems("cutters.yaml", "units: metric\nunits: inch\ncutters: []")).singleElement();
    assertThat(problems("cutters.yaml", "units: metric\ncutters: []")).isEmpty();
  }

  @Test
  void aCatalogueCannotBeChangedAfterwards() {
    Catalogue catalogue = Seeds.CATALOGUE;
    assertThatThrownBy(() -> catalogue.vises().clear())
        .isInstanceOf(UnsupportedOperationException.class);
  }
}

package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import org.standproud.mechanics.evidence.Vocabulary;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The shelves and the vocabulary, in the caller's units. */
@IntegrationTest
class CatalogueTest {

  private final RunningService service = RunningService.shared();

  @Test
  void aViseIsShownInTheUnitsAskedFor() {
    JsonNode metric = json("/v1/catalogue/vises/ground%20vise%20150");
    JsonNode inch = json("/v1/catalogue/vises/ground%20vise%20150?units=inch");
    assertThat(metric.get("jawWidth").doubleValue()).isEqualTo(152);
    // 25.4 mm to the inch, International Yard and Pound Agreement of 1959 [memory]
    assertThat(inch.get("jawWidth").doubleValue()).isCloseTo(152 / 25.4, Offset.offset(1e-9));
  }

  @Test
  void anItemWithASlashInItsNameIsFound() {
    JsonNode material = json("/v1/catalogue/materials/S235%20%2F%20A36%20hot%20rolled");
    assertThat(material.get("name").stringValue()).isEqualTo("S235 / A36 hot rolled");
  }

  @ParameterizedTest
  @ValueSource(strings = {"machines", "vises", "cutters", "materials"})
  void everyShelfHoldsWhatTheContentsName(String shelf) {
    JsonNode names = json("/v1/catalogue").get("shelves").get(shelf);
    JsonNode items = json("/v1/catalogue/" + shelf);
    assertThat(items.size()).isEqualTo(names.size()).isPositive();
    for (int i = 0; i < items.size(); i++) {
      assertThat(items.get(i).get("name")).isEqualTo(names.get(i));
    }
  }

  @Test
  void whatTheShelfShowsCanBePutIntoARequest() {
    ObjectNode setup = RunningService.seed("01");
    JsonNode byName = RunningService.json(service.assess(setup));
    setup.set("machine", json("/v1/catalogue/machines/large%20knee%20mill"));
    JsonNode described = RunningService.json(service.assess(setup));
    assertThat(described.get("evidence")).isEqualTo(byName.get("evidence"));
  }

  @Test
  void theVocabularyNamesEveryFactWithItsMeaningAndFormula() {
    JsonNode facts = json("/v1/vocabulary");
    assertThat(facts.size()).isEqualTo(Vocabulary.all().size());
    for (JsonNode fact : facts) {
      assertThat(fact.get("meaning").stringValue()).isNotBlank();
      assertThat(fact.get("formula").stringValue()).isNotBlank();
    }
  }

  private JsonNode json(String path) {
    HttpResponse<String> response = service.get(path);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
    return RunningService.json(response);
  }
}

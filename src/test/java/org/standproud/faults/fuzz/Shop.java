package org.standproud.faults.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.standproud.api.RunningService;
import tools.jackson.databind.JsonNode;

/** Names of what is there in a service, so that some hostile requests lead somewhere. */
public final class Shop implements HostileRequests.Known {

  private static final List<String> SEEDS = List.of("01", "03", "05", "08");

  private final Map<String, List<String>> ids;
  private final List<String> names = new ArrayList<>();

  /** Has a few set-ups judged and looks at what else there is. */
  public Shop(RunningService.Caller service) {
    List<String> assessments = new ArrayList<>();
    for (String seed : SEEDS) {
      String self =
          service.assess(RunningService.seed(seed)).headers().firstValue("Location").orElseThrow();
      assessments.add(self.substring(self.lastIndexOf('/') + 1));
    }
    JsonNode rules = RunningService.json(service.get("/v1/rules"));
    List<String> cards = new ArrayList<>();
    rules.get("rules").forEach(card -> cards.add(card.get("id").stringValue()));
    RunningService.json(service.get("/v1/catalogue"))
        .forEach(shelf -> shelf.forEach(item -> names.add(item.path("name").asString(""))));
    names.add("ground vise 150");
    this.ids =
        Map.of(
            "/v1/assessments/",
            assessments,
            "/v1/rules/",
            cards,
            "/v1/rule-base/revisions/",
            List.of(rules.at("/revision/id").stringValue()));
  }

  @Override
  public List<String> of(String path, String name) {
    if (name.equals("name")) {
      return names;
    }
    return name.equals("id")
        ? ids.entrySet().stream()
            .filter(entry -> path.startsWith(entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(List.of())
        : List.of();
  }
}

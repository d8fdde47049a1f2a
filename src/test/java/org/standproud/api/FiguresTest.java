package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What an operator's metrics server reads of the service. */
@IntegrationTest
class FiguresTest {

  private final RunningService service = RunningService.shared();

  private String figures() {
    HttpResponse<String> read = service.get("/actuator/prometheus");
    assertThat(read.statusCode()).isEqualTo(200);
    return read.body();
  }

  private static double figure(String figures, String name, String... labels) {
    StringBuilder pattern = new StringBuilder("(?m)^" + name + "\\{");
    for (String label : labels) {
      pattern.append("(?=[^}]*").append(Pattern.quote(label)).append(")");
    }
    Matcher line = Pattern.compile(pattern + "[^}]*} ([0-9.E+-]+)$").matcher(figures);
    return line.find() ? Double.parseDouble(line.group(1)) : 0;
  }

  @Test
  void eachAnswerCountsItsVerdictAndEachFindingItsCard() {
    String before = figures();
    JsonNode answer = RunningService.json(service.assess(RunningService.seed("03")));
    String after = figures();
    String verdict = "verdict=\"" + answer.get("verdict").stringValue() + "\"";
    assertThat(figure(after, "standproud_assessments_total", verdict))
        .isGreaterThan(figure(before, "standproud_assessments_total", verdict));
    for (JsonNode finding : answer.get("findings")) {
      String[] labels = {
        "card=\"" + finding.get("card").stringValue() + "\"",
        "kind=\"" + finding.get("kind").stringValue() + "\""
      };
      assertThat(figure(after, "standproud_findings_total", labels))
          .isGreaterThan(figure(before, "standproud_findings_total", labels));
    }
    assertThat(after).doesNotContain("TLW-0103");
  }

  @ParameterizedTest
  @ValueSource(strings = {"reading", "mechanics", "rules", "advice", "storing"})
  void eachStageIsTimedWhetherItSucceedsOrNot(String stage) {
    String label = "stage=\"" + stage + "\"";
    double before = figure(figures(), "standproud_stage_seconds_count", label);
    service.assess(RunningService.seed("01"));
    String after = figures();
    assertThat(figure(after, "standproud_stage_seconds_count", label)).isGreaterThan(before);
    assertThat(figure(after, "standproud_stage_seconds_bucket", label, "le=\"+Inf\"")).isPositive();
  }

  @Test
  void aSetUpThatIsRefusedIsReadButNotJudged() {
    double before = figure(figures(), "standproud_stage_seconds_count", "stage=\"reading\"");
    ObjectNode setup = RunningService.seed("01").put("machine", "none");
    assertThat(service.assess(setup).statusCode()).isEqualTo(422);
    assertThat(figure(figures(), "standproud_stage_seconds_count", "stage=\"reading\""))
        .isGreaterThan(before);
    assertThat(figures()).contains("standproud_cards ");
  }
}

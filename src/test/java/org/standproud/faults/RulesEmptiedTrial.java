package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.springframework.util.FileSystemUtils;
import org.standproud.api.RunningService;

/** The folder of rule cards is emptied, and then deleted. */
final class RulesEmptiedTrial implements Trial {

  private static final String SERVING = "/revision/id";

  @Override
  public void run(Path work, Figures figures) throws Exception {
    Path rules = work.resolve("rules");
    FileSystemUtils.copyRecursively(Path.of("rules"), rules);
    String first;
    try (RunningService service = start(work)) {
      first = revision(service.caller());
      empty(rules);
      figures.put("reload-of-empty-folder", reloaded(service.caller()).statusCode());
      assertThat(revision(service.caller())).isEqualTo(first);
      FileSystemUtils.deleteRecursively(rules);
      figures.put("reload-of-no-folder", reloaded(service.caller()).statusCode());
      assertThat(revision(service.caller())).isEqualTo(first);
      assertThat(judgedBy(service.caller())).isEqualTo(first);
      assertThat(service.caller().get("/actuator/health/readiness").statusCode()).isEqualTo(200);
    }
    try (RunningService again = start(work)) {
      assertThat(judgedBy(again.caller())).isEqualTo(first);
      figures.put("serves-after-restart", "the same revision");
    }
  }

  private static RunningService start(Path work) {
    return RunningService.start(work.resolve("audit"), work.resolve("rules"));
  }

  private static void empty(Path rules) throws Exception {
    List<Path> cards;
    try (var files = Files.walk(rules)) {
      cards = files.filter(file -> file.toString().endsWith(".yaml")).toList();
    }
    for (Path card : cards) {
      Files.delete(card);
    }
  }

  private static HttpResponse<String> reloaded(RunningService.Caller shop) {
    return shop.post("/v1/rules/reload", "", "application/json");
  }

  private static String revision(RunningService.Caller shop) {
    return RunningService.json(shop.get("/v1/rules")).at(SERVING).stringValue();
  }

  private static String judgedBy(RunningService.Caller shop) {
    return RunningService.json(shop.assess(RunningService.seed("01")))
        .at("/versions/ruleBase")
        .stringValue();
  }
}

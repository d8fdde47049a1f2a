package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.Standproud;
import org.standproud.command.records.AuditCommand;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What an auditor types two years later, when the service is stopped and the cards have changed.
 */
@IntegrationTest
class ReplayCommandTest {

  private static final Path CARD = Path.of("holding/HOLD-025.yaml");

  /** Without a stop that judges the hold nothing is promised. */
  private static final Path HOLD = Path.of("holding/HOLD-011.yaml");

  private @TempDir Path audit;
  private @TempDir Path rules;
  private String said = "";

  @Test
  void theAnswerComesAgainAtItsRevisionByteForByteAndAtAnotherTheDifferenceIsShown()
      throws IOException {
    put("severity: caution");
    JsonNode answer;
    try (RunningService service = RunningService.start(audit, rules)) {
      answer = RunningService.json(service.assess(RunningService.seed("09")));
    }
    String id = answer.get("id").stringValue();
    assertThat(answer.get("verdict").stringValue()).isEqualTo("run with care");

    put("severity: stop");
    try (RunningService edited = RunningService.start(audit, rules)) {
      JsonNode inService = RunningService.json(edited.get("/v1/rules")).at("/revision/id");
      assertThat(inService.stringValue()).isNotEqualTo(revision(answer));
    }
    assertThat(audit("replay", id)).as(said).isZero();
    JsonNode replay = JsonMapper.shared().readTree(said);
    assertThat(replay.get("outcome").stringValue()).isEqualToIgnoringCase("reproduced");
    assertThat(replay.get("differences").size()).isZero();
    assertThat(replay.get("ruleBase")).isEqualTo(answer.at("/versions/ruleBase"));

    assertThat(audit("replay", id, "--at", "today")).as(said).isEqualTo(1);
    JsonNode today = JsonMapper.shared().readTree(said);
    assertThat(today.at("/recorded/verdict").stringValue()).isEqualTo("run with care");
    assertThat(today.at("/now/verdict").stringValue()).isEqualTo("do not run");
    assertThat(today.get("findings").toString()).contains("HOLD-025");

    assertThat(audit("replay", id, "--at", revision(answer))).as(said).isZero();
    assertThat(audit("replay", id, "--at", "0".repeat(64))).isEqualTo(2);
    assertThat(audit("replay", "00000000-0000-0000-0000-000000000000")).isEqualTo(2);
  }

  private static String revision(JsonNode answer) {
    return answer.at("/versions/ruleBase").stringValue();
  }

  private int audit(String... arguments) {
    Map<String, String> settings =
        Map.of(
            "standproud.audit.directory", audit.toString(),
            "standproud.rules.directory", rules.toString());
    settings.forEach(System::setProperty);
    StringWriter text = new StringWriter();
    try {
      int code = AuditCommand.run(Standproud.class, List.of(arguments), new PrintWriter(text));
      said = text.toString();
      return code;
    } finally {
      settings.keySet().forEach(System::clearProperty);
    }
  }

  private void put(String severity) throws IOException {
    Files.createDirectories(rules.resolve(CARD).getParent());
    Files.writeString(rules.resolve(HOLD), Files.readString(Path.of("rules").resolve(HOLD)));
    String card = Files.readString(Path.of("rules").resolve(CARD));
    Files.writeString(rules.resolve(CARD), card.replace("severity: caution", severity));
  }
}

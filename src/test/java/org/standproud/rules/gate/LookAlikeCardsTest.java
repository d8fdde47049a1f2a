package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standproud.rules.SmallCards;
import org.standproud.rules.engine.Authorship;

class LookAlikeCardsTest {

  private static String refused(Map<String, String> files) {
    Authorship by = new Authorship("engineer", "note", Instant.EPOCH, null);
    GateResult result = SmallCards.gate().check(files, by);
    assertThat(result).isInstanceOf(GateResult.Rejected.class);
    return ((GateResult.Rejected) result).errors().toString();
  }

  @Test
  void anIdThatDiffersInCaseOnlyIsRefused() {
    Map<String, String> files = SmallCards.files();
    String tall = files.getOrDefault(SmallCards.TALL, "");
    files.put("holding/small.yaml", tall.replace("HOLD-001", "hold-001"));
    assertThat(refused(files))
        .contains("this id differs from HOLD-001")
        .contains("only in the case of letters");
  }

  @Test
  void aTitleWithALetterOfAnotherScriptIsRefused() {
    Map<String, String> files = SmallCards.files();
    files.computeIfPresent(
        SmallCards.TALL, (file, text) -> text.replace("title: A plate", "title: A pl\u0430te"));
    assertThat(refused(files)).contains("mixes letters that look alike");
  }
}

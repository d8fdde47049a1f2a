package org.standproud.command.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

@IntegrationTest
class RulesCommandTest {

  private static final String SETUP = "seeds/setups/01-top-edge-wire-and-stop.json";

  @TempDir Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return RulesCommand.run(new PrintWriter(out), new PrintWriter(err), arguments);
  }

  @Test
  void theCardsOfTheShopAreInOrder() {
    assertThat(run("check")).isZero();
    assertThat(out.toString()).contains(" cards, content ", "0 errors, ");
  }

  @Test
  void aNewCardPassesTheGateAsItIsWritten() {
    assertThat(run("new", "holding", "HOLD-900", "--rules", folder.toString())).isZero();
    assertThat(folder.resolve("holding/HOLD-900.yaml")).exists();
    assertThat(run("check", "--strict", "--rules", folder.toString())).as(out.toString()).isZero();
    assertThat(run("test", "HOLD-900", "--rules", folder.toString())).isZero();
    assertThat(out.toString()).contains("6 examples of 1 cards, 0 fail");
  }

  @Test
  void aCardIsNeverWrittenOverAndNeverOutsideTheFolder() throws Exception {
    run("new", "holding", "HOLD-900", "--rules", folder.toString());
    Path card = folder.resolve("holding/HOLD-900.yaml");
    Files.writeString(card, "mine");
    assertThat(run("new", "holding", "HOLD-900", "--rules", folder.toString())).isEqualTo(2);
    assertThat(card).hasContent("mine");
    assertThat(run("new", "holding", "../x", "--rules", folder.toString())).isEqualTo(2);
    assertThat(run("new", "nothing", "HOLD-901", "--rules", folder.toString())).isEqualTo(2);
  }

  @Test
  void aBadCardEndsWithOneAndSaysWhere() throws Exception {
    run("new", "holding", "HOLD-900", "--rules", folder.toString());
    Path card = folder.resolve("holding/HOLD-900.yaml");
    Files.writeString(card, Files.readString(card).replace("> much", "> mush"));
    assertThat(run("check", "--rules", folder.toString())).isEqualTo(1);
    assertThat(out.toString())
        .contains("holding/HOLD-900.yaml:12:30: \"mush\"", "did you mean \"much\"");
    assertThat(run("test", "--rules", folder.toString())).isEqualTo(1);
    assertThat(run("explain", SETUP, "--rules", folder.toString())).isEqualTo(1);
    assertThat(run("pages", "--rules", folder.toString(), "--into", folder + "/pages"))
        .isEqualTo(1);
  }

  @Test
  void anExampleThatFailsEndsWithOne() throws Exception {
    run("new", "holding", "HOLD-900", "--rules", folder.toString());
    Path card = folder.resolve("holding/HOLD-900.yaml");
    Files.writeString(card, Files.readString(card).replace("much: 2.5", "much: 9"));
    assertThat(run("test", "HOLD-900", "--rules", folder.toString())).isEqualTo(1);
    assertThat(out.toString()).contains("the example expects fail but the card says pass");
  }

  @Test
  void aSetUpIsExplainedCardByCard() {
    assertThat(run("explain", SETUP, "HOLD-001")).isZero();
    assertThat(out.toString()).contains("HOLD-001 ", "tall plate");
    assertThat(run("explain", SETUP, "HOLD-777")).isEqualTo(2);
    assertThat(err.toString()).contains("there is no card HOLD-777");
  }

  @Test
  void wrongUsageAndUnreadableFilesHaveDifferentExitCodes() {
    assertThat(run()).isEqualTo(2);
    assertThat(run("publish")).isEqualTo(2);
    assertThat(run("explain", "no/such/file.json")).isEqualTo(3);
    assertThat(run("check", "--rules", "no/such/folder")).isEqualTo(3);
  }
}

package org.standproud.rules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.language.QuantityText;

/** Every card, every piece of a card and every error in the guide is what really happens. */
@IntegrationTest
class RuleAuthorGuideTest {

  private static final Authorship BY = new Authorship("guide", "guide", Instant.EPOCH, null);
  private static final String WHOLE = "holding/HOLD-900.yaml";

  private static final Gate GATE =
      new Gate(
          Vocabulary.all(), new QuantityText(), name -> Optional.empty(), Coverage.Demand.REFUSE);

  private static final String AROUND_A_PIECE =
      """
      id: HOLD-999
      title: A piece of a card
      severity: note
      confidence: low
      source: {kind: shop, reference: the guide}
      since: 2026-11-25
      owner: tool room
      message: m
      remedy: r
      why: w
      examples:
        - {says: a, expect: fail, given: {stage: rough}}
        - {says: b, expect: pass, given: {stage: rough}}
      """;

  private static List<String> blocks(String kind) throws Exception {
    String guide = Files.readString(Path.of("api-docs/rule-author-guide.md"));
    return Pattern.compile("(?s)```" + kind + "(?: file=\\S+)?\n(.*?)```")
        .matcher(guide)
        .results()
        .map(MatchResult::group)
        .map(b -> b.substring(b.indexOf('\n') + 1, b.lastIndexOf("```")))
        .toList();
  }

  private static Map<String, String> withTheShops(String card) {
    Map<String, String> files = new HashMap<>(CardFolder.read(Path.of("rules")).files());
    files.put("holding/" + card.substring(4, card.indexOf('\n')) + ".yaml", card);
    return files;
  }

  @Test
  void everyWholeCardPassesTheGateBesideTheCardsOfTheShop() throws Exception {
    List<String> cards = blocks("yaml").stream().filter(b -> b.startsWith("id: ")).toList();
    assertThat(cards).hasSize(3);
    for (String card : cards) {
      GateResult result = GATE.check(withTheShops(card), BY);
      assertThat(result).as(result.toString()).isInstanceOf(GateResult.Published.class);
    }
  }

  @Test
  void everyPieceOfACardCanBeBuilt() throws Exception {
    List<String> pieces = blocks("yaml").stream().filter(b -> !b.startsWith("id: ")).toList();
    assertThat(pieces).hasSizeGreaterThanOrEqualTo(3);
    for (String piece : pieces) {
      Gate.Draft draft = GATE.draft(Map.of("holding/HOLD-999.yaml", AROUND_A_PIECE + piece), BY);
      assertThat(draft.ruleBase()).as(draft.errors().toString()).isNotNull();
    }
  }

  @Test
  void everyErrorIsTheOneThatComes() throws Exception {
    String whole = blocks("yaml").get(0);
    List<String> refused = blocks("yaml-refused");
    assertThat(refused).hasSizeGreaterThanOrEqualTo(4);
    for (String block : refused) {
      String[] lines = block.strip().split("\n");
      String[] edit = lines[0].split(" -> ");
      assertThat(whole).contains(edit[0]);
      String edited = whole.replace(edit[0], edit[1]);
      assertThat(GATE.draft(Map.of(WHOLE, edited), BY).errors())
          .extracting(CardError::toString)
          .contains(lines[1]);
    }
  }
}

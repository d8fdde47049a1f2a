package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.Shop;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.Authorship;

class SourceReviewTest {

  private static final String FILE = "holding/HOLD-990.yaml";

  private static final Authorship BY =
      new Authorship("engineer", "note", Instant.parse("2026-11-30T08:00:00Z"), null);

  private static final String CARD =
      """
      id: HOLD-990
      title: A shallow grip tips
      severity: caution
      confidence: %s
      source: {kind: %s, reference: "%s"}
      since: 2026-11-30
      owner: tool room
      limits: {deep grip: 12 mm}
      when:
        - grip depth < deep grip
      message: "The grip is {grip depth}."
      remedy: Grip deeper.
      why: The cut pushes at the top. The jaws answer below.
      examples:
        - {says: shallow, expect: fail, given: {grip depth: 11 mm}}
        - {says: deep, expect: pass, given: {grip depth: 13 mm}}
        - {says: not known, expect: open, given: {grip depth: unknown}}
      """;

  private static List<String> refused(String confidence, String kind, String reference) {
    return refused(CARD.formatted(confidence, kind, reference), RetiredCards.none());
  }

  private static List<String> refused(String card, RetiredCards retired) {
    Gate gate =
        new Gate(
            Vocabulary.all(),
            Shop.UNIT_READER,
            name -> Optional.empty(),
            Coverage.Demand.REFUSE,
            retired);
    return gate.draft(Map.of(FILE, card), BY).errors().stream().map(CardError::message).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "high   | standard        | ISO 513:2012, table 1",
        "high   | shop            | sum of the heights",
        "medium | handbook        | Carvill, Mechanical Engineer's Data Handbook, 1993",
        "medium | handbook        | TM 1-1500-204-23-8, machine shop practices",
        "medium | paper           | Altintas and Budak, CIRP Annals 44/1 (1995) 357-362",
        "medium | standard        | IEC 60034-1, from memory",
        "low    | common practice | common practice, no source",
      })
  void aSourceThatCanBeLookedUpPasses(String confidence, String kind, String reference) {
    assertThat(refused(confidence, kind, reference)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "high   | standard        | ISO 513, from memory                       | neither missing",
        "high   | shop            | our choice                                 | neither missing",
        "high   | shop            | worked out here, no source for the limit   | neither missing",
        "medium | common practice | common practice, no source                 | practice is low",
        "medium | handbook        | resonance of a damped plate                | author, title",
        "low    | paper           | work on milling at low immersion           | author, title",
        "medium | standard        | the general tolerances                     | with its number",
      })
  void aSourceThatCannotIsRefusedWithWhatItLacks(
      String confidence, String kind, String reference, String why) {
    assertThat(refused(confidence, kind, reference)).singleElement().asString().contains(why);
  }

  @Test
  void theIdOfARetiredCardIsNotTakenAgain() {
    String card =
        CARD.formatted("low", "common practice", "common practice, no source")
            .replace("HOLD-990", "HOLD-005");
    assertThat(refused(card, RetiredCards.none())).isEmpty();
    assertThat(refused(card, RetiredCards.listed()))
        .singleElement()
        .asString()
        .contains("replaced by HOLD-011");
  }
}

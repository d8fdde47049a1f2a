package org.standproud.rules.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.card.Levels;

/** Any change of a card changes its content; a change of layout does not. */
class CardContentTest {

  private static final String CARD =
"""
id: HOLD-100
title: A tall plate rocks
severity: stop
confidence: low
source: {kind: handbook, reference: a handbook, edition: "3", page: "12"}
since: 2026-11-25
revised: 2026-11-26
owner: shop engineer
appliesTo: {operation: [top edge, broad side], stage: rough}
limits: {deep: 12 mm, low: 2}
when: [grip depth < deep, slip margin < low]
eases: {card: HOLD-001, to: note, because: it is light}
message: Grip less
remedy: grip deeper
why: The cut pushes.
examples:
  - {says: shallow, expect: fail, base: somewhere, given: {grip depth: 10 mm, slip margin: 1}}
  - {says: deeper, expect: pass, given: {grip depth: 20 mm, slip margin: 3}}
  - {says: flatter, expect: fail, given: {grip depth: 5 mm, slip margin: 0}}
""";

  private static String hash(String text) {
    return hash("holding", text);
  }

  private static String hash(String folder, String text) {
    CardReader.Outcome outcome = CardReader.read(folder + "/card.yaml", text);
    assertThat(outcome.errors()).isEmpty();
    Card card = Objects.requireNonNull(outcome.card());
    return RuleBase.contentHash(List.of(card), Levels.ANY_DRAW);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "HOLD-100 | HOLD-101",
        "A tall plate | A taller plate",
        "severity: stop | severity: caution",
        "confidence: low | confidence: medium",
        "kind: handbook | kind: paper",
        "a handbook | the handbook",
        "edition: \"3\" | edition: \"4\"",
        "edition: \"3\", page: \"12\" | edition: \"31\", page: \"2\"",
        "page: \"12\" | page: \"13\"",
        "2026-11-25 | 2026-11-24",
        "2026-11-26 | 2026-11-27",
        "shop engineer | foreman",
        "[top edge, broad side] | [broad side, top edge]",
        "[top edge, broad side] | top edge",
        "operation: | other:",
        "stage: rough | stage: finish",
        "12 mm | 13 mm",
        "12 mm | 1.2 cm",
        "low: 2 | low: 3",
        "slip margin < low] | slip margin <= low]",
        "grip depth < deep, | grip depth > deep,",
        "eases: | overrides:",
        "card: HOLD-001 | card: HOLD-002",
        "to: note | to: caution",
        "it is light | it is lighter",
        "eases: {card: HOLD-001, to: note, because: it is light} | derives: small grip",
        "Grip less | Grip more",
        "grip deeper | grip well",
        "cut pushes | cutter pushes",
        "says: shallow | says: flat",
        "says: shallow, expect: fail | says: shallow, expect: pass",
        "base: somewhere | base: elsewhere",
        "base: somewhere, | ",
        "given: {grip depth: 10 mm | given: {grip depth: 11 mm",
        "given: {grip depth: 20 mm, slip margin: 3} | given: {grip depth: 20 mm}",
      })
  void anyChangeOfMeaningMakesAnotherContent(String before, String after) {
    assertThat(CARD).contains(before);
    String other = CARD.replace(before, after == null ? "" : after);
    assertThat(hash(other)).matches("[0-9a-f]{64}").isNotEqualTo(hash(CARD));
  }

  @Test
  void whatACardProtectsIsPartOfIt() {
    assertThat(hash("reach", CARD)).isNotEqualTo(hash("holding", CARD));
  }

  @Test
  void twoJudgementsAreTwoContents() {
    String eases = "eases: {card: HOLD-001, to: note, because: it is light}";
    assertThat(hash(CARD.replace(eases, "derives: small grip")))
        .isNotEqualTo(hash(CARD.replace(eases, "derives: tiny grip")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title: A tall | title:    A tall",
        "since: 2026-11-25 | since: 2026-11-25 # the day it was written",
        "{deep: 12 mm, low: 2} | {low: 2, deep: 12 mm}",
        "{operation: [top edge, broad side], stage: rough}"
            + " | {stage: rough, operation: [top edge, broad side]}",
        "{grip depth: 20 mm, slip margin: 3} | {slip margin: 3, grip depth: 20 mm}",
        "remedy: grip deeper | remedy: \"grip deeper\"",
      })
  void howItIsLaidOutDoesNotCount(String before, String after) {
    assertThat(CARD).contains(before);
    assertThat(hash(CARD.replace(before, after))).isEqualTo(hash(CARD));
  }

  @Test
  void whoPublishedWhenAndWhyIsPartOfTheRevision() {
    Card card = Objects.requireNonNull(CardReader.read("holding/card.yaml", CARD).card());
    Authorship by = new Authorship("a", "b", java.time.Instant.parse("2026-11-25T08:00:00Z"), null);
    String id = CanonicalContent.revision(List.of(card), Levels.ANY_DRAW, by).id();
    assertThat(
            List.of(
                new Authorship("c", "b", by.time(), null),
                new Authorship("a", "c", by.time(), null),
                new Authorship("a", "b", by.time().plusSeconds(1), null),
                new Authorship("a", "b", by.time(), id)))
        .extracting(other -> CanonicalContent.revision(List.of(card), Levels.ANY_DRAW, other).id())
        .doesNotContain(id)
        .doesNotHaveDuplicates();
    assertThat(CanonicalContent.revision(List.of(), Levels.ANY_DRAW, by).id()).isNotEqualTo(id);
  }
}

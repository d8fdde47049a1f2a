package org.standproud.rules.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.rules.Shop;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;

/** Cards that contradict each other, or themselves, do not become a rule base. */
class CardCompilerTest {

  private static Card card(String id, String lines) {
    String text =
        """
        id: %s
        title: t
        severity: caution
        confidence: low
        source: {kind: shop, reference: r}
        since: 2026-11-25
        owner: o
        message: m
        remedy: r
        why: w
        examples:
          - {says: a, expect: fail, given: {stage: rough}}
          - {says: b, expect: pass, given: {stage: rough}}
        %s
        """
            .formatted(id, lines);
    CardReader.Outcome outcome = CardReader.read("holding/" + id + ".yaml", text);
    assertThat(outcome.errors()).isEmpty();
    return Objects.requireNonNull(outcome.card());
  }

  private static CardCompiler.Outcome compile(Card... cards) {
    return CardCompiler.compile(List.of(cards), Shop.TABLE, Shop.UNIT_READER);
  }

  private static Stream<String> errors(Card... cards) {
    return compile(cards).errors().stream().map(Object::toString);
  }

  @Test
  void aCardThatIsInOrderIsCompiledWithItsLimit() {
    CardCompiler.Outcome outcome =
        compile(card("A", "limits: {tall: 90 mm}\nwhen: stick-out > tall"));
    assertThat(outcome.errors()).isEmpty();
    assertThat(outcome.cards())
        .singleElement()
        .satisfies(one -> assertThat(one.id()).isEqualTo("A"))
        .satisfies(one -> assertThat(one.limits().get("tall").text()).isEqualTo("90 mm"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "limits: {tall: 90 mm, deep: 9 mm}\\nwhen: stick-out > tall | no condition uses the limit \"deep\"",
        "when: stick-out > tall | tall",
        "derives: stick-out\\nwhen: slip margin < 1 | a fact has this name",
        "when: slip margin < 1\\neases: {card: Z, to: note, because: w} | there is no card with this id",
      })
  void aCardThatContradictsItselfIsRefused(String lines, String message) {
    assertThat(errors(card("A", lines.replace("\\n", "\n"))))
        .anySatisfy(error -> assertThat(error).contains(message));
  }

  @Test
  void twoCardsOfOneIdAreRefusedAlsoIfOnlyTheirLettersDifferInCase() {
    Card one = card("HOLD-1", "when: slip margin < 1");
    assertThat(errors(one, card("HOLD-1", "when: slip margin < 2")))
        .anySatisfy(error -> assertThat(error).contains("this id is taken by holding/HOLD-1.yaml"));
    assertThat(errors(one, card("Hold-1", "when: slip margin < 2")))
        .anySatisfy(error -> assertThat(error).contains("only in the case of letters"));
  }

  @Test
  void aJudgementThatDependsOnItselfThroughAnotherCardIsRefused() {
    assertThat(
            errors(
                card("A", "derives: thin hold\nwhen: weak plate"),
                card("B", "derives: weak plate\nwhen: thin hold")))
        .anySatisfy(error -> assertThat(error).contains("this judgement depends on itself"));
  }
}

package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.rules.Shop;

class HostileTextTest {

  private static final ConditionParser PARSER = new ConditionParser(Shop.TABLE, Set.of("judged"));

  private static final List<String> PIECES =
      List.of(
          "stick-out",
          "grip depth",
          "stage",
          "packed",
          "judged",
          "stick",
          "-",
          "+",
          "*",
          "/",
          "**",
          "(",
          ")",
          "[",
          "]",
          "..",
          ",",
          "<",
          "<=",
          ">",
          ">=",
          "=",
          "!=",
          "and",
          "or",
          "not",
          "in",
          "between",
          "if",
          "then",
          "else",
          "some",
          "every",
          "satisfies",
          "for",
          "return",
          "function",
          "external",
          "instance of",
          "\"rough\"",
          "\"",
          "0",
          "1.5",
          "1e9",
          ".",
          "null",
          "true",
          "max",
          "min",
          "abs",
          "matches",
          "{",
          "}",
          ":",
          "@",
          "\n",
          "?",
          "é",
          "\u0000",
          "\\");

  @Provide
  Arbitrary<String> nearlyConditions() {
    return Arbitraries.of(PIECES).list().ofMaxSize(25).map(l -> String.join(" ", l));
  }

  @Property(tries = 1000)
  void nearlyAConditionIsReadOrRefusedAndNothingElse(@ForAll("nearlyConditions") String text) {
    readOrRefused(text);
  }

  @Property(tries = 500)
  void anyTextIsReadOrRefusedAndNothingElse(@ForAll String text) {
    readOrRefused(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "(",
        "[",
        "not(",
        "if ",
        "-",
        "1+",
        "a.",
        "\"",
        "stick-out>",
        "for x in ",
        "packed and ",
        "1..",
        "..",
        "x ",
        "a-",
        "in ",
        "\"a\" ",
        "stage = ",
        "if packed then "
      })
  void aPieceRepeatedToTheLongestTextAndBeyondIsAnswered(String piece) {
    String longest = piece.repeat(ConditionText.MAX_LENGTH / piece.length());
    readOrRefused(longest);
    String tooLong = piece.repeat(100_000);
    readOrRefused(tooLong);
  }

  private static void readOrRefused(String text) {
    try {
      Condition condition = PARSER.parse(text, Map.of());
      assertThat(condition.evaluate(Shop.readings(), Judgements.NONE)).isNotNull();
      assertThat(condition.toWords()).isNotBlank();
    } catch (ConditionRefused refused) {
      assertThat(refused.reason()).isNotBlank();
      assertThat(refused.line()).isPositive();
      assertThat(refused.column()).isPositive();
    }
  }
}

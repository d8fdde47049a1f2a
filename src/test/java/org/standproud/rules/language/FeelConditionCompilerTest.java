package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.rules.Shop;

/**
 * Conditions mean what OMG's Decision Model and Notation, DMN 1.4, chapter 10.3 (FEEL), says:
 * ternary logic of "and" and "or", ranges with open and closed ends, precedence of arithmetic.
 */
class FeelConditionCompilerTest {

  private static final ConditionParser PARSER = new ConditionParser(Shop.TABLE, Set.of());

  /** 60 mm above the jaws; the grip depth is not known. */
  private static final Readings READINGS = Shop.readings(Shop.STICK_OUT, 0.060);

  private static final Map<String, Term.Limit> LIMITS =
      Map.of(
          "short", new Term.Limit("short", Shop.UNIT_READER.read("30 mm"), "30 mm"),
          "just", new Term.Limit("just", Shop.UNIT_READER.read("60 mm"), "60 mm"),
          "tall", new Term.Limit("tall", Shop.UNIT_READER.read("90 mm"), "90 mm"));

  private static Truth truth(String text) throws ConditionRefused {
    return PARSER.parse(text, LIMITS).evaluate(READINGS, Judgements.NONE).truth();
  }

  /** Tables 49 and 50 of the standard [memory for the numbers of the tables]. */
  @ParameterizedTest
  @CsvSource({
    "and, TRUE, TRUE, TRUE", "and, TRUE, FALSE, FALSE", "and, TRUE, UNKNOWN, UNKNOWN",
    "and, FALSE, TRUE, FALSE", "and, FALSE, FALSE, FALSE", "and, FALSE, UNKNOWN, FALSE",
    "and, UNKNOWN, TRUE, UNKNOWN", "and, UNKNOWN, FALSE, FALSE", "and, UNKNOWN, UNKNOWN, UNKNOWN",
    "or, TRUE, TRUE, TRUE", "or, TRUE, FALSE, TRUE", "or, TRUE, UNKNOWN, TRUE",
    "or, FALSE, TRUE, TRUE", "or, FALSE, FALSE, FALSE", "or, FALSE, UNKNOWN, UNKNOWN",
    "or, UNKNOWN, TRUE, TRUE", "or, UNKNOWN, FALSE, UNKNOWN", "or, UNKNOWN, UNKNOWN, UNKNOWN",
  })
  void conditionsAreJoinedByTernaryLogic(String word, Truth left, Truth right, Truth expected)
      throws ConditionRefused {
    assertThat(truth(worth(left) + " " + word + " " + worth(right))).isEqualTo(expected);
  }

  /** A condition of that truth on the plate above. */
  private static String worth(Truth truth) {
    return switch (truth) {
      case TRUE -> "stick-out > short";
      case FALSE -> "stick-out > tall";
      case UNKNOWN, EITHER -> "grip depth > short";
    };
  }

  /** A square bracket includes the end of a range, a round or outward one leaves it out. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stick-out in [just..tall] | TRUE",
        "stick-out in (just..tall] | FALSE",
        "stick-out in ]just..tall] | FALSE",
        "stick-out in [short..just] | TRUE",
        "stick-out in [short..just) | FALSE",
        "stick-out between just and tall | TRUE",
        "stick-out between short and just | TRUE",
        "grip depth in [short..tall] | UNKNOWN",
      })
  void aRangeHasOpenOrClosedEnds(String text, Truth expected) throws ConditionRefused {
    assertThat(truth(text)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stick-out - short / 2 > short | TRUE",
        "(stick-out - short) / 2 > short | FALSE",
        "tall - stick-out - short < short | TRUE",
        "tall - (stick-out - short) < short | FALSE",
        "stick-out / short / 2 = 1 | TRUE",
        "stick-out / (short / 2) = 1 | FALSE",
        "stick-out > short or stick-out > tall and stick-out > tall | TRUE",
        "(stick-out > short or stick-out > tall) and stick-out > tall | FALSE",
      })
  void productsBindCloserThanSumsAndAndCloserThanOr(String text, Truth expected)
      throws ConditionRefused {
    assertThat(truth(text)).isEqualTo(expected);
  }

  /** FEEL that could run code, or that is more than a card needs. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "function(x) external {java: {class: \"java.lang.Math\", method signature: \"cos(double)\"}}",
        "for x in [1, 2] return x",
        "{a: 1}.a = 1",
        "stick-out instance of number",
        "matches(stage, \".*\")",
        "\"abc\".class.name = \"x\"",
      })
  void theRestOfTheLanguageIsRefused(String text) {
    assertThatThrownBy(() -> PARSER.parse(text, LIMITS)).isInstanceOf(ConditionRefused.class);
  }
}

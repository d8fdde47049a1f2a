package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.rules.Shop;

class ConditionSizeTest {

  private static final ConditionParser PARSER = new ConditionParser(Shop.TABLE, Set.of("judged"));

  private static String nested(int levels) {
    return "if ".repeat(levels) + "packed" + " then true else false".repeat(levels);
  }

  private static Condition parse(String text) throws ConditionRefused {
    return PARSER.parse(text, Map.of());
  }

  @Test
  void choiceInTheDecisionOfAChoiceDoublesTheSteps() throws ConditionRefused {
    long before = new ConditionSize().of(parse(nested(1)));
    for (int levels = 2; levels <= 5; levels++) {
      long size = new ConditionSize().of(parse(nested(levels)));
      assertThat(size).isBetween(2 * before, 2 * before + 8);
      before = size;
    }
  }

  /** Sixteen levels fit into 400 characters and would be walked in 2^16 steps and more. */
  @ParameterizedTest
  @ValueSource(ints = {9, 12, 16})
  void deepDecisionsAreRefusedWhereTheyBecomeTooLarge(int levels) {
    String text = nested(levels);
    assertThat(text.length()).isLessThanOrEqualTo(ConditionText.MAX_LENGTH);
    assertThatThrownBy(() -> parse(text))
        .isInstanceOfSatisfying(
            ConditionRefused.class,
            refused -> {
              assertThat(refused.getMessage()).contains("steps", "at most 1000");
              assertThat(refused.line()).isEqualTo(1);
              assertThat(refused.column()).isGreaterThan(1);
            });
  }

  @Test
  void rangesOfChoicesAreCountedForEveryRange() {
    String in = " in [[1..2], [3..4], [5..6], [7..8], [9..10], [11..12]]";
    String twice = "(if (if packed then 1 else 2)" + in + " then 1 else 2)" + in;
    String thrice = "(if " + twice + " then 1 else 2)" + in;
    assertThatThrownBy(() -> parse(thrice))
        .isInstanceOf(ConditionRefused.class)
        .hasMessageContaining("steps");
  }

  /** What is shared is looked at once: a chain of 80 doublings is counted in 81 looks. */
  @Test
  void theCountItselfLooksAtEachPartOnce() throws ConditionRefused {
    Condition condition = parse("packed");
    for (int i = 0; i < 80; i++) {
      condition = Condition.all(List.of(condition, condition));
    }
    assertThat(new ConditionSize().of(condition)).isEqualTo(Long.MAX_VALUE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "slip margin > 3 and packed",
        "if packed then slip margin > 3 else slip margin > 2",
        "slip margin between 1 and 4"
      })
  void plainConditionsStaySmall(String text) throws ConditionRefused {
    assertThat(new ConditionSize().of(parse(text))).isLessThan(40);
  }
}

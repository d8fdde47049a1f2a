package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.rules.SmallCards;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.CardLimits;

/**
 * Good cards, and texts meant to break a reader, cut, doubled, crossed and sprinkled at random, go
 * through the gate up to the built engine and the examples. {@code -Dtest.fuzz} sets how many and
 * {@code -Dtest.fuzz.seed} from which seed; an input that fails is printed in full.
 */
@IntegrationTest
class HostileCardsTest {

  private static final int INPUTS = Integer.getInteger("test.fuzz", 3_000);
  private static final long SEED = Long.getLong("test.fuzz.seed", 20_261_125L);

  /** Processor time for one input: thousands of times what a good card takes. */
  private static final Duration LONGEST = Duration.ofSeconds(10);

  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ":",
          ": ",
          ",",
          "- ",
          "\n",
          "\n  ",
          "\t",
          "|\n",
          ">-\n",
          "?",
          "#",
          "%",
          "'",
          "\"",
          "&a ",
          "*a",
          "<<: *a\n",
          "!!str ",
          "!<x> ",
          "---\n",
          "...\n",
          "\\",
          "@",
          "\u0000",
          "\u0085",
          "\u2028",
          "\ufeff",
          "\ud800",
          "\uffff",
          "\ud83d\ude00",
          "..",
          "../",
          "unknown",
          "to",
          "low",
          "12 mm",
          "1e999",
          "-0",
          ".nan",
          ".inf",
          "0x7f",
          "1_0",
          "9",
          "true",
          "null",
          "(",
          ")",
          "and",
          "or",
          "not(",
          "in",
          "between",
          "if ",
          "then ",
          "else ",
          "some x in ",
          "every ",
          "satisfies ",
          "function(",
          "external",
          "for x in ",
          "instance of",
          "= ",
          "< ",
          "<= ",
          "!= ",
          "** ",
          "/ 0",
          "+ ",
          "- ",
          "* ",
          "max(",
          "min(",
          "abs(",
          "grip depth",
          "stick-out",
          "stage",
          "\"rough\"",
          "{grip depth}",
          "packed",
          "derives: a\n",
          "eases: {card: TALL, to: note, because: x}\n",
          "overrides: ",
          "examples:\n",
          "when: ",
          "limits: {a: 1 m}\n",
          "given: {",
          "expect: fail");

  private static final List<String> NAMES =
      List.of(
          "holding/a.yaml",
          "data/a/b.yml",
          "holding/../a.yaml",
          "/etc/a.yaml",
          "holding\\a.yaml",
          "holding/a.yaml\u0000.txt",
          "holdin/a.yaml",
          "a.yaml",
          "");

  private final RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
  private final List<String> cards = List.copyOf(SmallCards.files().values());
  private final List<String> bombs = BadCardTest.bombs().toList();
  private final Gate gate = GateTest.gate(Coverage.Demand.REPORT);

  @Test
  void whateverIsMadeOfCardsIsReadOrRefusedWithItsPlaceAndNothingElse() {
    int passed = 0;
    long longest = 0;
    for (int i = 0; i < INPUTS; i++) {
      Map<String, String> files = files();
      long begun = processorTime();
      passed += answered(i, files) ? 1 : 0;
      longest = Math.max(longest, processorTime() - begun);
    }
    System.out.printf(
        "%d inputs from seed %d: %d passed, %d refused, the longest took %d ms%n",
        INPUTS, SEED, passed, INPUTS - passed, longest / 1_000_000);
    assertThat(passed).as("some must reach the engine").isBetween(INPUTS / 100, INPUTS * 99 / 100);
    assertThat(Duration.ofNanos(longest)).isLessThan(LONGEST);
  }

  private boolean answered(int number, Map<String, String> files) {
    try {
      Gate.Draft draft = gate.draft(files, GateTest.BY);
      if (draft.ruleBase() == null) {
        assertThat(draft.errors()).isNotEmpty();
      }
      assertThat(draft.errors()).hasSizeLessThanOrEqualTo(CardLimits.MAX_ERRORS * files.size());
      draft.errors().forEach(HostileCardsTest::isPlaced);
      return draft.errors().isEmpty();
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError | AssertionError e) {
      return fail("input " + number + " of seed " + SEED + ": " + files, e);
    }
  }

  private static void isPlaced(CardError error) {
    assertThat(error.line()).isPositive();
    assertThat(error.column()).isPositive();
    assertThat(error.message()).isNotBlank();
    assertThat(error.toString()).hasSizeLessThan(3_000);
  }

  private Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    int count = random.nextInt(20) == 0 ? 2 : 1;
    for (int i = 0; i < count; i++) {
      String name = random.nextInt(8) == 0 ? any(NAMES) : "holding/card-" + i + ".yaml";
      files.put(name, changed(anyText()));
    }
    return files;
  }

  private String changed(String text) {
    String changed = text;
    for (int changes = random.nextInt(4); changes > 0; changes--) {
      changed = changedOnce(changed);
    }
    return changed;
  }

  private String changedOnce(String text) {
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(40));
    String before = text.substring(0, from);
    String part = text.substring(from, to);
    String after = text.substring(to);
    return switch (random.nextInt(7)) {
      case 0 -> before + after;
      case 1 -> before + part + part + after;
      case 2 -> before + any(PIECES) + part + after;
      case 3 -> before + any(PIECES) + after;
      case 4 -> before + (char) random.nextInt(0x10000) + part + after;
      case 5 -> before + tail(anyText());
      default -> before + any(PIECES).repeat(1 + random.nextInt(200)) + part + after;
    };
  }

  private String tail(String text) {
    return text.substring(random.nextInt(text.length() + 1));
  }

  /** Mostly cards, because a bomb is refused before much of the gate is reached. */
  private String anyText() {
    return any(random.nextInt(8) == 0 ? bombs : cards);
  }

  private String any(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}

package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.Shop;
import org.standproud.rules.language.Condition.Comparison;
import org.standproud.setup.Band;

/**
 * Sums with bands, worked by the rules of interval arithmetic: the ends of a sum are the sums of
 * the ends, those of a difference cross over, those of a product or quotient are the least and the
 * greatest of the four of the ends (R. E. Moore, "Interval Analysis", 1966 [memory]).
 */
class TermTest {

  private static final ConditionParser PARSER =
      new ConditionParser(Shop.TABLE, Set.of("soft seat", "creeping"));

  private static Condition condition(String text) throws Exception {
    return PARSER.parse(text, Map.of());
  }

  /** What stands on the left of a comparison. */
  private static Estimate estimate(String term, Readings readings) throws Exception {
    return ((Comparison) condition(term + " < 7")).left().estimate(readings, Judgements.NONE);
  }

  /** Slip margin and lean are the two numbers that may be negative; both are divided by one. */
  @ParameterizedTest
  @CsvSource({
    "slip margin,                     -3,  1,  2, -3,  1,  2",
    "-slip margin,                    -3,  1,  2, -2, -1,  3",
    "-slip margin,                     1,  2,  5, -5, -2, -1",
    "abs(slip margin),                -3,  1,  2,  0,  1,  3",
    "abs(slip margin),                -3, -1,  4,  0,  1,  4",
    "abs(slip margin),                -5, -3, -2,  2,  3,  5",
    "abs(slip margin),                 2,  3,  5,  2,  3,  5",
    "abs(slip margin),                 0,  1,  2,  0,  1,  2",
    "abs(slip margin),                -2, -1,  0,  0,  1,  2",
    "slip margin + 2,                 -3,  1,  2, -1,  3,  4",
    "slip margin - 2,                 -3,  1,  2, -5, -1,  0",
    "2 - slip margin,                 -3,  1,  2,  0,  1,  5",
    "slip margin * 2,                 -3,  1,  2, -6,  2,  4",
    "slip margin * (-2),              -3,  1,  2, -4, -2,  6",
    "slip margin / 2,                 -4,  1,  2, -2, 0.5, 1",
    "slip margin / (-2),              -4,  1,  2, -1, -0.5, 2",
    "6 / slip margin,                  1,  2,  3,  2,  3,  6",
    "6 / slip margin,                 -3, -2, -1, -6, -3, -2",
    "slip margin * slip margin,       -3,  1,  2, -6,  1,  9",
    "slip margin - slip margin,       -3,  1,  2, -5,  0,  5",
    "(slip margin + 4) / (slip margin + 4), -3, 1, 2, 0.16666666666666666, 1, 6",
    "'max(slip margin, 1)',           -3,  0,  2,  1,  1,  2",
    "'min(slip margin, 1)',           -3,  0,  2, -3,  0,  1",
    "'max(slip margin, 5, 1)',        -3,  0,  2,  5,  5,  5",
    "'min(1, slip margin, -4)',       -3,  0,  2, -4, -4, -4",
    "(if slip margin > 5 then 1 else 2),          -3, 1, 2, 2, 2, 2",
    "(if slip margin < 5 then 1 else 2),          -3, 1, 2, 1, 1, 1",
    "(if slip margin < 0 then 1 else 2),          -3, 1, 2, 1, 2, 2",
    "(if slip margin < 0 then 4 else 2),          -3, -1, 2, 2, 4, 4",
    "(if slip margin < 0 then slip margin else 2), -3, 1, 2, -3, 2, 2",
  })
  void bandsAreWorkedByTheirEnds(
      String term, double low, double likely, double high, double l, double m, double h)
      throws Exception {
    Estimate found = estimate(term, Shop.readings(Shop.SLIP, new Band(low, likely, high)));
    assertThat(found).isInstanceOf(Estimate.Known.class);
    Band band = ((Estimate.Known) found).band();
    Offset<Double> near = Offset.offset(1e-12);
    assertThat(band.low()).isCloseTo(l, near);
    assertThat(band.likely()).isCloseTo(m, near);
    assertThat(band.high()).isCloseTo(h, near);
  }

  @ParameterizedTest
  @CsvSource({
    "6 / slip margin, -1, 2",
    "6 / slip margin, 0, 2",
    "6 / slip margin, -2, 0",
    "(if packed then slip margin else 2), 1, 2",
    "clamping force / clamping force + slip margin, 1, 2",
    "slip margin + clamping force / clamping force, 1, 2",
    "abs(clamping force / clamping force), 1, 2",
    "-(clamping force / clamping force), 1, 2",
    "'max(slip margin, clamping force / clamping force)', 1, 2",
    "(if slip margin < 1.5 then clamping force / clamping force else 2), 1, 2",
    "(if slip margin < 1.5 then 2 else clamping force / clamping force), 1, 2",
  })
  void whatCannotBeWorkedIsUnknown(String term, double low, double high) throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, new Band(low, (low + high) / 2, high));
    assertThat(estimate(term, readings)).isInstanceOf(Estimate.Unknown.class);
  }

  @Test
  void whatCannotBeWorkedSaysWhy() throws Exception {
    Readings zero = Shop.readings(Shop.SLIP, new Band(-1, 0, 1));
    assertThat(estimate("6 / (slip margin - 0)", zero))
        .isEqualTo(new Estimate.Unknown("slip margin - 0 may be zero"));
    assertThat(estimate("(if packed then 1 else 2)", zero))
        .isEqualTo(new Estimate.Unknown("it is not known whether packed"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-slip margin < 7                     | -slip margin is less than 7",
        "-(slip margin + 1) <= 7              | -(slip margin + 1) is at most 7",
        "abs(slip margin) > 7                 | the size of slip margin is more than 7",
        "max(slip margin, 1) >= 7             | the greatest of slip margin, 1 is at least 7",
        "min(slip margin, 1) = 7              | the least of slip margin, 1 is 7",
        "slip margin * (slip margin - 1) != 7 | slip margin * (slip margin - 1) is not 7",
        "(if packed then 1 else 2) < slip margin"
            + " | 1 if packed, otherwise 2 is less than slip margin",
        "soft seat                            | soft seat",
        "not(packed)                          | not (packed)",
      })
  void aConditionIsSaidInWords(String text, String words) throws Exception {
    assertThat(condition(text).toWords()).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stick-out - grip depth < stock thickness | stick-out grip depth stock thickness |",
        "-slip margin < abs(lean) / lean          | slip margin lean |",
        "max(stick-out, grip depth) < cutter diameter | stick-out grip depth cutter diameter |",
        "(if packed then stick-out else grip depth) < cutter diameter"
            + " | packed stick-out grip depth cutter diameter |",
        "(if soft seat then 1 else 2) < slip margin | slip margin | soft seat",
        "(if packed then (if creeping then 1 else 2) else 3) < slip margin"
            + " | packed slip margin | creeping",
        "(if packed then 1 else (if creeping then 1 else 2)) < slip margin"
            + " | packed slip margin | creeping",
        "slip margin < (if soft seat then 1 else 2) | slip margin | soft seat",
        "slip margin < 2 + (if soft seat then 1 else 2) | slip margin | soft seat",
        "slip margin < (if soft seat then 1 else 2) + 2 | slip margin | soft seat",
        "slip margin < -(if soft seat then 1 else 2) | slip margin | soft seat",
        "slip margin < abs(if soft seat then 1 else 2) | slip margin | soft seat",
        "slip margin < max(2, (if soft seat then 1 else 2)) | slip margin | soft seat",
        "not(soft seat)                           | | soft seat",
        "not(soft seat and creeping) or packed    | packed | creeping soft seat",
        "some d in depths of passes satisfies d > stick-out | depths of passes stick-out |",
        "some d in depths of passes satisfies (d > stick-out and soft seat)"
            + " | depths of passes stick-out | soft seat",
      })
  void aConditionKnowsTheFactsAndJudgementsItReads(String text, String facts, String judgements)
      throws Exception {
    Condition condition = condition(text);
    Set<Fact> read = new java.util.HashSet<>();
    condition.facts(read::add);
    Set<String> expected = new TreeSet<>();
    Shop.VOCABULARY.forEach(
        f -> {
          if (facts != null && (" " + facts + " ").contains(" " + f.name() + " ")) {
            expected.add(f.name());
          }
        });
    assertThat(read).extracting(Fact::name).containsExactlyInAnyOrderElementsOf(expected);
    Set<String> judged = new TreeSet<>();
    condition.judgements(judged::add);
    assertThat(String.join(" ", judged)).isEqualTo(judgements == null ? "" : judgements);
  }
}

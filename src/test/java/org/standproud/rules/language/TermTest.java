package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.Shop;
import org.standproud.rules.language.Condition.Comparison;
import org.standproud.setup.Band;

/** Arithmetic over the draws, beside the same arithmetic of Java on the number of each draw. */
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

  private static final Map<String, DoubleUnaryOperator> OF_SLIP_MARGIN =
      Map.ofEntries(
          Map.entry("slip margin", x -> x),
          Map.entry("-slip margin", x -> -x),
          Map.entry("abs(slip margin)", Math::abs),
          Map.entry("slip margin + 2", x -> x + 2),
          Map.entry("slip margin - 2", x -> x - 2),
          Map.entry("2 - slip margin", x -> 2 - x),
          Map.entry("slip margin * (-2)", x -> x * -2),
          Map.entry("slip margin / 2", x -> x / 2),
          Map.entry("6 / slip margin", x -> 6 / x),
          Map.entry("slip margin * slip margin", x -> x * x),
          Map.entry("slip margin - slip margin", x -> 0),
          Map.entry("(slip margin + 4) / (slip margin + 4)", x -> 1),
          Map.entry("max(slip margin, 1)", x -> Math.max(x, 1)),
          Map.entry("min(1, slip margin, -4)", x -> Math.min(x, -4)),
          Map.entry("(if slip margin < 0 then 4 else 2)", x -> x < 0 ? 4 : 2),
          Map.entry("(if slip margin < 0 then slip margin else 2)", x -> x < 0 ? x : 2));

  static Stream<Arguments> terms() {
    List<Band> bands = List.of(new Band(-3, 1, 2), new Band(1, 2, 5), Band.exactly(-1.5));
    return OF_SLIP_MARGIN.keySet().stream()
        .flatMap(term -> bands.stream().map(band -> Arguments.of(term, band)));
  }

  @ParameterizedTest
  @MethodSource("terms")
  void aTermIsWorkedInEveryDraw(String term, Band band) throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, band);
    Sample slip = ((Value.Quantity) readings.value(Shop.SLIP)).sample();
    assertThat(estimate(term, readings)).isInstanceOf(Estimate.Known.class);
    Estimate.Known found = (Estimate.Known) estimate(term, readings);
    for (int draw = 0; draw < slip.size(); draw++) {
      assertThat(found.at(draw, slip.size()))
          .isCloseTo(OF_SLIP_MARGIN.get(term).applyAsDouble(slip.at(draw)), Offset.offset(1e-12));
    }
  }

  /** Slip margin is 0; the clamping force is missing. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "6 / slip margin",
        "(if packed then slip margin else 2)",
        "clamping force / clamping force + slip margin",
        "slip margin + clamping force / clamping force",
        "abs(clamping force / clamping force)",
        "-(clamping force / clamping force)",
        "max(slip margin, clamping force / clamping force)",
        "(if slip margin < 1.5 then clamping force / clamping force else 2)",
      })
  void whatCannotBeWorkedIsUnknown(String term) throws Exception {
    assertThat(estimate(term, Shop.readings(Shop.SLIP, 0.0))).isInstanceOf(Estimate.Unknown.class);
  }

  /** The lower twentieth of the draws is 0: there the quotient is not known, elsewhere it is. */
  @Test
  void whereItCannotBeWorkedInSomeDrawsItIsUnknownInThose() throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, new Band(0, 1, 2));
    Sample slip = ((Value.Quantity) readings.value(Shop.SLIP)).sample();
    DrawTruth truth = condition("6 / slip margin > 4").evaluate(readings, Judgements.NONE);
    assertThat(truth.unknown()).isEqualTo(DrawSet.where(slip.size(), d -> slip.at(d) == 0));
    assertThat(truth.holds())
        .isEqualTo(DrawSet.where(slip.size(), d -> slip.at(d) > 0 && slip.at(d) < 1.5));
    assertThat(condition("6 / slip margin > 4").unknowns(readings, Judgements.NONE))
        .containsExactly("slip margin may be zero");
  }

  /** Where the set-up lets go there is no number, and a comparison neither holds nor fails. */
  @Test
  void whereTheSetupLetsGoNothingIsSaidOfTheNumber() throws Exception {
    double[] values = {1, Double.NaN, 3, Double.NaN};
    Readings readings =
        new Readings(
            Shop.TABLE,
            new Evidence(
                List.of(
                    new EvidenceValue(
                        Shop.SLIP, new Value.Quantity(Sample.of(values)), List.of(), List.of()))));
    for (String text : List.of("slip margin + 1 < 3", "not(slip margin + 1 >= 3)")) {
      DrawTruth truth = condition(text).evaluate(readings, Judgements.NONE);
      assertThat(truth.holds()).isEqualTo(DrawSet.where(4, d -> d == 0));
      assertThat(truth.fails()).isEqualTo(DrawSet.where(4, d -> d == 2));
      assertThat(truth.unknown().isEmpty()).isTrue();
      assertThat(truth.share()).isEqualTo(0.25);
    }
  }

  @Test
  void whatCannotBeWorkedSaysWhy() throws Exception {
    Readings zero = Shop.readings(Shop.SLIP, 0.0);
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
  void aConditionIsWrittenInWords(String text, String words) throws Exception {
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

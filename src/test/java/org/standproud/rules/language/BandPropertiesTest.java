package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.standproud.rules.Shop;
import org.standproud.setup.Band;

class BandPropertiesTest {

  private static final ConditionParser PARSER = new ConditionParser(Shop.TABLE, Set.of());

  private static final List<String> TERMS =
      List.of(
          "stick-out",
          "grip depth",
          "stick-out + grip depth",
          "stick-out - grip depth",
          "-stick-out",
          "abs(stick-out - grip depth)",
          "max(stick-out, grip depth)",
          "min(stick-out, grip depth, stock thickness)",
          "stick-out * grip depth / stock thickness",
          "(if stick-out > grip depth then stick-out else stock thickness)");

  @Provide
  Arbitrary<Band> bands() {
    Arbitrary<Double> value = Arbitraries.doubles().between(0.001, 2).ofScale(3);
    return Combinators.combine(value, value, value)
        .as(
            (a, b, c) ->
                Band.spanning(
                    a + b + c - Math.max(a, Math.max(b, c)) - Math.min(a, Math.min(b, c)),
                    a,
                    b,
                    c));
  }

  @Provide
  Arbitrary<String> conditions() {
    Arbitrary<String> term = Arbitraries.of(TERMS);
    Arbitrary<String> relation = Arbitraries.of("<", "<=", ">", ">=", "=", "!=");
    Arbitrary<String> comparison =
        Combinators.combine(term, relation, term).as((a, r, b) -> a + " " + r + " " + b);
    return Arbitraries.<String>oneOf(
            comparison,
            comparison.map(c -> "not(" + c + ")"),
            Combinators.combine(Arbitraries.of("some", "every"), relation, term)
                .as((w, r, b) -> w + " d in depths of passes satisfies d " + r + " " + b),
            Combinators.combine(comparison, Arbitraries.of("and", "or"), comparison)
                .as((a, w, b) -> a + " " + w + " " + b),
            Combinators.combine(comparison, comparison, comparison)
                .as((a, b, c) -> "if " + a + " then " + b + " else " + c))
        .filter(text -> text.length() <= ConditionText.MAX_LENGTH);
  }

  @Property(tries = 150)
  void whatIsCertainOverTheBandsHoldsAtEveryPointInThem(
      @ForAll("conditions") String text,
      @ForAll("bands") Band stickOut,
      @ForAll("bands") Band grip,
      @ForAll("bands") Band thickness)
      throws Exception {
    Condition condition = PARSER.parse(text, Map.of());
    Truth truth = condition.evaluate(readings(stickOut, grip, thickness), Judgements.NONE);
    if (truth == Truth.EITHER) {
      return;
    }
    for (int i = 0; i <= 4; i++) {
      for (int j = 0; j <= 4; j++) {
        for (int k = 0; k <= 4; k++) {
          Readings point =
              readings(at(stickOut, i / 4.0), at(grip, j / 4.0), at(thickness, k / 4.0));
          assertThat(condition.evaluate(point, Judgements.NONE)).as(text).isEqualTo(truth);
        }
      }
    }
  }

  @Property(tries = 100)
  void aWiderBandNeverMakesUpAnAnswer(
      @ForAll("conditions") String text,
      @ForAll("bands") Band stickOut,
      @ForAll("bands") Band grip,
      @ForAll("bands") Band thickness)
      throws Exception {
    Condition condition = PARSER.parse(text, Map.of());
    Truth wide = condition.evaluate(readings(stickOut, grip, thickness), Judgements.NONE);
    Truth narrow =
        condition.evaluate(readings(at(stickOut, 0.5), grip, thickness), Judgements.NONE);
    assertThat(wide == narrow || wide == Truth.EITHER).as(text).isTrue();
  }

  private static Band at(Band band, double part) {
    return Band.exactly(Math.min(band.high(), band.low() + part * band.width()));
  }

  private static Readings readings(Band stickOut, Band grip, Band thickness) {
    return Shop.readings(
        Shop.STICK_OUT,
        stickOut,
        Shop.GRIP_DEPTH,
        grip,
        Shop.THICKNESS,
        thickness,
        Shop.DEPTHS,
        List.of(stickOut, grip, thickness));
  }
}

package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
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

  /** A condition over the draws is the condition in each draw, every number taken exactly. */
  @Property(tries = 150)
  void whatHoldsInADrawHoldsForTheNumbersOfThatDraw(
      @ForAll("conditions") String text,
      @ForAll("bands") Band stickOut,
      @ForAll("bands") Band grip,
      @ForAll("bands") Band thickness)
      throws Exception {
    Condition condition = PARSER.parse(text, Map.of());
    Readings readings = readings(stickOut, grip, thickness);
    DrawTruth truth = condition.evaluate(readings, Judgements.NONE);
    for (int draw = 0; draw < Sample.DRAWS; draw += 5) {
      DrawTruth exact =
          condition.evaluate(at(draw, readings, stickOut, grip, thickness), Judgements.NONE);
      int place = truth.draws() == 1 ? 0 : draw;
      assertThat(truth.holds().contains(place)).as(text).isEqualTo(exact.equals(DrawTruth.TRUE));
      assertThat(truth.unknown().contains(place))
          .as(text)
          .isEqualTo(exact.equals(DrawTruth.UNKNOWN));
    }
  }

  private static Readings at(int draw, Readings readings, Band... passes) {
    List<Object> members =
        Arrays.stream(passes)
            .<Object>map(band -> new Value.Quantity(band).sample())
            .map(sample -> Band.exactly(((Sample) sample).at(draw)))
            .map(Object.class::cast)
            .toList();
    return Shop.readings(
        Shop.STICK_OUT,
        at(draw, readings, Shop.STICK_OUT),
        Shop.GRIP_DEPTH,
        at(draw, readings, Shop.GRIP_DEPTH),
        Shop.THICKNESS,
        at(draw, readings, Shop.THICKNESS),
        Shop.DEPTHS,
        members);
  }

  private static Band at(int draw, Readings readings, Fact fact) {
    return Band.exactly(((Value.Quantity) readings.value(fact)).sample().at(draw));
  }

  /** What is known exactly is judged as a band of no width, at one value for all draws. */
  @Property(tries = 100)
  void anExactNumberIsABandOfNoWidth(
      @ForAll("conditions") String text,
      @ForAll("bands") Band stickOut,
      @ForAll("bands") Band grip,
      @ForAll("bands") Band thickness)
      throws Exception {
    Condition condition = PARSER.parse(text, Map.of());
    DrawTruth truth =
        condition.evaluate(
            readings(
                Band.exactly(stickOut.likely()),
                Band.exactly(grip.likely()),
                Band.exactly(thickness.likely())),
            Judgements.NONE);
    assertThat(truth.draws()).as(text).isEqualTo(1);
    assertThat(truth.truth()).as(text).isNotEqualTo(Truth.EITHER);
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

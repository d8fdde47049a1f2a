package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.rules.Shop;
import org.standproud.rules.gate.NormalizedCondition.Among;
import org.standproud.rules.gate.NormalizedCondition.Bound;
import org.standproud.rules.gate.NormalizedCondition.Other;
import org.standproud.rules.language.Condition.Relation;

/**
 * Relations between two conditions are checked against trying every number, or every set of words.
 */
class NormalizedConditionTest {

  /** The bounds are whole numbers from 0 to 3: these lie on, between and beside them. */
  private static final double[] NUMBERS =
      DoubleStream.iterate(-1, x -> x + 0.5).limit(11).toArray();

  private static DoublePredicate meaning(Bound bound) {
    double v = bound.value();
    return switch (bound.relation()) {
      case LESS -> x -> x < v;
      case AT_MOST -> x -> x <= v;
      case MORE -> x -> x > v;
      case AT_LEAST -> x -> x >= v;
      case EQUAL -> x -> x == v;
      case NOT_EQUAL -> x -> x != v;
    };
  }

  private static boolean oneSided(Bound bound) {
    return bound.relation() != Relation.EQUAL && bound.relation() != Relation.NOT_EQUAL;
  }

  @Provide
  Arbitrary<Bound> bounds() {
    return Combinators.combine(
            Arbitraries.of(Relation.values()), Arbitraries.integers().between(0, 3))
        .as((relation, value) -> new Bound("slip margin", relation, value));
  }

  @Property
  void aBoundFollowsFromAnotherWhereNoNumberSaysOtherwise(
      @ForAll("bounds") Bound one, @ForAll("bounds") Bound other) {
    boolean follows =
        Arrays.stream(NUMBERS).filter(meaning(other)).allMatch(n -> meaning(one).test(n));
    if (oneSided(one) && oneSided(other)) {
      assertThat(one.followsFrom(other)).isEqualTo(follows);
    } else { // equal and not equal are only compared with themselves
      assertThat(one.followsFrom(other)).isEqualTo(one.equals(other));
    }
    assertThat(one.followsFrom(new Bound("lean", other.relation(), other.value()))).isFalse();
  }

  @Property
  void twoBoundsContradictEachOtherWhereNoNumberFitsBoth(
      @ForAll("bounds") Bound one, @ForAll("bounds") Bound other) {
    boolean never =
        Arrays.stream(NUMBERS).noneMatch(n -> meaning(one).test(n) && meaning(other).test(n));
    assertThat(one.contradicts(other)).isEqualTo(never && oneSided(one) && oneSided(other));
    assertThat(one.contradicts(new Bound("lean", other.relation(), other.value()))).isFalse();
  }

  @Property
  void wordsFollowFromFewerAndContradictOthers(
      @ForAll @Size(min = 1, max = 3) Set<@IntRange(max = 3) Integer> a,
      @ForAll @Size(min = 1, max = 3) Set<@IntRange(max = 3) Integer> b) {
    Among one = words("stage", a);
    Among other = words("stage", b);
    assertThat(one.followsFrom(other)).isEqualTo(b.stream().allMatch(a::contains));
    assertThat(one.contradicts(other)).isEqualTo(b.stream().noneMatch(a::contains));
    assertThat(one.followsFrom(words("stop", b))).isFalse();
    assertThat(one.contradicts(words("stop", b))).isFalse();
    assertThat(one.key().equals(other.key())).isEqualTo(a.equals(b));
  }

  private static Among words(String fact, Set<Integer> words) {
    return new Among(fact, Set.copyOf(words.stream().map(i -> "word " + i).toList()));
  }

  @Test
  void anyOtherConditionFollowsFromItselfAndContradictsItsOpposite() {
    Other packed = new Other("packed");
    Other unpacked = new Other("not(packed)");
    assertThat(packed.followsFrom(new Other("packed"))).isTrue();
    assertThat(packed.followsFrom(unpacked)).isFalse();
    assertThat(packed.contradicts(unpacked)).isTrue();
    assertThat(unpacked.contradicts(packed)).isTrue();
    assertThat(packed.contradicts(new Other("packed"))).isFalse();
    assertThat(packed.contradicts(new Bound("packed", Relation.LESS, 1))).isFalse();
    assertThat(new Bound("packed", Relation.LESS, 1).followsFrom(packed)).isFalse();
    assertThat(words("packed", Set.of(1)).contradicts(packed)).isFalse();
  }

  @Test
  void theRangeOfAFactHoldsAlways() {
    assertThat(NormalizedCondition.range(Shop.LEAN))
        .containsExactly(
            new Bound("lean", Relation.AT_LEAST, -4), new Bound("lean", Relation.AT_MOST, 4));
    assertThat(NormalizedCondition.range(Shop.STAGE)).isEmpty();
    assertThat(new Bound("a", Relation.LESS, 2).key())
        .isNotEqualTo(new Bound("a", Relation.LESS, 3).key())
        .isNotEqualTo(new Bound("b", Relation.LESS, 2).key())
        .isNotEqualTo(new Bound("a", Relation.MORE, 2).key());
  }

  /** Two cards with these conditions, and whether they are reported as the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "true  | slip margin < 2                     | 2 > slip margin",
        "true  | slip margin <= 2                    | 2 >= slip margin",
        "true  | slip margin = 2                     | 2 = slip margin",
        "false | slip margin < 2                     | 2 < slip margin",
        "false | slip margin <= 2                    | slip margin < 2",
        "false | slip margin = 2                     | slip margin != 2",
        "true  | slip margin < 1 + 1                 | slip margin < 2",
        "true  | abs(slip margin) < 2                | 2 > abs(slip margin)",
        "false | abs(slip margin) < 2                | slip margin < 2",
        "false | -slip margin < 2                    | slip margin < 2",
        "true  | max(stick-out, grip depth) > stock thickness"
            + " | stock thickness < max(grip depth, stick-out)",
        "false | max(stick-out, grip depth) > stock thickness"
            + " | min(stick-out, grip depth) > stock thickness",
        "true  | max(stick-out, grip depth) / stock thickness < 2"
            + " | max(grip depth, stick-out) / stock thickness < 2",
        "false | max(stick-out, grip depth) / stock thickness < 2"
            + " | min(grip depth, stick-out) / stock thickness < 2",
        "false | stick-out / grip depth < 2          | grip depth / stick-out < 2",
        "false | slip margin + stick-out / grip depth < 2"
            + " | slip margin - stick-out / grip depth < 2",
        "false | stick-out < grip depth              | grip depth < stick-out",
        "false | stick-out < grip depth              | stick-out <= grip depth",
        "true  | packed or slip margin < 2           | slip margin < 2 or packed",
        "false | packed or slip margin < 2           | packed or slip margin < 3",
        "true  | not(packed and slip margin < 2)     | not(slip margin < 2 and packed)",
        "false | not(packed or slip margin < 2)      | packed or slip margin < 2",
        "true  | stop in (\"left\", \"right\")       | stop in (\"right\", \"left\")",
        "false | stop in (\"left\", \"right\")       | stop = \"left\"",
        "true  | not(stop = \"none\")                | stop in (\"right\", \"left\")",
        "false | packed                              | not(packed)",
      })
  void twoConditionsAreTheSameByWhatTheySay(boolean same, String one, String other) {
    assertThat(warnings(one, other).contains(CardWarning.Kind.SAME_CONDITIONS))
        .as("%s and %s", one, other)
        .isEqualTo(same);
  }

  private static List<CardWarning.Kind> warnings(String one, String other) {
    return CatalogueReviewTest.warnings(
            CatalogueReviewTest.card("A", "stop", "", "", one),
            CatalogueReviewTest.card("B", "stop", "", "", other))
        .stream()
        .map(CardWarning::kind)
        .toList();
  }
}

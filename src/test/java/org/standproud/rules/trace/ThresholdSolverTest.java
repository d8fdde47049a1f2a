package org.standproud.rules.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Functions whose zeros are known. */
class ThresholdSolverTest {

  private static final double NO_LEAST = Double.NEGATIVE_INFINITY;
  private static final double NO_GREATEST = Double.POSITIVE_INFINITY;

  private static @Nullable Double nearest(
      DoubleUnaryOperator f, double least, double greatest, double start) {
    return new ThresholdSolver(f, least, greatest).nearest(start);
  }

  private static double found(DoubleUnaryOperator f, double start) {
    return Objects.requireNonNull(nearest(f, NO_LEAST, NO_GREATEST, start));
  }

  @Property
  void aStraightLineIsCrossedWhereItIsAndAskedSevenTimesAtMost(
      @ForAll @DoubleRange(min = -50, max = 50) double zero,
      @ForAll @DoubleRange(min = 0.01, max = 20) double size,
      @ForAll boolean falling,
      @ForAll @DoubleRange(min = -50, max = 50) double start) {
    double slope = falling ? -size : size;
    List<Double> asked = new ArrayList<>();
    double found =
        found(
            x -> {
              asked.add(x);
              return slope * (x - zero);
            },
            start);
    assertThat(found).isCloseTo(zero, Offset.offset(1e-6 * Math.max(1, Math.abs(zero - start))));
    if (Math.abs(zero - start) > 0.01) {
      assertThat(asked).hasSizeLessThanOrEqualTo(7);
    }
  }

  @Test
  void aPlaceThatIsTheZeroIsTheAnswerAtOnce() {
    List<Double> asked = new ArrayList<>();
    DoubleUnaryOperator third =
        x -> {
          asked.add(x);
          return 1 / x - 1 / 3.0;
        };
    double[] one = {3};
    assertThat(new ThresholdSolver(third, 0, 9).among(1, one, 0)).isEqualTo(3);
    assertThat(asked).containsExactly(1.0, 3.0);
  }

  @Test
  void whereNoPlaceIsAZeroWithinTheRangeThereIsNone() {
    DoubleUnaryOperator line = x -> x - 3;
    double[] places = {2, 3, 4};
    assertThat(new ThresholdSolver(line, 0, 9).among(1, places, 0, 2)).isEqualTo(3);
    assertThat(new ThresholdSolver(line, 0, 2).among(1, places, 1)).isNull();
    assertThat(new ThresholdSolver(line, 0, 9).among(3, places)).isEqualTo(3);
    assertThat(new ThresholdSolver(line, 0, 9).among(1, new double[0])).isNull();
  }

  @Test
  void aStartThatIsAZeroIsTheAnswer() {
    assertThat(found(x -> x - 3, 3)).isEqualTo(3);
    assertThat(found(x -> (x - 3) * (x - 3), 3)).isEqualTo(3);
  }

  @Test
  void aCurveIsCrossedAtItsZeroOnTheSideToWhichItFalls() {
    Offset<Double> near = Offset.offset(1e-9);
    assertThat(found(x -> x * x - 2, 1)).isCloseTo(Math.sqrt(2), near);
    assertThat(found(x -> x * x - 2, 5)).isCloseTo(Math.sqrt(2), near);
    assertThat(found(x -> x * x - 2, -1)).isCloseTo(-Math.sqrt(2), near);
    assertThat(found(x -> 2 - x * x, 1)).isCloseTo(Math.sqrt(2), near);
    assertThat(found(x -> 1 / x - 0.25, 1)).isCloseTo(4, near);
    assertThat(found(x -> Math.exp(-x) - 0.5, 3)).isCloseTo(Math.log(2), near);
    assertThat(found(x -> 0.5 - Math.exp(-x), 3)).isCloseTo(Math.log(2), near);
    assertThat(found(x -> Math.cos(x), 1)).isCloseTo(Math.PI / 2, near);
    assertThat(found(x -> Math.cos(x), 4)).isCloseTo(3 * Math.PI / 2, near);
  }

  @Test
  void aZeroFarFromAStartAtNothingIsFound() {
    assertThat(Math.abs(found(x -> x * x - 1e8, 0))).isCloseTo(1e4, Offset.offset(1e-6));
    assertThat(found(x -> x - 1e5, 0)).isCloseTo(1e5, Offset.offset(1e-6));
  }

  @Test
  void whereTheSlopePointsToNothingTheOtherSideIsSearched() {
    // To the left it flattens toward one and never comes to zero; it falls again beyond 2.
    DoubleUnaryOperator hill = x -> x < 1 ? 1 + Math.exp(x - 1) : x < 2 ? 2 + (x - 1) : 7 - 2 * x;
    assertThat(found(hill, 1.5)).isCloseTo(3.5, Offset.offset(1e-9));
  }

  @Test
  void aZeroThatAStepHitsExactlyIsTaken() {
    // From 1 the steps are a 64th, then two: they add up to 3 / 64.
    double zero = 1 + 3 / 64.0;
    assertThat(found(x -> Math.cbrt(zero - x), 1)).isEqualTo(zero);
  }

  @Test
  void aLineWithAKneeIsNotTakenForALine() {
    // As steep at the start as at its zero by the secant, but it turns between.
    assertThat(found(x -> x < 2 ? 4 - x : 2 - (x - 2) / 2, 1)).isCloseTo(6, Offset.offset(1e-9));
  }

  @Test
  void whatHasNoZeroInTheRangeHasNone() {
    assertThat(nearest(x -> x - 3, 0, 2, 1)).isNull();
    assertThat(nearest(x -> x + 3, 0, 2, 1)).isNull();
    assertThat(nearest(x -> x * x + 1, NO_LEAST, NO_GREATEST, 1)).isNull();
    assertThat(nearest(x -> 7, NO_LEAST, NO_GREATEST, 1)).isNull();
    assertThat(nearest(x -> Double.NaN, NO_LEAST, NO_GREATEST, 1)).isNull();
    assertThat(nearest(x -> x > 1.1 ? Double.NaN : 2 - x * x, 0, 9, 1)).isNull();
  }

  @Test
  void aZeroAtTheEndOfTheRangeIsFound() {
    assertThat(nearest(x -> x - 2, 0, 2, 1)).isEqualTo(2);
    assertThat(nearest(x -> x, 0, 2, 1)).isEqualTo(0);
    assertThat(nearest(x -> x * x * x - 8, 0, 2, 1)).isEqualTo(2);
    assertThat(nearest(x -> x * x * x + 8, -2, 2, 1)).isEqualTo(-2);
    assertThat(nearest(x -> x * x - 2, 0, 1.4, 1)).isNull();
    assertThat(Objects.requireNonNull(nearest(x -> x * x - 2, 0, 1.5, 1)))
        .isCloseTo(Math.sqrt(2), Offset.offset(1e-9));
  }

  /**
   * The clearance of a comparison over draws: the one of a given rank, of lines that each cross at
   * a place of their own and of draws that never cross. It is zero at the place of that rank,
   * counted among the draws that are clear everywhere, or nowhere.
   */
  @Property
  void amongThePlacesOfManyDrawsTheZeroIsTheOneOfTheRank(
      @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = -9, max = 9) Double> crossings,
      @ForAll @IntRange(min = 0, max = 5) int neverClear,
      @ForAll @IntRange(min = 0, max = 5) int alwaysClear,
      @ForAll @DoubleRange(min = 0, max = 0.99) double share,
      @ForAll @DoubleRange(min = -9, max = 9) double start) {
    double[] places = crossings.stream().mapToDouble(p -> p).sorted().toArray();
    int draws = places.length + neverClear + alwaysClear;
    int rank = (int) (share * draws);
    DoubleUnaryOperator function =
        x ->
            IntStream.range(0, draws)
                .mapToDouble(
                    d -> d < places.length ? places[d] - x : d < draws - neverClear ? 99 : -99)
                .sorted()
                .toArray()[rank];
    Double found =
        new ThresholdSolver(function, NO_LEAST, NO_GREATEST)
            .among(start, places, 0, places.length - 1);
    int place = rank - neverClear;
    if (place < 0 || place >= places.length) {
      assertThat(found).isNull();
    } else {
      assertThat(found).isCloseTo(places[place], Offset.offset(1e-8));
    }
  }
}

package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.vibration.ModeBand;
import org.standproud.setup.Band;

class PlateResponseTest {

  private static PlateInput stock(
      double stickOutM, double lengthM, double thicknessM, Band turn, double x, double z) {
    return new PlateInput(
        stickOutM,
        lengthM,
        thicknessM,
        new Band(195e9, 205e9, 210e9),
        0.29,
        7850,
        turn.times(1e4),
        turn,
        lengthM,
        new PlatePoint(x * lengthM, z * stickOutM));
  }

  /** Own comparison of the quick order with the fine one; no published value. */
  @ParameterizedTest(name = "length {0} stick-outs, hold {1} N.m/rad per m")
  @CsvSource({"1, 1e9", "1, 2e4", "3, 1e6", "5, 1e9", "5, 2e5", "8, 2e4", "10, 2e5", "15, 2e4"})
  void theQuickAnswerIsWithinAPercentOfTheFineOne(double bOverA, double turn) {
    PlateInput input = stock(0.05, 0.05 * bOverA, 0.003, Band.exactly(turn), 0.3, 1);
    PlateResponse quick = PlateResponse.of(input);
    PlateResponse fine = PlateResponse.of(input, RitzOrder.FINE);
    near(quick.flexibilityAtLoadMPerN(), fine.flexibilityAtLoadMPerN());
    near(quick.flexibilityAtMidEdgeMPerN(), fine.flexibilityAtMidEdgeMPerN());
    near(quick.flexibilityAtCornerMPerN(), fine.flexibilityAtCornerMPerN());
    for (int i = 0; i < 4; i++) {
      near(quick.frequenciesHz().get(i), fine.frequenciesHz().get(i));
    }
  }

  private static void near(Band quick, Band fine) {
    assertThat(quick.likely()).isCloseTo(fine.likely(), Percentage.withPercentage(1));
    assertThat(quick.low()).isCloseTo(fine.low(), Percentage.withPercentage(1));
    assertThat(quick.high()).isCloseTo(fine.high(), Percentage.withPercentage(1));
  }

  @Test
  void theEndOfALongPlateIsTwoAndAHalfTimesSofterThanItsMiddle() {
    // [derived] corner 2.5 times softer than mid edge from b/a = 3 on, rigid root.
    PlateResponse response = PlateResponse.of(stock(0.05, 0.3, 0.003, Band.exactly(1e14), 0, 1));
    assertThat(
            response.flexibilityAtCornerMPerN().likely()
                / response.flexibilityAtMidEdgeMPerN().likely())
        .isCloseTo(2.5, Percentage.withPercentage(2));
    Band tenNewtons = Band.exactly(10);
    assertThat(response.deflectionAtCornerM(tenNewtons).likely())
        .isEqualTo(10 * response.flexibilityAtCornerMPerN().likely());
  }

  /** Cantilever beam with shear: w = P a^3/(3 E I) + P a/(5/6 G A), Timoshenko [memory]. */
  @Test
  void aStubbyPostGivesByShearToo() {
    double a = 0.06;
    double h = 0.03;
    double b = 0.03;
    PlateInput input =
        new PlateInput(
            a,
            b,
            h,
            Band.exactly(205e9),
            0,
            7850,
            Band.exactly(1e17),
            Band.exactly(1e14),
            b,
            new PlatePoint(0, a));
    PlateResponse response = PlateResponse.of(input);
    double bending = a * a * a / (3 * 205e9 * b * h * h * h / 12);
    double shear = a / (5.0 / 6 * 205e9 / 2 * b * h);
    assertThat(response.flexibilityAtMidEdgeMPerN().likely())
        .isCloseTo(bending + shear, Percentage.withPercentage(2));
    assertThat(response.slenderness()).isEqualTo(PlateResponse.Slenderness.STUBBY);
    assertThat(response.remarks()).hasSize(2);
  }

  @Test
  void modalStiffnessesOfTheFirstModesAddUpToMostOfTheFlexibility() {
    PlateResponse response = PlateResponse.of(stock(0.05, 0.05, 0.003, Band.exactly(1e6), 0.2, 1));
    double sum =
        response.modesAtLoad().stream().mapToDouble(m -> 1 / m.stiffnessNPerM().likely()).sum();
    assertThat(sum / response.flexibilityAtLoadMPerN().likely()).isBetween(0.9, 1.01);
  }

  @Property(tries = 150)
  void everyFigureIsFiniteAndInOrderForAnyStockAViseHolds(
      @ForAll @DoubleRange(min = 0.0005, max = 0.3) @Scale(5) double stickOutM,
      @ForAll @DoubleRange(min = 0.02, max = 0.8) double lengthM,
      @ForAll @DoubleRange(min = 0.001, max = 0.08) @Scale(5) double thicknessM,
      @ForAll @DoubleRange(min = 0, max = 9) double logTurn,
      @ForAll @DoubleRange(min = 0.1, max = 1) double held,
      @ForAll @DoubleRange(min = -0.5, max = 0.5) double x) {
    double turn = Math.pow(10, logTurn);
    PlateInput input =
        new PlateInput(
            stickOutM,
            lengthM,
            thicknessM,
            new Band(60e9, 70e9, 75e9),
            0.33,
            2700,
            new Band(turn * 1e3, turn * 2e3, turn * 1e4),
            new Band(turn, turn * 2, turn * 5),
            Math.min(lengthM, held * lengthM * 1.000001),
            new PlatePoint(x * lengthM, stickOutM));
    PlateResponse response = PlateResponse.of(input);
    assertThat(response.flexibilityAtLoadMPerN().low()).isPositive();
    assertThat(response.flexibilityAtMidEdgeMPerN().low()).isPositive();
    assertThat(response.flexibilityAtCornerMPerN().low()).isPositive();
    assertThat(response.rootMomentPerN().high()).isFinite();
    assertThat(response.modesAtLoad()).hasSize(6);
    assertThat(response.frequenciesHz()).allSatisfy(f -> assertThat(f.low()).isPositive());
    List<Double> likely =
        response.modesAtMidEdge().stream().map(m -> m.likely().frequencyHz()).toList();
    assertThat(likely).isSorted();
  }

  @Property(tries = 40)
  void theSofterTheHoldTheMoreItGivesAndTheLowerItRings(
      @ForAll @DoubleRange(min = 3, max = 8) double logTurn,
      @ForAll @DoubleRange(min = 0.5, max = 4) double bOverA) {
    double turn = Math.pow(10, logTurn);
    PlateResponse soft =
        PlateResponse.of(stock(0.05, 0.05 * bOverA, 0.004, Band.exactly(turn), 0.5, 1));
    PlateResponse stiff =
        PlateResponse.of(stock(0.05, 0.05 * bOverA, 0.004, Band.exactly(1.5 * turn), 0.5, 1));
    PlateResponse both =
        PlateResponse.of(
            stock(0.05, 0.05 * bOverA, 0.004, new Band(turn, turn, 1.5 * turn), 0.5, 1));
    assertThat(soft.flexibilityAtLoadMPerN().likely())
        .isGreaterThan(stiff.flexibilityAtLoadMPerN().likely() * (1 - 1e-9));
    for (int i = 0; i < 6; i++) {
      assertThat(soft.frequenciesHz().get(i).likely())
          .isLessThan(stiff.frequenciesHz().get(i).likely() * (1 + 1e-6));
    }
    assertThat(both.flexibilityAtLoadMPerN().high())
        .isCloseTo(soft.flexibilityAtLoadMPerN().high(), Percentage.withPercentage(1e-6));
    assertThat(both.flexibilityAtLoadMPerN().low())
        .isCloseTo(stiff.flexibilityAtLoadMPerN().low(), Percentage.withPercentage(1e-6));
  }

  @Test
  void aRememberedPlateIsTheSamePlate() {
    RememberedPlates plates = new RememberedPlates(2);
    PlateInput input = stock(0.05, 0.1, 0.004, Band.exactly(1e5), 0, 1);
    PlateResponse first = plates.of(input);
    assertThat(plates.of(stock(0.05, 0.1, 0.004, Band.exactly(1e5), 0, 1))).isSameAs(first);
    assertThat(first).isEqualTo(PlateResponse.of(input));
    plates.of(stock(0.05, 0.1, 0.004, Band.exactly(2e5), 0, 1));
    plates.of(stock(0.05, 0.1, 0.004, Band.exactly(3e5), 0, 1));
    assertThat(plates.size()).isEqualTo(2);
    assertThat(plates.of(input)).isEqualTo(first);
  }

  @Test
  void aStockThatDoesNotStandOutOrALoadBesideItIsRefused() {
    assertThatThrownBy(() -> stock(0, 0.1, 0.01, Band.exactly(1e5), 0, 1))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("stick-out");
    assertThatThrownBy(() -> stock(0.05, 0.1, 0.01, Band.exactly(1e5), 0.6, 1))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("load place");
    assertThatThrownBy(() -> stock(0.05, 0.1, 0.01, Band.exactly(1e5), 0, 1.1))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("load height");
  }

  @Test
  void eachModeKeepsItsPairOfFrequencyAndStiffness() {
    PlateResponse response =
        PlateResponse.of(stock(0.05, 0.1, 0.004, new Band(2e4, 1e5, 5e5), 0, 1));
    ModeBand first = response.modesAtCorner().get(0);
    assertThat(first.soft().frequencyHz()).isLessThan(first.likely().frequencyHz());
    assertThat(first.stiff().frequencyHz()).isGreaterThan(first.likely().frequencyHz());
    // Between a quarter (cantilever beam) and a third (rigid body about its foot) of the mass
    // swings.
    double mass = 7850 * 0.05 * 0.1 * 0.004;
    assertThat(first.massKg().low() / mass).isBetween(0.2, 0.36);
    assertThat(first.massKg().high() / mass).isBetween(0.2, 0.36);
  }
}

package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.plate.BackedPlate.Answer;
import org.standproud.mechanics.plate.BackedPlate.Support;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

/** A strip with no Poisson effect is a beam, of which every book has the propped cantilever. */
class BackedPlateTest {

  private static final double A = 0.1;
  private static final double B = 0.02;
  private static final double T = 0.002;
  private static final double E = 210e9;
  private static final double RHO = 7850;
  private static final double EI = E * B * T * T * T / 12;

  /** So stiff that it does not show. */
  private static final RootStiffness CLAMPED = RootStiffness.turningAbout(1e-16, 1e-11, 0);

  private static final double RIGID = 1e13;
  private static final double[] LOOSE = {0};

  private static final PublishedTable PROPPED =
      new PublishedTable(
          Subject.PLATE,
          "1 - c (3 - c)^2/4, c height of the prop over length, propped cantilever under an"
              + " end load (unit load method; Roark's Formulas, table of beams, from memory)",
          SourceTag.DERIVED);

  private static BackedPlate strip(double heightM, boolean toward) {
    PlateOnFoot plate = new PlateOnFoot(A, B, T, B, 0, E, CLAMPED, RitzOrder.EVIDENCE);
    return new BackedPlate(plate, B, A, List.of(new Support(new PlatePoint(0, heightM), toward)));
  }

  private static Answer on(BackedPlate plate, double spring, double[] preload) {
    return plate.on(E, RHO, CLAMPED, new double[] {spring}, preload, 10, 10);
  }

  /** Give at the end with a rigid prop at c of the length, over that without it. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "prop at {0} of the length leaves {1} of the give [derived]")
  @CsvSource({"0.4, 0.324", "0.5, 0.21875", "0.6, 0.136", "0.8, 0.032"})
  void aProppedCantileverGivesAsTheBooksSay(double part, double left) {
    assertThat(1 - part * Math.pow(3 - part, 2) / 4).isCloseTo(left, within(1e-9));
    Answer backed = on(strip(part * A, true), RIGID, LOOSE);
    PROPPED
        .row("rigid prop at " + part + " of the length")
        .figure(
            "give over that without", "", left, backed.towardMPerN() / backed.awayMPerN(), 0.02);
    assertThat(backed.awayMPerN())
        .isCloseTo(A * A * A / (3 * EI), within(0.02 * A * A * A / (3 * EI)));
  }

  /** Roots 1.8751 and 3.9266 of clamped-free and clamped-pinned beams, Blevins 1979. */
  @Test
  void aStripProppedAtItsEndOnBothSidesRingsAsClampedAndPinned() {
    PlateOnFoot plate = new PlateOnFoot(A, B, T, B, 0, E, CLAMPED, RitzOrder.EVIDENCE);
    PlatePoint end = new PlatePoint(0, A);
    BackedPlate both =
        new BackedPlate(plate, B, A, List.of(new Support(end, true), new Support(end, false)));
    Answer answer = both.on(E, RHO, CLAMPED, new double[] {1e9, 1e9}, new double[] {0, 0}, 10, 10);
    Answer free = on(strip(A, true), 1.5, LOOSE);
    double ratio = Math.pow(3.9266 / 1.8751, 2);
    assertThat(answer.hz()[0] / free.hz()[0]).isCloseTo(ratio, within(0.03 * ratio));
  }

  /** Shaw and Holmes 1983: 2 f1 f2/(f1 + f2) for a stop on one side. */
  @Test
  void aSupportOnOneSideRaisesTheNoteLessThanOneThatHoldsBothWays() {
    Answer oneSided = on(strip(A, true), 1e9, LOOSE);
    double free = on(strip(A, true), 1.5, LOOSE).hz()[0];
    double held = on(strip(A, true), 1e9, new double[] {1e6}).hz()[0];
    assertThat(oneSided.hz()[0]).isCloseTo(2 * free * held / (free + held), within(1e-3 * held));
    assertThat(oneSided.hz()[0]).isBetween(free, held);
  }

  @Test
  void aPushAwayFromASupportGetsNothingUnlessItIsPreloaded() {
    Answer behind = on(strip(0.8 * A, true), 1e8, LOOSE);
    assertThat(behind.towardMPerN()).isLessThan(0.1 * behind.awayMPerN());
    Answer preloaded = on(strip(0.8 * A, true), 1e8, new double[] {1000});
    assertThat(preloaded.awayMPerN()).isCloseTo(preloaded.towardMPerN(), within(1e-12));
    Answer hardly = on(strip(0.8 * A, true), 1e8, new double[] {1});
    assertThat(hardly.awayMPerN()).isCloseTo(behind.awayMPerN(), within(1e-12));
  }

  @Test
  void theOtherSideIsTheSameTurnedRound() {
    Answer behind = on(strip(0.6 * A, true), 1e8, LOOSE);
    Answer before = on(strip(0.6 * A, false), 1e8, LOOSE);
    assertThat(before.awayMPerN()).isEqualTo(behind.towardMPerN());
    assertThat(before.towardMPerN()).isEqualTo(behind.awayMPerN());
    assertThat(before.hz()).containsExactly(behind.hz());
  }

  /** A spring k at the end beside 3 EI/a^3 there: the give of the two in parallel. */
  @Test
  void aSoftSupportAtTheEndSharesTheLoadByStiffness() {
    double own = 3 * EI / (A * A * A);
    Answer answer = on(strip(A, true), own, LOOSE);
    assertThat(answer.towardMPerN()).isCloseTo(0.5 / own, within(0.02 / own));
    assertThat(on(strip(A, true), 1.5, LOOSE).towardMPerN()).isCloseTo(1 / own, within(0.02 / own));
  }

  /** A support at one end does little for the other end of a long plate. */
  @Test
  void aSupportAtOneEndLeavesTheOtherEndSoft() {
    PlateOnFoot wide = new PlateOnFoot(A, 0.4, T, 0.4, 0.3, E, CLAMPED, RitzOrder.EVIDENCE);
    BackedPlate oneEnd =
        new BackedPlate(wide, 0.4, A, List.of(new Support(new PlatePoint(0.2, A), true)));
    Answer answer = on(oneEnd, 1e9, LOOSE);
    assertThat(answer.towardMPerN()).isGreaterThan(0.9 * answer.awayMPerN());
  }
}

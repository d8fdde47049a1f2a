package org.standproud.mechanics.engagement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Mode;

/** The chip is f_z sin(phi): thickest straight ahead, thinnest at one end (Altintas 2012 ch. 2). */
class ArcTest {

  private static Arc degrees(double entry, double exit) {
    return new Arc(Math.toRadians(entry), Math.toRadians(exit));
  }

  @ParameterizedTest(name = "{0} to {1} deg: thickest at {2}, least {3}, greatest {4}")
  @CsvSource({
    "30,  60,  60, 0.5,       0.8660254",
    "120, 150, 120, 0.5,      0.8660254",
    "30,  135, 90, 0.5,       1",
    "30,  90,  90, 0.5,       1",
    "90,  150, 90, 0.5,       1",
    "0,   45,  45, 0,         0.7071068",
    "45,  180, 90, 0,         1",
  })
  void theChipIsThickestStraightAheadOrAtTheEndNearerToThat(
      double entry, double exit, double thickestDeg, double least, double greatest) {
    Arc arc = degrees(entry, exit);
    assertThat(Math.toDegrees(arc.thickestRad())).isCloseTo(thickestDeg, within(1e-9));
    assertThat(arc.leastSine()).isCloseTo(least, within(1e-7));
    assertThat(arc.greatestSine()).isCloseTo(greatest, within(1e-7));
  }

  @Test
  void theEndsBelongToTheArcAndNothingBeyondThem() {
    Arc arc = new Arc(0.5, 1.25);
    assertThat(arc.holds(0.5)).isTrue();
    assertThat(arc.holds(1.25)).isTrue();
    assertThat(arc.holds(Math.nextDown(0.5))).isFalse();
    assertThat(arc.holds(Math.nextUp(1.25))).isFalse();
  }

  /** 1 - 0 over pi/2 and 2 over pi: the mean of a sine over a quarter and over a half turn. */
  @Test
  void theMeanChipOverAQuarterAndOverAHalfTurnIsTwoOverPi() {
    assertThat(degrees(0, 90).meanSine()).isCloseTo(2 / Math.PI, within(1e-12));
    assertThat(degrees(0, 180).meanSine()).isCloseTo(2 / Math.PI, within(1e-12));
    assertThat(degrees(0, 180).depthInRadii()).isCloseTo(2, within(1e-12));
    assertThat(new Arc(1, 1 + 1e-12).meanSine()).isCloseTo(Math.sin(1), within(1e-9));
  }

  @Test
  void aQuarterTurnUpToStraightAheadIsConventionalAndFromThereOnClimb() {
    assertThat(degrees(0, 90).mode()).isEqualTo(Mode.CONVENTIONAL);
    assertThat(degrees(90, 180).mode()).isEqualTo(Mode.CLIMB);
    assertThat(degrees(89, 91).mode()).isEqualTo(Mode.BOTH);
    assertThat(degrees(60, 120).trend()).isEqualTo(ChipTrend.EVEN);
    assertThat(degrees(60, 121).trend()).isEqualTo(ChipTrend.THICK_TO_THIN);
    assertThat(degrees(59, 120).trend()).isEqualTo(ChipTrend.THIN_TO_THICK);
  }

  @Test
  void anArcThatIsEmptyOrLiesBehindTheCutterIsRefusedByName() {
    assertThatThrownBy(() -> new Arc(1, 1))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("exit angle");
    assertThatThrownBy(() -> new Arc(-0.1, 1)).hasMessageContaining("entry angle");
    assertThatThrownBy(() -> new Arc(1, 3.2)).hasMessageContaining("exit angle");
  }

  /** Worked by hand: sin 30 deg is a half; nothing is cut at 10 deg, before the tooth enters. */
  @Test
  void theChipAtAnAngleIsThatOfTheSineAndNothingOffTheArc() {
    Engagement.Cutting cutting = PassFixture.conventional(20, 4, 4, 0.08).cutting();
    assertThat(Math.toDegrees(cutting.arc().exitRad())).isCloseTo(53.130, within(1e-3));
    assertThat(cutting.chipM(Math.toRadians(30))).isCloseTo(0.04e-3, within(1e-12));
    assertThat(cutting.chipM(Math.toRadians(60))).isZero();
  }

  @Test
  void aCutterJustAsWideAsTheStockCoversIt() {
    assertThat(PassFixture.pass(10, 4, 10, 0, 0.05).cutting().coversStock()).isTrue();
    assertThat(PassFixture.pass(10, 4, 10.001, 0, 0.05).cutting().coversStock()).isFalse();
    assertThat(PassFixture.pass(12, 4, 10, 1.5, 0.05).cutting().coversStock()).isFalse();
    assertThat(PassFixture.pass(12, 4, 10, -1.5, 0.05).cutting().coversStock()).isFalse();
  }
}

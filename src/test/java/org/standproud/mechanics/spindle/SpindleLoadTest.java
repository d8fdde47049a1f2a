package org.standproud.mechanics.spindle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Machine;
import org.standproud.setup.PowerPoint;

class SpindleLoadTest {

  private static final Machine MILL = SmallShop.kneeMill();
  private static final PowerCurve CURVE = new PowerCurve(MILL.power());

  @Test
  void belowTheCurveTheTorqueStaysAndAboveItNothingIsPromised() {
    assertThat(CURVE.powerW(1)).isCloseTo(550, within(1e-9));
    assertThat(CURVE.powerW(2)).isCloseTo(1100, within(1e-9));
    assertThat(CURVE.powerW(3)).isCloseTo(1650, within(1e-9));
    assertThat(CURVE.powerW(16)).isCloseTo(2200, within(1e-9));
    assertThat(CURVE.powerW(16.001)).isZero();
  }

  @Test
  void aCurveOfOnePointHasConstantTorqueUpToIt() {
    PowerCurve one = new PowerCurve(List.of(new PowerPoint(10, 1000)));
    assertThat(one.powerW(5)).isCloseTo(500, within(1e-9));
    assertThat(one.powerW(10)).isCloseTo(1000, within(1e-9));
    assertThat(one.powerW(11)).isZero();
  }

  @Test
  void aCurveThatTurnsBackIsRefused() {
    assertThatThrownBy(
            () -> new PowerCurve(List.of(new PowerPoint(4, 100), new PowerPoint(2, 200))))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> new PowerCurve(List.of())).isInstanceOf(OutsideValidity.class);
  }

  /** E of a geared head .70 to .80, Machinery's Handbook [memory]. */
  @Test
  void driveLossesComeOffTheMotorBeforeThePowerIsCompared() {
    SpindleLoad load = SpindleLoad.of(MILL, 4, Band.exactly(1650));
    assertThat(load.availableAtCutterW().low()).isCloseTo(1540, within(1e-9));
    assertThat(load.askedOverAvailable().likely()).isCloseTo(1, within(1e-9));
    assertThat(load.askedOverAvailable().high()).isGreaterThan(1);
    assertThat(load.torqueAtCutterNm().likely())
        .isCloseTo(1650 / (2 * FastMath.PI * 4), within(1e-9));
  }

  @Test
  void aSpeedTheMachineDoesNotHaveIsOutOfRangeAndWithoutPower() {
    SpindleLoad load = SpindleLoad.of(MILL, 20, Band.exactly(10));
    assertThat(load.speedInRange()).isFalse();
    assertThat(load.nearestSpeedRevPerS()).isEqualTo(16);
    assertThat(load.askedOverAvailable().low()).isEqualTo(SpindleLoad.NO_POWER);
  }

  @Test
  void theNearestGearedSpeedIsNearestByRatioAndTheSlowerOfTwo() {
    SpindleSpeeds geared = SpindleSpeeds.of(MILL);
    assertThat(geared.nearestRevPerS(5)).isEqualTo(4);
    assertThat(geared.nearestRevPerS(7)).isEqualTo(8);
    assertThat(new SpindleSpeeds(1, 4, List.of(1.0, 4.0)).nearestRevPerS(2)).isEqualTo(1);
    assertThat(new SpindleSpeeds(1, 16, List.of()).nearestRevPerS(5)).isEqualTo(5);
    assertThat(new SpindleSpeeds(1, 16, List.of()).nearestRevPerS(50)).isEqualTo(16);
  }

  @Property
  void askingForMoreNeverLowersTheRatio(
      @ForAll @Scale(7) @DoubleRange(min = .01, max = 30) double speed,
      @ForAll @Scale(7) @DoubleRange(min = 0, max = 1e5) double powerW) {
    SpindleLoad less = SpindleLoad.of(MILL, speed, Band.exactly(powerW));
    SpindleLoad more = SpindleLoad.of(MILL, speed, Band.exactly(powerW * 1.5 + 1));
    assertThat(more.askedOverAvailable().likely())
        .isGreaterThanOrEqualTo(less.askedOverAvailable().likely());
    assertThat(more.askedOverAvailable().high()).isLessThanOrEqualTo(SpindleLoad.NO_POWER);
  }
}

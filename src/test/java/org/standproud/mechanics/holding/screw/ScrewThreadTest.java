package org.standproud.mechanics.holding.screw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;

class ScrewThreadTest {

  private static final double HALF_ANGLE = Math.toRadians(15);

  private static ClampScrew tr20x4(double friction) {
    return new ClampScrew(
        0.018, 0.004, HALF_ANGLE, Band.exactly(friction), 0.028, Band.exactly(friction));
  }

  @Test
  @DisplayName("Shigley example 8-1, double-start square thread (data read, answers from memory)")
  void aSquareDoubleStartThreadTakesTheTorqueOfTheTextbookExample() {
    ScrewThread screw = new ScrewThread(0.030, 0.008, 0, 0.08, 0.040, 0.08);
    double forceN = 6400;
    assertThat(forceN * screw.tighteningTorquePerForceM()).isCloseTo(26.177, within(0.001));
    assertThat(forceN * screw.collarPerForceM()).isCloseTo(10.24, within(0.001));
    assertThat(forceN * (screw.tighteningTorquePerForceM() - screw.collarPerForceM()))
        .isCloseTo(15.94, within(0.005));
    assertThat(forceN * screw.looseningTorquePerForceM()).isCloseTo(9.774, within(0.001));
    assertThat(screw.efficiency()).isCloseTo(0.3113, within(0.0001));
  }

  @ParameterizedTest(name = "{0} kN needs {1} N.m (derived from the screw formula)")
  @CsvSource({"1,3.4503", "10,34.50", "20,69.01", "30,103.51", "40,138.01"})
  void aTrapezoidalScrew20By4NeedsThisTorque(double kilonewtons, double torqueNm) {
    ScrewThread screw = new ScrewThread(0.018, 0.004, HALF_ANGLE, 0.12, 0.028, 0.12);
    assertThat(kilonewtons * 1e3 * screw.tighteningTorquePerForceM())
        .isCloseTo(torqueNm, within(0.006));
    assertThat(screw.efficiency()).isCloseTo(0.1845, within(0.0001));
  }

  @ParameterizedTest(name = "friction {0} gives {1} kN at 80 N.m (derived from the screw formula)")
  @CsvSource({"0.08,31.87", "0.12,23.19", "0.15,19.25"})
  void eightyNewtonMetresGiveLessForceTheDrierTheScrew(double friction, double kilonewtons) {
    Band force = ScrewThread.forceN(tr20x4(friction), Band.exactly(80));
    assertThat(force.likely() / 1e3).isCloseTo(kilonewtons, within(0.006));
  }

  @Property
  void theBandHoldsEveryForceOfFrictionAndTorqueInside(
      @ForAll @DoubleRange(min = 0.08, max = 0.18) double friction,
      @ForAll @DoubleRange(min = 0.05, max = 0.2) double collar,
      @ForAll @DoubleRange(min = 60, max = 100) double torque) {
    ClampScrew screw =
        new ClampScrew(
            0.018, 0.004, HALF_ANGLE, new Band(0.08, 0.12, 0.18), 0.028, new Band(0.05, 0.12, 0.2));
    Band band = ScrewThread.forceN(screw, new Band(60, 80, 100));
    double force =
        torque
            / new ScrewThread(0.018, 0.004, HALF_ANGLE, friction, 0.028, collar)
                .tighteningTorquePerForceM();
    assertThat(force).isBetween(band.low() * (1 - 1e-12), band.high() * (1 + 1e-12));
  }

  @Test
  void aScrewWithoutFrictionGivesBackAllItsWork() {
    assertThat(new ScrewThread(0.018, 0.004, 0, 0, 0.028, 0).efficiency())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void aNegativeTorqueIsRefusedByName() {
    assertThatThrownBy(() -> ScrewThread.forceN(tr20x4(0.12), Band.exactly(-1)))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("torque");
  }
}

package org.standproud.mechanics.holding.screw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;

class ScrewThreadTest {

  private static final PublishedTable SHIGLEY =
      new PublishedTable(Subject.HOLDING, "Shigley, example 8-1 (question read)", SourceTag.MEMORY);

  private static final PublishedTable SCREW =
      new PublishedTable(
          Subject.HOLDING, "screw formula, Tr 20x4, collar 28 mm", SourceTag.DERIVED);

  private static final double HALF_ANGLE = Math.toRadians(15);

  private static ClampScrew tr20x4(double friction) {
    return new ClampScrew(
        0.018, 0.004, HALF_ANGLE, Band.exactly(friction), 0.028, Band.exactly(friction));
  }

  @Tag(PublishedTable.TESTS)
  @Test
  @DisplayName("Shigley example 8-1, double-start square thread (data read, answers from memory)")
  void aSquareDoubleStartThreadTakesTheTorqueOfTheTextbookExample() {
    ScrewThread screw = new ScrewThread(0.030, 0.008, 0, 0.08, 0.040, 0.08);
    double forceN = 6400;
    double thread = screw.tighteningTorquePerForceM() - screw.collarPerForceM();
    SHIGLEY
        .row("square thread d 32, p 4, double start, f 0.08, 6.4 kN")
        .figure("T_R", "N.m", 26.177, forceN * screw.tighteningTorquePerForceM(), 1e-3)
        .figure("T collar", "N.m", 10.24, forceN * screw.collarPerForceM(), 1e-3)
        .figure("T thread", "N.m", 15.94, forceN * thread, 5e-3)
        .figure("T_L", "N.m", 9.774, forceN * screw.looseningTorquePerForceM(), 1e-3)
        .figure("e", "", 0.3113, screw.efficiency(), 1e-4);
  }

  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0} kN needs {1} N.m (derived from the screw formula)")
  @CsvSource({"1,3.4503", "10,34.50", "20,69.01", "30,103.51", "40,138.01"})
  void aTrapezoidalScrew20By4NeedsThisTorque(double kilonewtons, double torqueNm) {
    ScrewThread screw = new ScrewThread(0.018, 0.004, HALF_ANGLE, 0.12, 0.028, 0.12);
    double torque = kilonewtons * 1e3 * screw.tighteningTorquePerForceM();
    SCREW
        .row("Tr 20x4, f 0.12, " + kilonewtons + " kN")
        .figure("T", "N.m", torqueNm, torque, 6e-3)
        .figure("e", "", 0.1845, screw.efficiency(), 1e-4);
  }

  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "friction {0} gives {1} kN at 80 N.m (derived from the screw formula)")
  @CsvSource({"0.08,31.87", "0.12,23.19", "0.15,19.25"})
  void eightyNewtonMetresGiveLessForceTheDrierTheScrew(double friction, double kilonewtons) {
    Band force = ScrewThread.forceN(tr20x4(friction), Band.exactly(80));
    SCREW
        .row("Tr 20x4 at 80 N.m, f " + friction)
        .figure("F", "kN", kilonewtons, force.likely() / 1e3, 6e-3);
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

  /**
   * Worked by hand (Shigley ch. 8): f' = 0.12/cos 15 deg = 0.12423; (pi f' 18 - 4)/(pi 18 + 4 f') =
   * 0.053033, times 9 mm, and 0.12 14 mm for the collar.
   */
  @Test
  void lettingGoTakesTheThreadLessItsLeadAndTheWholeCollar() {
    ScrewThread screw = new ScrewThread(0.018, 0.004, Math.toRadians(15), 0.12, 0.028, 0.12);
    assertThat(screw.looseningTorquePerForceM()).isCloseTo(2.15730e-3, within(1e-7));
  }

  @Test
  void aLeadOfMoreThanTwoDiametersIsNoScrewOfAVise() {
    assertThatThrownBy(() -> new ScrewThread(0.018, 0.04, 0, 0.1, 0.02, 0.1))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("thread lead");
  }
}

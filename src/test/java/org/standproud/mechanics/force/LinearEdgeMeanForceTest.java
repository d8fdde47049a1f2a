package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.ResultKind;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;

/**
 * Coefficients: Chin. J. Mech. Eng. 2021, table 5 [found]. Mean forces: Altintas 2012 ch. 2
 * (formula from memory); the numbers are derived from it. All are forces on the tool there; on the
 * work x and y change sign. Its axial force on the tool is the pull out of the holder, so on the
 * work the same number lifts.
 */
class LinearEdgeMeanForceTest {

  private static final PublishedTable MEANS =
      new PublishedTable(
          Subject.FORCE,
          "mean forces of Altintas 2012 ch. 2 (from memory) with coefficients of Chin. J. Mech. Eng. 2021, table 5 (read), on the tool",
          SourceTag.DERIVED);

  private static PassForces forces(PassFixture pass, PublishedCoefficients set) {
    ForceModel model = new ForceModel.LinearEdge(set.coefficients(), Band.exactly(1));
    return PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()).with(model))
        .orElseThrow();
  }

  private static PassFixture named(String arc, double fz) {
    return switch (arc) {
      case "slot" -> PassFixture.pass(20, 4, 40, 0, fz);
      case "half up" -> PassFixture.conventional(20, 4, 10, fz);
      case "half down" -> PassFixture.climb(20, 4, 10, fz);
      case "quarter down" -> PassFixture.climb(20, 4, 5, fz);
      default -> throw new IllegalArgumentException(arc);
    };
  }

  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}, {1}: mean {2}, {3}, {4} N on the tool [derived]")
  @CsvSource({
    "AL_7075_T6_CARBIDE_190, slot,          -84.616, 147.238, 31.066",
    "AL_7075_T6_CARBIDE_190, half up,      -101.992,  34.378, 15.533",
    "AL_7075_T6_CARBIDE_190, half down,      17.375, 112.860, 15.533",
    "AL_7075_T6_CARBIDE_190, quarter down,   28.620,  65.990,  8.000",
    "AL_7075_HSS_156,        slot,          -55.071, 123.441, 45.588",
    "AL_7075_HSS_156,        half up,       -71.970,  38.956, 22.794",
    "AL_7075_HSS_156,        half down,      16.900,  84.484, 22.794",
    "AL_7075_HSS_156,        quarter down,   22.632,  44.420, 11.765",
    "AL_6082_T6_CARBIDE_189, slot,          -35.365,  96.204, 45.959",
    "AL_6082_T6_CARBIDE_189, half up,       -54.320,  32.218, 22.980",
    "AL_6082_T6_CARBIDE_189, half down,      18.955,  63.986, 22.980",
    "AL_6082_T6_CARBIDE_189, quarter down,   21.097,  34.002, 12.423",
    "AL_6061_T6_CARBIDE_160, slot,          -31.289,  43.552,  0",
    "AL_6061_T6_CARBIDE_160, half up,       -32.991,   8.194,  0",
    "AL_6061_T6_CARBIDE_160, half down,       1.702,  35.358,  0",
    "AL_6061_T6_CARBIDE_160, quarter down,    6.919,  20.903,  0"
  })
  void theMeanForceIsThatOfTheClosedForm(
      PublishedCoefficients set, String arc, double x, double y, double z) {
    for (double helix : new double[] {0, 30}) {
      RevolutionForces steady = forces(named(arc, 0.05).shaped(90, 2, helix, 0), set).steady();
      MEANS
          .row(set + ", " + arc + ", N 4, a 2 mm, c 0.05 mm")
          .figure("mean F_x, helix " + helix + " deg", "N", x, -steady.x().meanN().likely(), 6e-4)
          .figure("mean F_y, helix " + helix + " deg", "N", y, -steady.y().meanN().likely(), 6e-4)
          .figure("mean F_z, helix " + helix + " deg", "N", z, steady.z().meanN().likely(), 6e-4);
    }
  }

  @ParameterizedTest(name = "{0}, helix {1} deg: formula of Altintas 2012 ch. 2 to 1e-6 [memory]")
  @CsvSource({"slot,0", "slot,45", "half up,30", "half down,30", "quarter down,0", "half up,60"})
  void theMeanForceAgreesWithTheFormulaWhateverTheHelix(String arc, double helixDeg) {
    PublishedCoefficients set = PublishedCoefficients.AL_7075_CARBIDE_47;
    PassForces forces = forces(named(arc, 0.08).shaped(90, 7, helixDeg, 0), set);
    double[] onTool = closedForm(set.coefficients(), forces.steadyArc(), 4, 0.007, 0.08e-3);
    double size = Math.hypot(onTool[0], onTool[1]);
    assertThat(forces.steady().x().meanN().likely()).isCloseTo(-onTool[0], within(1e-6 * size));
    assertThat(forces.steady().y().meanN().likely()).isCloseTo(-onTool[1], within(1e-6 * size));
    assertThat(forces.steady().z().meanN().likely()).isCloseTo(onTool[2], within(1e-6 * size));
  }

  private static double[] closedForm(CuttingCoefficients k, Arc arc, int n, double a, double c) {
    double[] exit = antiderivative(k, arc.exitRad(), n, a, c);
    double[] entry = antiderivative(k, arc.entryRad(), n, a, c);
    return new double[] {exit[0] - entry[0], exit[1] - entry[1], exit[2] - entry[2]};
  }

  private static double[] antiderivative(
      CuttingCoefficients k, double p, int n, double a, double c) {
    double chip = n * a * c / (8 * Math.PI);
    double edge = n * a / (2 * Math.PI);
    double wide = 2 * p - Math.sin(2 * p);
    double cos2 = Math.cos(2 * p);
    return new double[] {
      chip * (k.tangentialChipPa() * cos2 - k.radialChipPa() * wide)
          + edge * (-k.tangentialEdgeNPerM() * Math.sin(p) + k.radialEdgeNPerM() * Math.cos(p)),
      chip * (k.tangentialChipPa() * wide + k.radialChipPa() * cos2)
          - edge * (k.tangentialEdgeNPerM() * Math.cos(p) + k.radialEdgeNPerM() * Math.sin(p)),
      edge * (-k.axialChipPa() * c * Math.cos(p) + k.axialEdgeNPerM() * p)
    };
  }

  private static final PublishedTable PRINTED =
      new PublishedTable(
          Subject.FORCE,
          "Milling Force Model for Aviation Aluminum Alloy, Chin. J. Mech. Eng. 2021, table 5"
              + " (10.1186/s10033-021-00536-9)",
          SourceTag.FOUND,
          ResultKind.STORED);

  /** The six coefficients of each set as printed [found]; two sets print no axial ones. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0} [found]")
  @CsvSource({
    "AL_6082_T6_CARBIDE_189, 631, 13, 99, 10, 273, 2.8",
    "AL_7075_T6_CARBIDE_190, 767.01, 27.7, 168.8, 26.6, 222, 0.7",
    "AL_6061_T6_CARBIDE_160, 243.77, 7.53, 113.5, 7.83,,",
    "AL_7075_T6_CARBIDE_160, 600.46, 17.9, 180.96, 20.42,,",
    "AL_7075_HSS_156, 951.365, 11.115, 262.597, 11.314, 323.33, 1.105",
    "AL_7075_CARBIDE_47, 1319.41, 19.65, 788.83, 26.77, 48.75, 2.05"
  })
  void theCoefficientsAreThoseInPrint(
      PublishedCoefficients set,
      double tc,
      double te,
      double rc,
      double re,
      @Nullable Double ac,
      @Nullable Double ae) {
    CuttingCoefficients k = set.coefficients();
    PublishedTable.Row row =
        PRINTED
            .row(set.toString())
            .figure("K_tc", "MPa", tc, k.tangentialChipPa() / 1e6, 1e-9)
            .figure("K_te", "N/mm", te, k.tangentialEdgeNPerM() / 1e3, 1e-9)
            .figure("K_rc", "MPa", rc, k.radialChipPa() / 1e6, 1e-9)
            .figure("K_re", "N/mm", re, k.radialEdgeNPerM() / 1e3, 1e-9);
    assertThat(set.axialKnown()).isEqualTo(ac != null);
    if (ac != null && ae != null) {
      row.figure("K_ac", "MPa", ac, k.axialChipPa() / 1e6, 1e-9)
          .figure("K_ae", "N/mm", ae, k.axialEdgeNPerM() / 1e3, 1e-9);
    }
  }

  /** Slot, set 156, a 2 mm, c 0.1 mm, 4 teeth [derived]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aSlotAtTwiceTheFeed() {
    RevolutionForces steady =
        forces(named("slot", 0.1), PublishedCoefficients.AL_7075_HSS_156).steady();
    MEANS
        .row("AL_7075_HSS_156, slot, N 4, a 2 mm, c 0.1 mm")
        .figure("mean F_x", "N", -81.330, -steady.x().meanN().likely(), 6e-4)
        .figure("mean F_y", "N", 218.577, -steady.y().meanN().likely(), 6e-4)
        .figure("mean F_z", "N", 86.755, steady.z().meanN().likely(), 6e-4)
        .figure("greatest F_xy", "N", 242.25, steady.greatestInPlaneN().likely(), 0.01);
  }

  /** Greatest in-plane forces [derived]: half down 241.01 N, set 190 half up 293.02 N at 90 deg. */
  @Tag(PublishedTable.TESTS)
  @Test
  void thePeakResultantsOfTwoHalfImmersions() {
    RevolutionForces down =
        forces(named("half down", 0.1), PublishedCoefficients.AL_7075_HSS_156).steady();
    MEANS
        .row("AL_7075_HSS_156, half down, N 4, a 2 mm, c 0.1 mm")
        .figure("greatest F_xy", "N", 241.01, down.greatestInPlaneN().likely(), 0.01);
    RevolutionForces up =
        forces(
                PassFixture.conventional(20, 2, 10, 0.08).shaped(90, 3, 0, 0),
                PublishedCoefficients.AL_7075_T6_CARBIDE_190)
            .steady();
    MEANS
        .row("AL_7075_T6_CARBIDE_190, half up, N 2, a 3 mm, c 0.08 mm")
        .figure("greatest F_xy", "N", 293.02, up.greatestInPlaneN().likely(), 0.01);
  }

  @Test
  void halfUpAndHalfDownMakeASlot() {
    PublishedCoefficients set = PublishedCoefficients.AL_7075_T6_CARBIDE_160;
    RevolutionForces slot = forces(named("slot", 0.05), set).steady();
    RevolutionForces up = forces(named("half up", 0.05), set).steady();
    RevolutionForces down = forces(named("half down", 0.05), set).steady();
    assertThat(up.x().meanN().likely() + down.x().meanN().likely())
        .isCloseTo(slot.x().meanN().likely(), within(1e-9));
    assertThat(up.y().meanN().likely() + down.y().meanN().likely())
        .isCloseTo(slot.y().meanN().likely(), within(1e-9));
  }

  /** Closed tables against Hipparchus integration of Kienzle's law, straight and helical. */
  @ParameterizedTest(name = "ae {0} mm, helix {1} deg: own integration against Hipparchus")
  @CsvSource({"2,0", "2,30", "10,45", "16,0"})
  void theKienzleMeanAgreesWithAnIndependentIntegration(double ae, double helix) {
    PassFixture pass = PassFixture.conventional(20, 4, ae, 0.1).shaped(90, 4, helix, 0);
    ForceModel plain =
        new ForceModel.Kienzle(
            Band.exactly(1500e6),
            Band.exactly(0.22),
            Band.exactly(1),
            Band.exactly(0.4),
            Band.exactly(0));
    PassForces forces =
        PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()).with(plain))
            .orElseThrow();
    UnivariateFunction along =
        p -> 1500 * 4 * Math.pow(0.1 * Math.sin(p), 0.78) * (Math.cos(p) + 0.4 * Math.sin(p));
    double mean =
        4
            / (2 * Math.PI)
            * new IterativeLegendreGaussIntegrator(40, 1e-9, 1e-9)
                .integrate(1_000_000, along, 0, forces.steadyArc().exitRad());
    assertThat(forces.steady().x().meanN().likely())
        .isCloseTo(mean, within(2e-4 * forces.steady().meanTangentialN().likely()));
    double sum = 0;
    int samples = 3600;
    for (ForceSample sample : forces.likelyRevolution(samples)) {
      sum += sample.force().xN() / samples;
    }
    assertThat(sum)
        .as("mean of the history in time")
        .isCloseTo(mean, within(5e-3 * forces.steady().meanTangentialN().likely()));
  }
}

package org.standproud.mechanics.tooltip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.mechanics.vibration.ModeSet;

/** Modes of the cutting end against closed forms and against receptances coupled exactly. */
class ToolOnSpindleTest {

  private static final PublishedTable EULER =
      new PublishedTable(
          Subject.CUTTER,
          "roots of cos x cosh x = -1, cantilever beam (Blevins, Formulas for Natural Frequency and Mode Shape, 1979)",
          SourceTag.MEMORY);

  private static final SpindleNose RIGID = new SpindleNose(1e10, 2, 1e9, 1e5, 0.03);

  @Test
  @Tag(PublishedTable.TESTS)
  void aSlenderBarRingsAsEulersCantilever() {
    double length = 0.4;
    double diameter = 0.008;
    ModeSet modes =
        new ToolOnSpindle(List.of(new RoundPart(length, diameter, 210e9, 7850, true)))
            .modes(1, RIGID, 3);
    double unit =
        Math.sqrt(210e9 * Math.pow(diameter, 2) / (16 * 7850)) / (2 * Math.PI * length * length);
    double[] roots = {1.87510, 4.69409, 7.85476};
    for (int i = 0; i < 3; i++) {
      EULER
          .row("mode " + (i + 1))
          .percent("root", "", roots[i], Math.sqrt(modes.frequencyHz(i) / unit), 0.3);
    }
    double k = 3 * 210e9 * Math.PI * Math.pow(diameter, 4) / 64 / Math.pow(length, 3);
    // Modal stiffness of the first mode: omega^2 m/4 = 12.362/12 of the static one.
    assertThat(modes.stiffnessNPerM(0))
        .isCloseTo(k * Math.pow(1.87510, 4) / 12, Percentage.withPercentage(0.5));
  }

  @Test
  void receptancesCoupledExactlyPeakWhereTheModesAre() {
    Random random = new Random(5);
    for (int i = 0; i < 100; i++) {
      List<RoundPart> parts = tool(random);
      SpindleNose nose = nose(random);
      ModeSet modes = new ToolOnSpindle(parts).modes(1, nose, 3);
      for (int mode = 0; mode < 2; mode++) {
        double f = modes.frequencyHz(mode);
        double below = tipReceptance(parts, nose, 0.97 * f);
        double above = tipReceptance(parts, nose, 1.03 * f);
        double peak =
            Math.max(
                Math.abs(tipReceptance(parts, nose, 0.9995 * f)),
                Math.abs(tipReceptance(parts, nose, 1.0005 * f)));
        assertThat(peak)
            .as("case %d mode %d at %.0f Hz", i, mode, f)
            .isGreaterThan(2 * Math.min(Math.abs(below), Math.abs(above)));
      }
      double still = tipReceptance(parts, nose, 1e-3);
      assertThat(new ToolOnSpindle(parts).giveMPerN(1, nose))
          .as("case %d", i)
          .isCloseTo(still, Percentage.withPercentage(0.2));
      double between = 0.6 * modes.frequencyHz(0);
      double[] answer = new double[2];
      for (int mode = 0; mode < 3; mode++) {
        double r = between / modes.frequencyHz(mode);
        answer[0] += 1 / (modes.stiffnessNPerM(mode) * (1 - r * r));
      }
      double rest = still - modes.staticMPerN();
      assertThat(answer[0] + rest)
          .as("case %d between", i)
          .isCloseTo(tipReceptance(parts, nose, between), Percentage.withPercentage(2));
    }
  }

  @Test
  void theModesGiveTogetherAsMuchAsStatics() {
    Random random = new Random(6);
    for (int i = 0; i < 100; i++) {
      ToolOnSpindle tool = new ToolOnSpindle(tool(random));
      SpindleNose nose = nose(random);
      double all = tool.modes(1, nose, 6).staticMPerN();
      assertThat(all / tool.giveMPerN(1, nose)).as("case %d", i).isBetween(0.95, 1.0001);
    }
  }

  @Test
  void aSofterSpindleOrEdgeRingsLower() {
    Random random = new Random(7);
    for (int i = 0; i < 100; i++) {
      ToolOnSpindle tool = new ToolOnSpindle(tool(random));
      SpindleNose nose = nose(random);
      SpindleNose softer =
          new SpindleNose(
              nose.stiffnessNPerM() / 2,
              nose.pivotM(),
              nose.taperNmPerRad() / 2,
              nose.ownHz() / 1.5,
              0.03);
      double first = tool.modes(1, nose, 1).frequencyHz(0);
      assertThat(tool.modes(1, softer, 1).frequencyHz(0)).isLessThan(first);
      assertThat(tool.modes(0.9, nose, 1).frequencyHz(0)).isLessThanOrEqualTo(first);
      assertThat(tool.giveMPerN(0.9, nose)).isGreaterThan(tool.giveMPerN(1, nose));
    }
  }

  @Test
  void dampingLiesBetweenThatOfTheBeamAndThatOfTheSpindle() {
    ToolOnSpindle slender =
        new ToolOnSpindle(List.of(new RoundPart(0.1, 0.005, 210e9, 7850, true)));
    assertThat(slender.modes(1, RIGID, 1).dampingRatio(0)).isBetween(0.003, 0.0035);
    ToolOnSpindle stubby = new ToolOnSpindle(List.of(new RoundPart(0.05, 0.05, 210e9, 7850, true)));
    assertThat(stubby.modes(1, new SpindleNose(2e7, 0.3, 1e6, 500, 0.04), 1).dampingRatio(0))
        .isBetween(0.038, 0.04);
  }

  private static List<RoundPart> tool(Random random) {
    double d = 0.006 + 0.02 * random.nextDouble();
    double edge = random.nextBoolean() ? 210e9 : 580e9;
    double rho = edge > 300e9 ? 14500 : 8000;
    return List.of(
        new RoundPart(d * (1 + 2 * random.nextDouble()), 0.8 * d, edge, rho, true),
        new RoundPart(d * (0.5 + random.nextDouble()), d, edge, rho, true),
        new RoundPart(
            0.04 + 0.06 * random.nextDouble(),
            0.03 + 0.03 * random.nextDouble(),
            205e9,
            7850,
            false));
  }

  private static SpindleNose nose(Random random) {
    return new SpindleNose(
        Math.pow(10, 7 + random.nextDouble()),
        0.15 + 0.4 * random.nextDouble(),
        Math.pow(10, 5.3 + random.nextDouble()),
        300 + 700 * random.nextDouble(),
        0.03);
  }

  /**
   * Receptance of the tip, m/N, undamped: the exact transfer matrix of Timoshenko's beam for each
   * part (state: deflection, turn, moment, shear force), on the receptance of the nose.
   */
  private static double tipReceptance(List<RoundPart> fromTip, SpindleNose nose, double hz) {
    double w2 = Math.pow(2 * Math.PI * hz, 2);
    DMatrixRMaj all = CommonOps_DDRM.identity(4);
    for (int i = fromTip.size() - 1; i >= 0; i--) {
      RoundPart part = fromTip.get(i);
      double area = Math.PI * part.diameterM() * part.diameterM() / 4;
      double second = Math.PI * Math.pow(part.diameterM(), 4) / 64;
      double shear = 6 * 1.3 / 8.8 * part.youngPa() / 2.6 * area;
      DMatrixRMaj a = new DMatrixRMaj(4, 4);
      a.set(0, 1, 1);
      a.set(0, 3, 1 / shear);
      a.set(1, 2, 1 / (part.youngPa() * second));
      a.set(2, 1, -part.densityKgPerM3() * second * w2);
      a.set(2, 3, -1);
      a.set(3, 0, -part.densityKgPerM3() * area * w2);
      DMatrixRMaj next = new DMatrixRMaj(4, 4);
      CommonOps_DDRM.mult(exponential(a, part.lengthM()), all, next);
      all = next;
    }
    double p = nose.pivotM();
    double j = nose.stiffnessNPerM() * p * p;
    double swing = 1 / (j - j / Math.pow(2 * Math.PI * nose.ownHz(), 2) * w2);
    // Columns: unit shear force and unit moment at the nose.
    double[][] start = {
      {p * p * swing, p * swing, 0, 1},
      {p * swing, swing + 1 / nose.taperNmPerRad(), 1, 0}
    };
    double[][] end = new double[2][4];
    for (int c = 0; c < 2; c++) {
      for (int r = 0; r < 4; r++) {
        for (int k = 0; k < 4; k++) {
          end[c][r] += all.get(r, k) * start[c][k];
        }
      }
    }
    // No moment and a unit force at the tip.
    double det = end[0][2] * end[1][3] - end[1][2] * end[0][3];
    double q = -end[1][2] / det;
    double m = end[0][2] / det;
    return q * end[0][0] + m * end[1][0];
  }

  private static DMatrixRMaj exponential(DMatrixRMaj a, double length) {
    int halvings = 12;
    DMatrixRMaj term = CommonOps_DDRM.identity(4);
    DMatrixRMaj sum = CommonOps_DDRM.identity(4);
    DMatrixRMaj step = a.copy();
    CommonOps_DDRM.scale(length / (1 << halvings), step);
    for (int k = 1; k < 14; k++) {
      DMatrixRMaj next = new DMatrixRMaj(4, 4);
      CommonOps_DDRM.mult(1.0 / k, term, step, next);
      term = next;
      CommonOps_DDRM.addEquals(sum, term);
    }
    for (int i = 0; i < halvings; i++) {
      DMatrixRMaj next = new DMatrixRMaj(4, 4);
      CommonOps_DDRM.mult(sum, sum, next);
      sum = next;
    }
    return sum;
  }
}

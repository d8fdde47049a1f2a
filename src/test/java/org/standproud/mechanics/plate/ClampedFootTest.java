package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.contact.ElasticRoot;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

/** The foot in the grip against closed forms, rigid statics and finite elements. */
class ClampedFootTest {

  private static final PublishedTable HETENYI =
      new PublishedTable(
          Subject.PLATE,
          "Hetenyi, Beams on Elastic Foundation, 1946: end of a half-endless beam under force and moment",
          SourceTag.MEMORY);

  private static final double STIFF = 1e12;
  private static final double GRIP = 0.02;

  private static GrippedFoot faces(double bending, double shear, double fixed, double movable) {
    return new GrippedFoot(
        bending, shear, 0.01, GRIP, fixed, movable, Double.NaN, 0, 0, 0.15, 2e5, 0);
  }

  private static GrippedFoot rigid(double fixed, double movable) {
    return faces(1e9, 1e15, fixed, movable);
  }

  private static RootStiffness root(GrippedFoot foot) {
    return foot.clamped().orElseThrow().smallSignal().orElseThrow();
  }

  @Test
  void aRigidFootTurnsAboutTheMiddleOfTheGrip() {
    RootStiffness root = root(rigid(1e12, 2e12));
    assertThat(root.shiftPa()).isCloseTo(3e12 * GRIP, Percentage.withPercentage(0.01));
    assertThat(1 / root.turnCompliance())
        .isCloseTo(3e12 * Math.pow(GRIP, 3) / 12, Percentage.withPercentage(0.01));
    assertThat(root.turningDepthM()).isCloseTo(GRIP / 2, within(1e-6));
  }

  @Test
  @Tag(PublishedTable.TESTS)
  void aDeepThinFootIsAHalfEndlessBeam() {
    double bending = 200e9 * Math.pow(0.002, 3) / (12 * 0.91);
    double k = 2e12;
    double beta = Math.pow(k / (4 * bending), 0.25);
    GrippedFoot foot =
        new GrippedFoot(
            bending, 1e15, 0.002, 5 / beta, k / 2, k / 2, Double.NaN, 0, 0, 0.15, 2e5, 0);
    RootStiffness root = root(foot);
    HETENYI
        .row("plate 2 mm, layers 2 N/um per mm2, grip 5/beta")
        .percent(
            "shift per force", "um per N/mm", 2 * beta / k * 1e9, root.shiftCompliance() * 1e9, 2)
        .percent(
            "turn per force",
            "1e-9/N m",
            2 * beta * beta / k * 1e9,
            root.crossCompliance() * 1e9,
            2)
        .percent(
            "turn per moment",
            "1e-9/N",
            4 * Math.pow(beta, 3) / k * 1e9,
            root.turnCompliance() * 1e9,
            2);
  }

  @Test
  void finiteElementsOfACubicAgreeForAnyFoot() {
    Random random = new Random(1);
    for (int i = 0; i < 200; i++) {
      double thickness = 0.002 + 0.02 * random.nextDouble();
      double grip = 0.008 + 0.04 * random.nextDouble();
      double layers = Math.pow(10, 11 + 2 * random.nextDouble());
      double stickOut = 0.03 + 0.1 * random.nextDouble();
      double bending = 200e9 * Math.pow(thickness, 3) / (12 * 0.91);
      GrippedFoot foot =
          new GrippedFoot(
              bending, 1e17, thickness, grip, layers / 2, layers / 2, Double.NaN, 0, 0, 0, 2e5, 0);
      RootStiffness root = root(foot);
      double give =
          Math.pow(stickOut, 3) / (3 * bending)
              + root.shiftCompliance()
              + 2 * stickOut * root.crossCompliance()
              + stickOut * stickOut * root.turnCompliance();
      double expected = new BeamOnLayers(bending, 78, grip, stickOut, layers, 24).tipGive();
      assertThat(give).as("case %d", i).isCloseTo(expected, Percentage.withPercentage(1.5));
    }
  }

  @Test
  void aFootThatLiftsTurnsAsARigidOneOnTheSameLayers() {
    double stickOut = 0.06;
    double length = 0.15;
    for (double share : new double[] {0.05, 0.3, 0.6, 0.8, -0.3, -0.6, -0.8}) {
      double clamp = 2e5 * length;
      double limit = share > 0 ? clamp * GRIP / stickOut : clamp * GRIP / (stickOut + GRIP);
      double force = share * limit;
      ElasticRoot other = new ElasticRoot(STIFF, STIFF, 0, length, GRIP, clamp, 0);
      double turn = other.under(force, stickOut).orElseThrow().turnRad();
      ClampedFoot foot = rigid(STIFF, STIFF).clamped().orElseThrow();
      double softening = foot.softening(force / length, force * stickOut / length);
      RootStiffness held = foot.held().orElseThrow();
      double energy =
          (held.shiftCompliance()
                  + 2 * stickOut * held.crossCompliance()
                  + stickOut * stickOut * held.turnCompliance())
              * force
              / length
              * softening;
      // The rigid foot of the other model turns about the jaw top only; its shift at the load is
      // that of the fixed layer under the resultant, found here from its turn.
      assertThat(turn * stickOut).as("share %s", share).isLessThan(Math.abs(energy) + 1e-12);
      assertThat(softening).isGreaterThanOrEqualTo(1);
    }
  }

  @Test
  void softeningGrowsWithTheLoadAndTheFootTipsWhereStaticsSays() {
    ClampedFoot foot = rigid(1e13, 1e13).clamped().orElseThrow();
    double height = 0.06;
    double toward = 2e5 * GRIP / height;
    double away = 2e5 * GRIP / (height + GRIP);
    double last = 1;
    for (double share = 0.1; share < 0.95; share += 0.1) {
      double now = foot.softening(share * toward, share * toward * height);
      assertThat(now).isGreaterThanOrEqualTo(last - 1e-9);
      last = now;
    }
    assertThat(last).isGreaterThan(2);
    assertThat(foot.softening(1.05 * toward, 1.05 * toward * height)).isNaN();
    assertThat(foot.softening(-0.9 * away, -0.9 * away * height)).isFinite();
    assertThat(foot.softening(-1.05 * away, -1.05 * away * height)).isNaN();
  }

  @Test
  void aPackingLineLeavesTheFixedFaceAloneToHoldTheTurn() {
    double depth = 0.012;
    GrippedFoot foot =
        new GrippedFoot(1e9, 1e15, 0.01, GRIP, STIFF, STIFF, depth, 1e11, 0, 0, 2e5, 0);
    ClampedFoot clamped = foot.clamped().orElseThrow();
    RootStiffness held = clamped.held().orElseThrow();
    assertThat(held.shiftPa()).isCloseTo(STIFF * GRIP, Percentage.withPercentage(0.1));
    assertThat(1 / held.turnCompliance())
        .isCloseTo(STIFF * Math.pow(GRIP, 3) / 12, Percentage.withPercentage(0.1));
    assertThat(clamped.smallSignal().orElseThrow().shiftPa())
        .isCloseTo(STIFF * GRIP + 1e11, Percentage.withPercentage(0.1));
    double height = 0.05;
    double toward = 2e5 * depth / height;
    double away = 2e5 * (GRIP - depth) / (height + GRIP);
    assertThat(clamped.softening(0.8 * toward, 0.8 * toward * height)).isFinite();
    assertThat(clamped.softening(1.1 * toward, 1.1 * toward * height)).isNaN();
    assertThat(clamped.softening(-0.8 * away, -0.8 * away * height)).isFinite();
    assertThat(clamped.softening(-1.1 * away, -1.1 * away * height)).isNaN();
  }

  @Test
  void aHighPackingLineLeavesTheBottomOfTheFixedFaceLoose() {
    double depth = 0.005;
    GrippedFoot foot = new GrippedFoot(1e9, 1e15, 0.01, GRIP, STIFF, STIFF, depth, 0, 0, 0, 2e5, 0);
    // A triangle of pressure stands with its resultant a third from its heavy edge.
    assertThat(foot.clamped().orElseThrow().fixedContactM()).isCloseTo(3 * depth, within(0.0015));
  }

  @Test
  void facesThatStickAddACoupleUntilTheySlip() {
    GrippedFoot without = rigid(STIFF, STIFF);
    double ratio = 0.2;
    GrippedFoot with =
        new GrippedFoot(1e9, 1e15, 0.01, GRIP, STIFF, STIFF, Double.NaN, 0, ratio, 0.15, 2e5, 0);
    double extra = 2 * ratio * STIFF * GRIP * 0.005 * 0.005;
    assertThat(1 / root(with).turnCompliance() - 1 / root(without).turnCompliance())
        .isCloseTo(extra, Percentage.withPercentage(0.1));
    double height = 0.06;
    double force = 0.6 * 2e5 * GRIP / height;
    double stuck = give(with, force, height);
    double free = give(without, force, height);
    assertThat(stuck).isLessThan(free);
    // Friction cannot carry more than its own couple, mu n h.
    double least = give(without, force - 0.15 * 2e5 * 0.01 / height, height);
    assertThat(stuck).isGreaterThan(0.98 * least);
  }

  private static double give(GrippedFoot foot, double force, double height) {
    ClampedFoot clamped = foot.clamped().orElseThrow();
    RootStiffness held = clamped.held().orElseThrow();
    return clamped.softening(force, force * height)
        * force
        * (held.shiftCompliance()
            + 2 * height * held.crossCompliance()
            + height * height * held.turnCompliance());
  }

  @Test
  void aJawThatLeansBackHoldsTheTurnLess() {
    GrippedFoot upright = rigid(STIFF, STIFF);
    GrippedFoot leaning =
        new GrippedFoot(1e9, 1e15, 0.01, GRIP, STIFF, STIFF, Double.NaN, 0, 0, 0, 2e5, 6e-3);
    assertThat(root(leaning).turnN()).isLessThan(root(upright).turnN());
  }
}

package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.mechanics.vibration.Mode;

/** The plate on its foot: limits of stiff and soft layers, the uncondensed plate, elements. */
class PlateOnFootTest {

  private static final PublishedTable BARTON =
      new PublishedTable(
          Subject.PLATE,
          "Barton, J. Appl. Mech. 18 (1951), as printed in a benchmark manual; plate on a foot in stiff layers",
          SourceTag.FOUND);

  private static final double YOUNG = 200e9;
  private static final double NU = 0.3;
  private static final double RHO = 7850;

  private static RootStiffness root(GrippedFoot foot) {
    return foot.clamped().orElseThrow().smallSignal().orElseThrow();
  }

  private static GrippedFoot foot(double thickness, double grip, double fixed, double movable) {
    return GrippedFoot.betweenFaces(YOUNG, NU, thickness, grip, fixed, movable, 0, 0.15, 2e5, 0);
  }

  @Test
  @Tag(PublishedTable.TESTS)
  void stiffLayersMakeACantileverPlate() {
    double side = 0.1;
    double thickness = 0.001;
    // Faces that stick: else the foot would shear between them.
    RootStiffness root =
        root(GrippedFoot.betweenFaces(YOUNG, NU, thickness, 0.02, 1e17, 1e17, 1, 0.15, 2e5, 0));
    PlateOnFoot plate =
        new PlateOnFoot(side, side, thickness, side, NU, YOUNG, root, RitzOrder.FINE);
    List<Mode> modes = plate.modes(plate.place(new PlatePoint(side / 2, side)), YOUNG, RHO, root);
    double unit =
        Math.sqrt(YOUNG * thickness * thickness / (12 * (1 - NU * NU) * RHO))
            / (2 * Math.PI * side * side);
    double[] printed = {3.492, 8.525, 21.43, 27.33, 31.11};
    for (int i = 0; i < printed.length; i++) {
      BARTON
          .row("a/b 1, mode " + (i + 1))
          .percent("lambda", "", printed[i], modes.get(i).frequencyHz() / unit, 1.5);
    }
  }

  @Test
  void softLayersCarryARigidBodyOnSprings() {
    double stickOut = 0.05;
    double thickness = 0.03;
    double length = 0.08;
    double grip = 0.02;
    double k = 2e9;
    RootStiffness root = root(foot(thickness, grip, k, k));
    PlateOnFoot plate =
        new PlateOnFoot(stickOut, length, thickness, length, NU, YOUNG, root, RitzOrder.EVIDENCE);
    Mode first = plate.modes(plate.place(new PlatePoint(0, stickOut)), YOUNG, RHO, root).get(0);
    // Two degrees of freedom at the middle of the grip: shift u and turn q, mass above the jaws.
    double m = RHO * thickness * stickOut;
    double arm = grip / 2 + stickOut / 2;
    double inertia = m * (stickOut * stickOut / 12 + arm * arm);
    double shift = 2 * k * grip;
    double turn = 2 * k * Math.pow(grip, 3) / 12;
    double a = m * inertia - m * m * arm * arm;
    double b = -(shift * inertia + turn * m);
    double c = shift * turn;
    double expected = Math.sqrt((-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a)) / (2 * Math.PI);
    assertThat(first.frequencyHz()).isCloseTo(expected, Percentage.withPercentage(0.3));
  }

  @Test
  void withoutCouplingItIsTheUncondensedPlate() {
    Random random = new Random(41);
    for (int i = 0; i < 40; i++) {
      double stickOut = 0.04 + 0.08 * random.nextDouble();
      double length = stickOut * (0.6 + 3 * random.nextDouble());
      double thickness = stickOut * (0.03 + 0.05 * random.nextDouble());
      double held = random.nextBoolean() ? length : length * (0.4 + 0.5 * random.nextDouble());
      double d = YOUNG * Math.pow(thickness, 3) / (12 * (1 - NU * NU));
      RootStiffness root =
          new RootStiffness(
              d / Math.pow(stickOut, 3) * Math.pow(10, 1 + 3 * random.nextDouble()),
              0,
              d / stickOut * Math.pow(10, 3 * random.nextDouble()));
      CantileverPlate other =
          new CantileverPlate(
              new PlateGeometry(stickOut, length, thickness, YOUNG, NU, RHO),
              new PlateRoot.Elastic(root.shiftPa(), root.turnN(), held / length),
              RitzOrder.EVIDENCE);
      CondensedHalf even =
          new CondensedHalf(length / stickOut, NU, held / length, RitzOrder.EVIDENCE, 0);
      CondensedHalf odd =
          new CondensedHalf(length / stickOut, NU, held / length, RitzOrder.EVIDENCE, 1);
      double s = root.shiftPa() * Math.pow(stickOut, 3) / d;
      double t = root.turnN() * stickOut / d;
      double unit = 2 * Math.pow(stickOut, 3) / (d * length);
      double give =
          unit * (even.on(s, 0, t).give(even.see(0.7, 1)) + odd.on(s, 0, t).give(odd.see(0.7, 1)));
      PlatePoint point = new PlatePoint(0.35 * length, stickOut);
      assertThat(give)
          .as("case %d", i)
          .isCloseTo(other.flexibilityMPerN(point, point), Percentage.withPercentage(1e-4));
      double first = Math.sqrt(even.on(s, 0, t).modes(even.start(5), 3).values()[0]);
      double hz = first * Math.sqrt(d / (RHO * thickness)) / (2 * Math.PI * stickOut * stickOut);
      double expected =
          other.modes(4).stream()
              .filter(PlateMode::isEven)
              .mapToDouble(PlateMode::frequencyHz)
              .min()
              .orElseThrow();
      assertThat(hz).as("case %d", i).isCloseTo(expected, Percentage.withPercentage(0.02));
    }
  }

  @Test
  void finiteElementsOfPlateAndFootTogetherAgree() {
    Random random = new Random(42);
    for (int i = 0; i < 6; i++) {
      double grip = 0.02;
      double stickOut = 0.06;
      double length = 0.06 + 0.08 * random.nextDouble();
      double thickness = 0.003 + 0.004 * random.nextDouble();
      double layers = Math.pow(10, 11.5 + 1.2 * random.nextDouble());
      PlateGeometry whole = new PlateGeometry(grip + stickOut, length, thickness, YOUNG, NU, RHO);
      FiniteElementPlate other =
          new FiniteElementPlate(whole, new PlateRoot.Elastic(1e-2, 1e-2, 1), 12, 24, 6, layers);
      RootStiffness root =
          root(
              new GrippedFoot(
                  YOUNG * Math.pow(thickness, 3) / (12 * (1 - NU * NU)),
                  1e17,
                  thickness,
                  grip,
                  layers / 2,
                  layers / 2,
                  Double.NaN,
                  0,
                  0,
                  0,
                  2e5,
                  0));
      PlateOnFoot plate =
          new PlateOnFoot(stickOut, length, thickness, length, NU, YOUNG, root, RitzOrder.EVIDENCE);
      double middle = plate.flexibilityMPerN(plate.place(new PlatePoint(0, stickOut)), YOUNG, root);
      double end =
          plate.flexibilityMPerN(plate.place(new PlatePoint(length / 2, stickOut)), YOUNG, root);
      // The foot in the grip also resists bending along the jaws, which the root leaves out.
      assertThat(middle / other.topEdgeFlexibilityMPerN(6))
          .as("middle %d", i)
          .isBetween(0.97, 1.08);
      assertThat(end / other.topEdgeFlexibilityMPerN(0)).as("end %d", i).isBetween(0.97, 1.12);
    }
  }

  @Test
  void aStripRingsAsFiniteElementsOfABeamSay() {
    Random random = new Random(43);
    for (int i = 0; i < 30; i++) {
      double grip = 0.01 + 0.03 * random.nextDouble();
      double stickOut = 0.04 + 0.06 * random.nextDouble();
      double thickness = 0.002 + 0.004 * random.nextDouble();
      double layers = Math.pow(10, 11.5 + 1.2 * random.nextDouble());
      double bending = YOUNG * Math.pow(thickness, 3) / 12;
      GrippedFoot foot =
          new GrippedFoot(
              bending, 1e17, thickness, grip, layers / 2, layers / 2, Double.NaN, 0, 0, 0, 2e5, 0);
      RootStiffness root = root(foot);
      PlateOnFoot strip =
          new PlateOnFoot(
              stickOut,
              0.2 * stickOut,
              thickness,
              0.2 * stickOut,
              0,
              YOUNG,
              root,
              RitzOrder.EVIDENCE);
      BeamOnLayers other = new BeamOnLayers(bending, RHO * thickness, grip, stickOut, layers, 20);
      double hz =
          strip
              .modes(strip.place(new PlatePoint(0, stickOut)), YOUNG, RHO, root)
              .get(0)
              .frequencyHz();
      // Shear, which the elements leave out, lowers the note by less than a hundredth here.
      assertThat(hz / other.firstFrequencyHz()).as("case %d", i).isBetween(0.985, 1.005);
    }
  }

  @Test
  void theFootMakesThinSteelPlatesSofterThanATurnAboutTheJawTop() {
    double stickOut = 0.06;
    double length = 0.12;
    double grip = 0.02;
    for (double thickness : new double[] {0.004, 0.006, 0.008, 0.01}) {
      RootStiffness root = root(foot(thickness, grip, 1e12, 1e12));
      PlateOnFoot plate =
          new PlateOnFoot(stickOut, length, thickness, length, NU, YOUNG, root, RitzOrder.EVIDENCE);
      PlateOnFoot.Place corner = plate.place(new PlatePoint(length / 2, stickOut));
      // Rigid foot, turning about the jaw top: no coupling, k g^3/12.
      RootStiffness before = new RootStiffness(2e12 * grip, 0, 2e12 * Math.pow(grip, 3) / 12);
      double ratio =
          plate.flexibilityMPerN(corner, YOUNG, root)
              / plate.flexibilityMPerN(corner, YOUNG, before);
      double note =
          plate.modes(corner, YOUNG, RHO, root).get(0).frequencyHz()
              / plate.modes(corner, YOUNG, RHO, before).get(0).frequencyHz();
      assertThat(ratio).isBetween(1.05, 2.0);
      assertThat(note).isBetween(0.7, 0.98);
    }
  }

  @Test
  void aLoadThatLiftsNothingGivesWhatTheHeldRootGivesAndATippingOneNothing() {
    double stickOut = 0.06;
    double length = 0.12;
    ClampedFoot foot = foot(0.008, 0.02, 1e12, 1e12).clamped().orElseThrow();
    RootStiffness held = foot.held().orElseThrow();
    PlateOnFoot plate =
        new PlateOnFoot(stickOut, length, 0.008, length, NU, YOUNG, held, RitzOrder.EVIDENCE);
    PlateOnFoot.Place corner = plate.place(new PlatePoint(length / 2, stickOut));
    double light = plate.secantMPerN(corner, YOUNG, foot, 0, 0, 10);
    assertThat(light)
        .isCloseTo(plate.flexibilityMPerN(corner, YOUNG, held), Percentage.withPercentage(0.1));
    double tipping = 2e5 * length * 0.02 / stickOut;
    double last = light;
    for (double share : new double[] {0.2, 0.4, 0.6}) {
      double now = plate.secantMPerN(corner, YOUNG, foot, 0, 0, share * tipping);
      assertThat(now).isGreaterThanOrEqualTo(0.97 * last);
      last = now;
    }
    assertThat(last).isGreaterThan(1.02 * light);
    assertThat(plate.secantMPerN(corner, YOUNG, foot, 0, 0, 1.1 * tipping)).isNaN();
    assertThat(plate.secantMPerN(corner, YOUNG, foot, 1e-11, 0, 10)).isGreaterThan(light);
  }
}

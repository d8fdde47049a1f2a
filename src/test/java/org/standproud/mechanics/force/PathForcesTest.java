package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.setup.Band;

/** What is made of forces place by place; every number is worked by hand. */
class PathForcesTest {

  private static final Band NONE = Band.exactly(0);

  private static PathStation station(double travelM, PassStretch stretch, double n) {
    AxisForce x = new AxisForce(Band.exactly(2 * n), Band.exactly(n), Band.exactly(-3 * n));
    AxisForce none = new AxisForce(NONE, NONE, NONE);
    return new PathStation(
        travelM,
        travelM,
        stretch,
        List.of(),
        new RevolutionForces(x, none, none, Band.exactly(4 * n), NONE, NONE));
  }

  private static final PathForces PATH =
      PathForces.over(
          List.of(
              station(-1, PassStretch.LEAD_IN, 0),
              station(0, PassStretch.LEAD_IN, 10),
              station(1, PassStretch.STEADY, 30),
              station(4, PassStretch.STEADY, 30),
              station(6, PassStretch.RUN_OUT, 0)));

  /** Trapezoids: 1 m at 5, 1 at 20, 3 at 30 and 2 at 15 N are 145 N m over 7 m. */
  @Test
  void theMeanIsByTravelAndNotByPlace() {
    assertThat(PATH.x().meanN().likely()).isCloseTo(145.0 / 7, within(1e-12));
    assertThat(PATH.x().greatestN()).isEqualTo(Band.exactly(60));
    assertThat(PATH.x().leastN()).isEqualTo(Band.exactly(-90));
    assertThat(PATH.greatestInPlaneN()).isEqualTo(Band.exactly(120));
  }

  @Test
  void oneGoodPlaceAloneIsItsOwnMean() {
    PathForces one = PathForces.over(List.of(station(2, PassStretch.STEADY, 7)));
    assertThat(one.x().meanN()).isEqualTo(Band.exactly(7));
  }

  @Test
  void theCutIsFullAtTheFirstSteadyPlace() {
    assertThat(PATH.filling()).extracting(PathStation::travelM).containsExactly(-1.0, 0.0, 1.0);
    PathForces never =
        PathForces.over(
            List.of(
                station(0, PassStretch.LEAD_IN, 1),
                station(1, PassStretch.RUN_OUT, 2),
                station(2, PassStretch.RUN_OUT, 1)));
    assertThat(never.filling()).extracting(PathStation::travelM).containsExactly(0.0);
  }

  @Test
  void theGreatestSizeOfAForceIsThatOfItsGreaterSide() {
    AxisForce both = new AxisForce(new Band(10, 20, 30), NONE, new Band(-50, -40, -5));
    assertThat(both.greatestSizeN()).isEqualTo(new Band(10, 40, 50));
    AxisForce back = new AxisForce(new Band(-3, -2, -1), NONE, new Band(-50, -40, -30));
    assertThat(back.greatestSizeN()).isEqualTo(new Band(30, 40, 50));
    assertThat(new ForceVector(30, -40, 700).inPlaneN()).isCloseTo(50, within(1e-12));
  }

  private static List<Double> degrees(Iterable<Double> angles) {
    List<Double> all = new java.util.ArrayList<>();
    angles.forEach(angle -> all.add(Math.round(Math.toDegrees(angle) * 1e3) / 1e3));
    return all;
  }

  private static PassPlaces places(
      double entry, double exit, double pitch, double wrap, int steps) {
    return new PassPlaces(
        new Arc(Math.toRadians(entry), Math.toRadians(exit)),
        Math.toRadians(pitch),
        Math.toRadians(wrap),
        steps);
  }

  /** Teeth farther apart than the arc: equal steps of the end from 90 deg back to 0 deg. */
  @Test
  void withOneToothAtATimeTheEndGoesBackInEqualSteps() {
    PassPlaces places = places(0, 90, 120, 0, 3);
    assertThat(degrees(places.leadInRad())).containsExactly(0.0, 30.0, 60.0, 90.0);
    assertThat(degrees(places.runOutRad())).containsExactly(0.0, 30.0, 60.0, 90.0);
  }

  /**
   * An arc of 60 to 140 deg and teeth every 40 deg: between two teeth (180 - 40)/2 = 70 and (180 -
   * 80)/2 = 50; where one enters or leaves 180 - 60 - 40 = 80 and 140 - 80 = 60. In the run-out 70,
   * 50 and 180 - 140 + 40 = 80 are looked at on both sides of the jump.
   */
  @Test
  void placesStandWhereAToothComesInAsAnotherLeaves() {
    PassPlaces places = places(60, 140, 40, 0, 1);
    assertThat(degrees(places.leadInRad())).containsExactly(40.0, 50.0, 60.0, 70.0, 80.0, 90.0);
    assertThat(degrees(places.runOutRad())).containsExactly(40.0, 50.0, 60.0, 70.0, 80.0, 90.0);
  }

  /** A helix of 10 deg: teeth 40 deg apart are 30 apart at their nearest, (180 - 30)/2 = 75. */
  @Test
  void theWrapOfAHelixBringsTeethNearer() {
    PassPlaces places = places(60, 100, 40, 10, 1);
    assertThat(degrees(places.leadInRad())).contains(60.0, 70.0, 75.0, 80.0, 90.0);
    assertThat(degrees(places(60, 100, 40, 0, 1).leadInRad())).doesNotContain(75.0);
  }
}

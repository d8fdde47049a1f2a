package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.engagement.PassGeometry;
import org.standproud.mechanics.engagement.PassTravel;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;

/**
 * The cutting force on the work through a whole pass, with its bands.
 *
 * <p>Steady cutting is run at every corner of the bands, the ends of the pass at the lightest (low,
 * even teeth) and the heaviest (high, uneven teeth) only.
 *
 * <p>Places along the pass: lead-in and run-out are cut into equal steps of the angle at which the
 * end of the stock meets the circle of the cutter, since the ends of the arc move evenly with it.
 */
public final class PassForces {

  private static final int STEPS_AT_EACH_END = 7;

  private final PassGeometry geometry;
  private final Arc arc;
  private final PassTravel travel;
  private final RevolutionSweep likely;
  private final List<RevolutionSweep> corners;
  private final RevolutionForces steady;
  private final PathForces path;
  private final List<Assumption> assumptions;
  private final double radiusM;
  private final double speedMPerS;

  private PassForces(ForceInput input, PassGeometry geometry, Arc arc) {
    this.geometry = geometry;
    this.arc = arc;
    this.travel = PassTravel.of(geometry, arc);
    this.radiusM = geometry.radiusM();
    Cut cut = input.cut();
    this.speedMPerS =
        2
            * Math.PI
            * radiusM
            * OutsideValidity.within("spindle speed", cut.spindleSpeedRevPerS(), 0, 1500, "1/s");
    double wrapRad = wrapRad(input.cutter(), cut);
    ForceCases cases = ForceCases.of(input);
    this.assumptions = List.copyOf(cases.assumptions());
    this.likely = new RevolutionSweep(cases.likely(), geometry.frame(), arc, wrapRad);
    this.corners =
        cases.corners().stream()
            .map(c -> new RevolutionSweep(c, geometry.frame(), arc, wrapRad))
            .toList();
    this.steady = over(List.of(arc), corners);
    this.path = PathForces.over(stations());
  }

  /**
   * The forces of a pass.
   *
   * @param input the pass
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<PassForces> of(ForceInput input) {
    PassGeometry geometry = PassGeometry.of(input.stock(), input.cutter(), input.cut());
    return geometry.steadyArc().map(arc -> new PassForces(input, geometry, arc));
  }

  private static double wrapRad(Cutter cutter, Cut cut) {
    double helix =
        OutsideValidity.within(
            "helix angle", cutter.helixRad(), Math.toRadians(-60), Math.toRadians(60), "rad");
    return 2 * cut.axialDepthM() * Math.tan(Math.abs(helix)) / cutter.diameterM();
  }

  private RevolutionForces over(List<Arc> arcs, List<RevolutionSweep> sweeps) {
    List<ForceExtremes> others = new ArrayList<>();
    for (RevolutionSweep corner : sweeps) {
      others.addAll(List.of(corner.extremes(arcs)));
    }
    return RevolutionForces.spanning(likely.extremes(arcs)[0], others);
  }

  private List<PathStation> stations() {
    List<PathStation> stations = new ArrayList<>();
    List<RevolutionSweep> lightestAndHeaviest =
        List.of(corners.get(0), corners.get(corners.size() - 1));
    double nearest = Math.asin(arc.greatestSine());
    double farthest = Math.asin(arc.leastSine());
    double step = (nearest - farthest) / STEPS_AT_EACH_END;
    List<Double> places = new ArrayList<>();
    for (int k = 0; k <= STEPS_AT_EACH_END; k++) {
      double aheadM = radiusM * Math.sin(nearest - k * step);
      places.add(-aheadM);
      places.add(geometry.lengthM() - aheadM);
    }
    places.sort(null);
    for (double place : places) {
      List<Arc> arcs = geometry.arcsAt(place);
      RevolutionForces forces =
          arcs.equals(List.of(arc)) ? steady : over(arcs, lightestAndHeaviest);
      stations.add(
          new PathStation(place, geometry.viseX(place), travel.stretchAt(place), arcs, forces));
    }
    return stations;
  }

  /** The pass seen from above. */
  public PassGeometry geometry() {
    return geometry;
  }

  /** The arc in steady cutting, in the feed frame. */
  public Arc steadyArc() {
    return arc;
  }

  /** The edge of one tooth in cut. */
  public EdgeInCut edge() {
    return likely.pass().edge();
  }

  /** The stretches of the pass. */
  public PassTravel travel() {
    return travel;
  }

  /**
   * Over a revolution with the whole arc in the stock; for a stock too short for that ({@link
   * PassTravel#reachesSteady}) it is never quite reached.
   */
  public RevolutionForces steady() {
    return steady;
  }

  /** Over the pass. */
  public PathForces path() {
    return path;
  }

  /** What was taken for inputs that are not known. */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  /** Mean cutting power in steady cutting in W: mean tangential force times v_c. */
  public Band meanPowerW() {
    return steady.meanTangentialN().times(speedMPerS);
  }

  /** Mean torque on the spindle in steady cutting in N.m. */
  public Band meanTorqueNm() {
    return steady.meanTangentialN().times(radiusM);
  }

  /** Greatest torque on the spindle in steady cutting in N.m. */
  public Band greatestTorqueNm() {
    return steady.greatestTangentialN().times(radiusM);
  }

  /**
   * The force through one revolution of steady cutting, at the likely inputs.
   *
   * @param samples number of equal steps, 1 to 10 000
   */
  public List<ForceSample> likelyRevolution(int samples) {
    return revolution(likely, 0, samples);
  }

  /**
   * The force through one revolution of steady cutting, at the heaviest inputs: greatest feed,
   * specific force, wear, run-out and radial share.
   *
   * @param samples number of equal steps, 1 to 10 000
   */
  public List<ForceSample> heaviestRevolution(int samples) {
    RevolutionSweep heaviest = corners.get(corners.size() - 1);
    return revolution(heaviest, heaviest.pass().splits().size() - 1, samples);
  }

  private List<ForceSample> revolution(RevolutionSweep sweep, int split, int samples) {
    OutsideValidity.within("number of samples", samples, 1, 10_000, "");
    List<ForceSample> revolution = new ArrayList<>(samples);
    for (int k = 0; k < samples; k++) {
      double turn = 2 * Math.PI * k / samples;
      ForceVector force = sweep.at(turn, List.of(arc), sweep.pass().splits().get(split));
      revolution.add(new ForceSample(turn, force));
    }
    return revolution;
  }

  /**
   * The force of one tooth with its whole edge at one angle: what a single blow there gives. The
   * tooth is the one with the greatest bite.
   *
   * @param angleRad phi in the feed frame, on the steady arc
   * @throws OutsideValidity if the angle is not on the arc
   */
  public VectorBand oneToothAt(double angleRad) {
    OutsideValidity.within("tooth angle", angleRad, arc.entryRad(), arc.exitRad(), "rad");
    List<ForceVector> others = new ArrayList<>();
    for (RevolutionSweep corner : corners) {
      for (ForceSplit split : corner.pass().splits()) {
        others.add(corner.blow(angleRad, split));
      }
    }
    return VectorBand.spanning(likely.blow(angleRad, likely.pass().splits().get(0)), others);
  }
}

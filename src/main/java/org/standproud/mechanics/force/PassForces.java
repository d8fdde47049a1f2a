package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.engagement.PassGeometry;
import org.standproud.mechanics.engagement.PassTravel;
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

  private final SweepOrder order;
  private final PassGeometry geometry;
  private final Arc arc;
  private final PassTravel travel;
  private final RevolutionSweep likely;
  private final List<RevolutionSweep> corners;
  private final RevolutionForces steady;
  private final PathForces path;
  private final List<Assumption> assumptions;
  private final double radiusM;
  private final double pitchRad;
  private final double wrapRad;
  private final double speedMPerS;

  private PassForces(ForceInput input, PassGeometry geometry, Arc arc, SweepOrder order) {
    this.order = order;
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
    this.wrapRad = wrapRad(input.cutter(), cut);
    this.pitchRad = 2 * Math.PI / input.cutter().teeth();
    ForceCases cases = ForceCases.of(input);
    this.assumptions = List.copyOf(cases.assumptions());
    ArcNodes nodes = new ArcNodes(arc);
    this.likely = new RevolutionSweep(cases.likely(), geometry.frame(), nodes, wrapRad);
    this.corners =
        cases.corners().stream()
            .map(c -> new RevolutionSweep(c, geometry.frame(), nodes, wrapRad))
            .toList();
    this.steady = over(List.of(arc), corners, order.steadyStepRad());
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
    return of(input, SweepOrder.EVIDENCE);
  }

  /**
   * The same with places close enough to draw the force along the pass.
   *
   * @param input the pass
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<PassForces> toDraw(ForceInput input) {
    return of(input, SweepOrder.DRAWING);
  }

  static Optional<PassForces> of(ForceInput input, SweepOrder order) {
    PassGeometry geometry = PassGeometry.of(input.stock(), input.cutter(), input.cut());
    return geometry.steadyArc().map(arc -> new PassForces(input, geometry, arc, order));
  }

  static double wrapRad(Cutter cutter, Cut cut) {
    double helix =
        OutsideValidity.within(
            "helix angle", cutter.helixRad(), Math.toRadians(-60), Math.toRadians(60), "rad");
    return 2 * cut.axialDepthM() * Math.tan(Math.abs(helix)) / cutter.diameterM();
  }

  /** Travels in m at which the force is worked out, in order. */
  static List<Double> places(
      PassGeometry geometry, Arc arc, double pitchRad, double wrapRad, SweepOrder order) {
    PassPlaces ends = new PassPlaces(arc, pitchRad, wrapRad, order.stepsAtEachEnd());
    List<Double> places = new ArrayList<>();
    ends.leadInRad().forEach(n -> places.add(-geometry.radiusM() * Math.sin(n)));
    ends.runOutRad()
        .forEach(n -> places.add(geometry.lengthM() - geometry.radiusM() * Math.sin(n)));
    places.sort(null);
    return places;
  }

  private RevolutionForces over(List<Arc> arcs, List<RevolutionSweep> sweeps, double stepRad) {
    List<ForceExtremes> others = new ArrayList<>();
    for (RevolutionSweep corner : sweeps) {
      others.addAll(List.of(corner.extremes(arcs, stepRad)));
    }
    return RevolutionForces.spanning(likely.extremes(arcs, stepRad)[0], others);
  }

  private List<PathStation> stations() {
    List<PathStation> stations = new ArrayList<>();
    List<RevolutionSweep> lightestAndHeaviest =
        List.of(corners.get(0), corners.get(corners.size() - 1));
    List<Double> places = places(geometry, arc, pitchRad, wrapRad, order);
    for (double place : places) {
      List<Arc> arcs = geometry.arcsAt(place);
      RevolutionForces forces =
          arcs.equals(List.of(arc)) ? steady : over(arcs, lightestAndHeaviest, order.endStepRad());
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
    return likelyRevolution(List.of(arc), samples);
  }

  /**
   * The same with the cutter at one place of the pass.
   *
   * @param arcs what is in cut there
   * @param samples number of equal steps, 1 to 10 000
   */
  public List<ForceSample> likelyRevolution(List<Arc> arcs, int samples) {
    return revolution(likely, 0, arcs, samples);
  }

  /**
   * The force through one revolution of steady cutting, at the heaviest inputs: greatest feed,
   * specific force, wear, run-out and radial share.
   *
   * @param samples number of equal steps, 1 to 10 000
   */
  public List<ForceSample> heaviestRevolution(int samples) {
    return heaviestRevolution(List.of(arc), samples);
  }

  /**
   * The same with the cutter at one place of the pass.
   *
   * @param arcs what is in cut there
   * @param samples number of equal steps, 1 to 10 000
   */
  public List<ForceSample> heaviestRevolution(List<Arc> arcs, int samples) {
    RevolutionSweep heaviest = corners.get(corners.size() - 1);
    return revolution(heaviest, heaviest.pass().splits().size() - 1, arcs, samples);
  }

  private static List<ForceSample> revolution(
      RevolutionSweep sweep, int split, List<Arc> arcs, int samples) {
    OutsideValidity.within("number of samples", samples, 1, 10_000, "");
    List<ForceSample> revolution = new ArrayList<>(samples);
    ForceVector[] forces = sweep.revolution(arcs, split, samples);
    for (int k = 0; k < samples; k++) {
      revolution.add(new ForceSample(2 * Math.PI * k / samples, forces[k]));
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
      for (int split = 0; split < corner.pass().splits().size(); split++) {
        others.add(corner.blow(angleRad, split));
      }
    }
    return VectorBand.spanning(likely.blow(angleRad, 0), others);
  }
}

package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.engagement.PassGeometry;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.mechanics.engagement.PassTravel;
import org.standproud.setup.Band;

/**
 * The force of one pass, ready to be asked for single values of its inputs. Chips below the range
 * of Kienzle's law count as {@link ThinChip#FLOORED}, the most force. Chipped teeth do not cut.
 */
public final class DrawnForces {

  private static final double UNIT_PA = 1e9;

  /** Steps of a turn for the force that shakes the stock. */
  public static final int TURN_STEPS = 360;

  private final ForceInput input;
  private final PassGeometry plan;
  private final Arc arc;
  private final ArcNodes nodes;
  private final EdgeInCut edge;
  private final Set<Integer> absent;
  private final List<Assumption> assumptions;
  private final double wrapRad;
  private final List<Station> stations = new ArrayList<>();
  private final List<Station> distinct = new ArrayList<>();

  /**
   * One place of the pass, or all with the same arcs.
   *
   * @param arcs what is in cut
   * @param steady whether it is the whole arc
   * @param filling whether it comes before the cut is full, or is the first with the full cut
   * @param stretch the stretch of the pass
   * @param travelM travel of the cutter in m
   * @param share part of the way of the pass that it stands for
   */
  record Station(
      List<Arc> arcs,
      boolean steady,
      boolean filling,
      PassStretch stretch,
      double travelM,
      double share) {

    double stepRad() {
      return steady ? SweepOrder.EVIDENCE.steadyStepRad() : SweepOrder.EVIDENCE.endStepRad();
    }
  }

  /**
   * The least and the greatest value of each number in the draws that will be asked for.
   *
   * @param exponent mc
   * @param feedM f_z in m
   * @param runOutM run-out in m
   * @param normalRatio normal to tangential force
   * @param liftRatio along-edge to tangential force
   */
  public record Ranges(Band exponent, Band feedM, Band runOutM, Band normalRatio, Band liftRatio) {}

  /** The force at each of many draws within ranges, quicker than {@link #at} one by one. */
  public Function<ForceDraw, DrawnPass> over(Ranges ranges) {
    return new ShapedForces(this, ranges)::at;
  }

  private DrawnForces(ForceInput input, PassGeometry plan, Arc arc) {
    this.input = input;
    this.plan = plan;
    this.arc = arc;
    this.nodes = new ArcNodes(arc);
    this.edge =
        EdgeInCut.of(
            input.cut().axialDepthM(),
            input.cutter().enteringAngleRad(),
            input.cutter().cornerRadiusM());
    List<Assumption> assumed = new ArrayList<>(input.assumptions());
    ForceCases.runOut(input.cutter(), assumed);
    this.absent =
        ForceCases.withChipped(input.cutter(), Set.copyOf(input.cutter().missingTeeth()), assumed);
    this.assumptions = List.copyOf(assumed);
    this.wrapRad = PassForces.wrapRad(input.cutter(), input.cut());
    PassTravel travel = PassTravel.of(plan, arc);
    double pitchRad = 2 * Math.PI / input.cutter().teeth();
    List<Double> places = PassForces.places(plan, arc, pitchRad, wrapRad, SweepOrder.EVIDENCE);
    double way = places.get(places.size() - 1) - places.get(0);
    boolean filled = false;
    for (int k = 0; k < places.size(); k++) {
      double before = k == 0 ? places.get(0) : places.get(k - 1);
      double after = k + 1 == places.size() ? places.get(k) : places.get(k + 1);
      double place = places.get(k);
      List<Arc> arcs = plan.arcsAt(place);
      PassStretch stretch = travel.stretchAt(place);
      boolean filling = !filled && stretch != PassStretch.RUN_OUT;
      filled |= stretch != PassStretch.LEAD_IN;
      add(
          new Station(
              arcs,
              arcs.equals(List.of(arc)),
              filling,
              stretch,
              place,
              way > 0 ? (after - before) / 2 / way : 1));
    }
    if (distinct.stream().noneMatch(Station::steady)) {
      distinct.add(new Station(List.of(arc), true, false, PassStretch.STEADY, 0, 0));
    }
  }

  /** Keeps a place, and one of all places with the same arcs. */
  private void add(Station station) {
    stations.add(station);
    for (int k = 0; k < distinct.size(); k++) {
      Station known = distinct.get(k);
      if (known.arcs.equals(station.arcs)) {
        distinct.set(
            k,
            new Station(
                known.arcs,
                known.steady,
                known.filling || station.filling,
                known.stretch,
                known.travelM,
                known.share + station.share));
        return;
      }
    }
    distinct.add(station);
  }

  List<Station> distinctStations() {
    return distinct;
  }

  int teeth() {
    return input.cutter().teeth();
  }

  RevolutionSweep unitSweep(double exponent, double feedM, double runOutM) {
    return new RevolutionSweep(
        new ForceCase(
            unitLaw(exponent),
            List.of(new ForceSplit(1, 1)),
            ToothRing.of(input.cutter().teeth(), absent, runOutM),
            feedM,
            edge),
        plan.frame(),
        nodes,
        wrapRad);
  }

  private EdgeLaw unitLaw(double exponent) {
    return input.model() instanceof ForceModel.LinearEdge linear
        ? new LinearEdgeLaw(linear.coefficients(), 1)
        : new KienzleLaw(UNIT_PA, exponent, ThinChip.FLOORED);
  }

  double[] weights(ForceSplit split) {
    return RevolutionSweep.weights(unitLaw(0), edge, split, plan.frame());
  }

  ForceSplit split(ForceDraw draw) {
    boolean kienzle = input.model() instanceof ForceModel.Kienzle;
    return new ForceSplit(kienzle ? draw.normalRatio() : 1, draw.liftRatio());
  }

  /** What multiplies the unit law. */
  double force(ForceDraw draw) {
    return input.model() instanceof ForceModel.Kienzle
        ? draw.specificForcePa() / UNIT_PA
        : draw.specificForcePa();
  }

  /** Force of an even tooth at its greatest chip by the unit law, up to a constant. */
  double unit(double exponent, double feedM) {
    double chipM = feedM * edge.sine() * arc.greatestSine();
    return input.model() instanceof ForceModel.LinearEdge linear
        ? linear.coefficients().tangentialChipPa() * chipM
            + linear.coefficients().tangentialEdgeNPerM()
        : Math.pow(Math.max(chipM, ThinChip.PLOUGHING_CHIP_M) * 1e3, 1 - exponent);
  }

  /**
   * The forces of a pass.
   *
   * @param input the pass
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<DrawnForces> of(ForceInput input) {
    PassGeometry plan = PassGeometry.of(input.stock(), input.cutter(), input.cut());
    return plan.steadyArc().map(arc -> new DrawnForces(input, plan, arc));
  }

  /** The arc in steady cutting, in the feed frame. */
  public Arc steadyArc() {
    return arc;
  }

  /** Normal over tangential force: as drawn, or as the published coefficients have it. */
  public double normalRatio(double drawn) {
    return input.model() instanceof ForceModel.LinearEdge
        ? input.model().likelyNormalRatio()
        : drawn;
  }

  /** What was taken for inputs that are not known. */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  /** The edge of one tooth in cut. */
  public EdgeInCut edge() {
    return edge;
  }

  /**
   * The force at one draw.
   *
   * @param draw single values
   * @throws OutsideValidity if one is outside the range of the formulas
   */
  public DrawnPass at(ForceDraw draw) {
    RevolutionSweep sweep = sweep(draw);
    ForceHull hull = new ForceHull();
    ForceExtremes steady =
        sweep.extremes(List.of(arc), SweepOrder.EVIDENCE.steadyStepRad(), hull)[0];
    Path path = new Path();
    for (Station station : stations) {
      path.take(
          station,
          station.steady
              ? steady
              : sweep.extremes(station.arcs, SweepOrder.EVIDENCE.endStepRad(), hull)[0]);
    }
    return new DrawnPass(
        new PathPeaks(
            path.least[0],
            path.greatest[0],
            path.least[1],
            path.greatest[1],
            path.least[2],
            path.greatest[2]),
        hull.corners(),
        path.inPlane,
        steady.greatestN(ForceExtremes.TANGENTIAL),
        Math.max(0, steady.meanN(ForceExtremes.TANGENTIAL)),
        path.meanX,
        sweep.blow(arc.thickestRad(), 0),
        path.fillingInPlane,
        path.fillingLeastY,
        path.fillingGreatestY,
        acrossTurn(sweep));
  }

  private double[] acrossTurn(RevolutionSweep sweep) {
    ForceVector[] turn = sweep.revolution(List.of(arc), 0, TURN_STEPS);
    double[] across = new double[TURN_STEPS];
    for (int k = 0; k < TURN_STEPS; k++) {
      across[k] = turn[k].yN();
    }
    return across;
  }

  private RevolutionSweep sweep(ForceDraw draw) {
    EdgeLaw law =
        input.model() instanceof ForceModel.LinearEdge linear
            ? new LinearEdgeLaw(linear.coefficients(), draw.specificForcePa())
            : new KienzleLaw(draw.specificForcePa(), draw.exponent(), ThinChip.FLOORED);
    ForceCase pass =
        new ForceCase(
            law,
            List.of(split(draw)),
            ToothRing.of(input.cutter().teeth(), absent, draw.runOutM()),
            draw.feedM(),
            edge);
    return new RevolutionSweep(pass, plan.frame(), nodes, wrapRad);
  }

  /** Gathers the places of the pass in order of travel. */
  private static final class Path {
    private final double[] least = new double[3];
    private final double[] greatest = new double[3];
    private double inPlane;
    private double fillingInPlane;
    private double fillingLeastY;
    private double fillingGreatestY;
    private double meanX;

    void take(Station station, ForceExtremes there) {
      for (int axis = 0; axis < 3; axis++) {
        least[axis] = Math.min(least[axis], there.leastN(axis));
        greatest[axis] = Math.max(greatest[axis], there.greatestN(axis));
      }
      inPlane = Math.max(inPlane, there.greatestInPlaneN());
      if (station.filling) {
        fillingInPlane = Math.max(fillingInPlane, there.greatestInPlaneN());
        fillingLeastY = Math.min(fillingLeastY, there.leastN(1));
        fillingGreatestY = Math.max(fillingGreatestY, there.greatestN(1));
      }
      meanX += station.share * there.meanN(0);
    }
  }
}

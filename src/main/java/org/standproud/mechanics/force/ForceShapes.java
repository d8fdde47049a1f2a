package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.engagement.PassGeometry;
import org.standproud.setup.Band;

/**
 * The peaks of the force of a pass, ready to be asked many times for single values of its inputs.
 * The force goes in proportion to K kc1.1 (Kienzle's law) or to the factor on the coefficients
 * (linear-edge law), so its shape is worked out once per unit of it, on a grid of exponent, feed
 * and run-out, and interpolated between; what is interpolated is the shape over the force of an
 * even tooth at its greatest chip, which without run-out does not change along the grid at all. For
 * a given shape the greatest force along an axis is a convex function of the ratio of normal to
 * tangential force, or of the factor along the edge, and chords between the places worked out lie
 * on or above it: never too little force.
 *
 * <p>Chips below the range of the law count as {@link ThinChip#FLOORED}, the most force.
 */
public final class ForceShapes {

  private static final int NODES = 3;
  private static final int SHARES = 4;
  private static final int PEAKS = 6;

  private final double[] exponents;
  private final double[] feedsM;
  private final double[] runOutsM;
  private final double[] shares;
  private final double chipPerFeed;
  private final ShapedLaw law;
  private final double[][][][] shapes;

  private ForceShapes(ForceInput input, PassGeometry plan, Arc arc) {
    Band runOut =
        input.cutter().runOutM() == null
            ? ForceCases.UNKNOWN_RUN_OUT_M
            : Band.exactly(input.cutter().runOutM());
    this.feedsM = nodes(input.cut().feedPerToothM(), NODES);
    this.runOutsM = nodes(runOut, NODES);
    EdgeInCut edge =
        EdgeInCut.of(
            input.cut().axialDepthM(),
            input.cutter().enteringAngleRad(),
            input.cutter().cornerRadiusM());
    this.chipPerFeed = edge.sine() * arc.greatestSine();
    this.law = ShapedLaw.of(input.model(), edge.cosine());
    this.exponents = nodes(law.exponent(), NODES);
    this.shares = nodes(law.share(), SHARES);
    Shaper shaper = new Shaper(input, law, plan, arc, edge, shares);
    this.shapes = new double[exponents.length][feedsM.length][runOutsM.length][];
    for (int i = 0; i < exponents.length; i++) {
      for (int j = 0; j < feedsM.length; j++) {
        for (int k = 0; k < runOutsM.length; k++) {
          shapes[i][j][k] = shaper.shape(exponents[i], feedsM[j], runOutsM[k]);
          double unit = unit(exponents[i], feedsM[j]);
          for (int p = 0; p < shapes[i][j][k].length; p++) {
            shapes[i][j][k][p] /= unit;
          }
        }
      }
    }
  }

  /**
   * The shapes of a pass.
   *
   * @param input the pass
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<ForceShapes> of(ForceInput input) {
    PassGeometry plan = PassGeometry.of(input.stock(), input.cutter(), input.cut());
    return plan.steadyArc().map(arc -> new ForceShapes(input, plan, arc));
  }

  /** Run-out over its band in m: as measured, else as taken for one not measured. */
  public static Band runOutM(ForceInput input) {
    Double measured = input.cutter().runOutM();
    return measured == null ? ForceCases.UNKNOWN_RUN_OUT_M : Band.exactly(measured);
  }

  /** The peaks at single values; values beyond the bands the shapes were made of are clipped. */
  public PathPeaks at(ForceDraw draw) {
    double[] shape = shapeAt(draw);
    double force = law.force(draw) * unit(draw.exponent(), draw.feedM());
    double[] upright = law.upright(shape, draw);
    return new PathPeaks(
        shape[0] * force,
        shape[1] * force,
        shape[2] * force,
        shape[3] * force,
        upright[0] * force,
        upright[1] * force);
  }

  /** Interpolated in all four directions. */
  private double[] shapeAt(ForceDraw draw) {
    double a = place(exponents, draw.exponent());
    double b = place(feedsM, draw.feedM());
    double c = place(runOutsM, draw.runOutM());
    double d = place(shares, law.share(draw));
    double[] sum = new double[PEAKS];
    for (int corner = 0; corner < 16; corner++) {
      double weight =
          weight(a, corner & 1)
              * weight(b, corner & 2)
              * weight(c, corner & 4)
              * weight(d, corner & 8);
      if (weight > 0) {
        double[] shape = shapes[index(a, corner & 1)][index(b, corner & 2)][index(c, corner & 4)];
        int at = PEAKS * index(d, corner & 8);
        for (int p = 0; p < PEAKS; p++) {
          sum[p] += weight * shape[at + p];
        }
      }
    }
    return sum;
  }

  private double unit(double exponent, double feedM) {
    return law.unit(exponent, feedM * chipPerFeed);
  }

  private static double[] nodes(Band band, int count) {
    if (band.isExact()) {
      return new double[] {band.likely()};
    }
    double[] nodes = new double[count];
    for (int k = 0; k < count; k++) {
      nodes[k] = band.low() + k * band.width() / (count - 1);
    }
    return nodes;
  }

  /** A place on a grid: its whole part is a node, its fraction lies toward the next. */
  private static double place(double[] nodes, double value) {
    if (nodes.length == 1) {
      return 0;
    }
    double step = (nodes[nodes.length - 1] - nodes[0]) / (nodes.length - 1);
    return Math.max(0, Math.min(nodes.length - 1, (value - nodes[0]) / step));
  }

  private static double weight(double place, int next) {
    double fraction = place - Math.floor(place);
    return next == 0 ? 1 - fraction : fraction;
  }

  private static int index(double place, int next) {
    return (int) place + (next == 0 ? 0 : 1);
  }

  /** Works out one node of the grid. */
  private static final class Shaper {
    private final ForceInput input;
    private final ShapedLaw law;
    private final PassGeometry plan;
    private final ArcNodes nodes;
    private final EdgeInCut edge;
    private final List<ForceSplit> splits = new ArrayList<>();
    private final Set<Integer> absent;
    private final double wrapRad;
    private final List<List<Arc>> arcs = new ArrayList<>();

    Shaper(
        ForceInput input,
        ShapedLaw law,
        PassGeometry plan,
        Arc arc,
        EdgeInCut edge,
        double[] shares) {
      this.input = input;
      this.law = law;
      this.plan = plan;
      this.nodes = new ArcNodes(arc);
      this.edge = edge;
      for (double share : shares) {
        splits.add(law.split(share));
      }
      this.absent =
          ForceCases.withChipped(
              input.cutter(), Set.copyOf(input.cutter().missingTeeth()), new ArrayList<>());
      this.wrapRad = PassForces.wrapRad(input.cutter(), input.cut());
      double pitchRad = 2 * Math.PI / input.cutter().teeth();
      arcs.add(List.of(arc));
      for (double place : PassForces.places(plan, arc, pitchRad, wrapRad, SweepOrder.EVIDENCE)) {
        List<Arc> there = plan.arcsAt(place);
        if (!there.isEmpty() && !arcs.contains(there)) {
          arcs.add(there);
        }
      }
    }

    double[] shape(double exponent, double feedM, double runOutM) {
      ForceCase pass =
          new ForceCase(
              law.law(exponent),
              splits,
              ToothRing.of(input.cutter().teeth(), absent, runOutM),
              feedM,
              edge);
      RevolutionSweep sweep = new RevolutionSweep(pass, plan.frame(), nodes, wrapRad);
      double[] shape = new double[PEAKS * splits.size()];
      for (List<Arc> there : arcs) {
        ForceExtremes[] extremes = sweep.extremes(there, SweepOrder.EVIDENCE.endStepRad());
        for (int s = 0; s < extremes.length; s++) {
          int at = PEAKS * s;
          ForceExtremes found = extremes[s];
          shape[at] = Math.min(shape[at], found.leastN(ForceExtremes.X));
          shape[at + 1] = Math.max(shape[at + 1], found.greatestN(ForceExtremes.X));
          shape[at + 2] = Math.min(shape[at + 2], found.leastN(ForceExtremes.Y));
          shape[at + 3] = Math.max(shape[at + 3], found.greatestN(ForceExtremes.Y));
          law.takeUpright(found, shape, at);
        }
      }
      return shape;
    }
  }
}

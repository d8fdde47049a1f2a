package org.standproud.mechanics.force;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * The forces of one pass for many draws. The force goes in proportion to K kc1.1 (Kienzle's law) or
 * to the factor on the coefficients (linear-edge law), and the split between the directions is
 * linear; so the sums over the teeth are worked out on a grid of exponent, feed and run-out and
 * interpolated between. What is interpolated is the sum over the force of an even tooth at its
 * greatest chip, which without run-out does not change along the grid.
 *
 * <p>Only moments that can be extreme are kept: those that reach farthest in some direction of
 * space at either end of run-out and split, found once.
 */
final class ShapedForces {

  private static final int NODES = 3;

  /** Steps of a pitch of the force that shakes the stock. */
  private static final int STEPS_A_PITCH = 16;

  private static final int MOST_STEPS = 128;

  private final DrawnForces pass;
  private final double[] exponents;
  private final double[] feedsM;
  private final double[] runOutsM;
  private final List<Moment> moments;
  private final boolean[] filling;
  private final boolean[] steady;
  private final int terms;
  private final double[][][][] sums;
  private final double[][] turns;
  private final int turnSteps;
  private final double turnUnit;

  /** One moment of the pass: a place and a turn of the cutter. */
  private record Moment(DrawnForces.Station station, double turnRad) {

    /** Of two places one is the other: no two have the same arcs. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Moment moment
          && station == moment.station
          && turnRad == moment.turnRad;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(turnRad);
    }
  }

  /**
   * The forces over the ranges of the draws.
   *
   * @throws OutsideValidity if the pass is outside the range of the formulas anywhere in them
   */
  ShapedForces(DrawnForces pass, DrawnForces.Ranges ranges) {
    this.pass = pass;
    this.exponents = nodes(ranges.exponent(), 2);
    this.feedsM = nodes(ranges.feedM(), NODES);
    this.runOutsM = nodes(ranges.runOutM(), NODES);
    int e = exponents.length;
    int f = feedsM.length;
    int r = runOutsM.length;
    RevolutionSweep[][][] sweeps = new RevolutionSweep[e][f][r];
    for (int i = 0; i < e; i++) {
      for (int j = 0; j < f; j++) {
        for (int k = 0; k < r; k++) {
          sweeps[i][j][k] = pass.unitSweep(exponents[i], feedsM[j], runOutsM[k]);
        }
      }
    }
    this.terms = sweeps[0][0][0].terms();
    this.moments = moments(List.of(sweeps[0][0][0], sweeps[e - 1][f - 1][r - 1]), ranges);
    this.filling = new boolean[moments.size()];
    this.steady = new boolean[moments.size()];
    for (int k = 0; k < filling.length; k++) {
      filling[k] = moments.get(k).station().filling();
      steady[k] = moments.get(k).station().steady();
    }
    this.sums = new double[e][f][r][];
    for (int i = 0; i < e; i++) {
      for (int j = 0; j < f; j++) {
        for (int k = 0; k < r; k++) {
          sums[i][j][k] = sums(sweeps[i][j][k], pass.unit(exponents[i], feedsM[j]));
        }
      }
    }
    this.turnSteps = Math.min(MOST_STEPS, STEPS_A_PITCH * pass.teeth());
    this.turnUnit = pass.unit(exponents[e / 2], feedsM[f / 2]);
    this.turns = new double[r][];
    for (int k = 0; k < r; k++) {
      turns[k] = sweeps[e / 2][f / 2][k].turnOf(List.of(pass.steadyArc()), turnSteps);
    }
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

  private List<Moment> moments(List<RevolutionSweep> sweeps, DrawnForces.Ranges ranges) {
    Map<Moment, Boolean> found = new LinkedHashMap<>();
    double[] at = new double[3 * terms];
    for (RevolutionSweep sweep : sweeps) {
      Farthest[] all = new Farthest[4];
      for (int s = 0; s < all.length; s++) {
        all[s] = new Farthest(s > 1);
      }
      double[][] weights = {
        pass.weights(new ForceSplit(ranges.normalRatio().low(), ranges.liftRatio().high())),
        pass.weights(new ForceSplit(ranges.normalRatio().high(), ranges.liftRatio().low()))
      };
      double[] reaches = new double[ForceHull.DIRECTIONS.length / 2];
      for (DrawnForces.Station station : pass.distinctStations()) {
        for (double turn : sweep.moments(station.arcs(), station.stepRad())) {
          sweep.sum(turn, station.arcs(), at);
          if (isNothing(at)) {
            continue;
          }
          for (int s = 0; s < weights.length; s++) {
            double[] w = weights[s];
            ForceHull.reaches(sweep.x(w, at, 0), sweep.y(w, at, 0), sweep.z(w, at, 0), reaches);
            double tangential = station.steady() ? sweep.t(w, at, 0) : 0;
            all[s].take(station, turn, reaches, tangential);
            if (station.filling()) {
              all[2 + s].take(station, turn, reaches, tangential);
            }
          }
        }
      }
      for (Farthest farthest : all) {
        farthest.into(found);
      }
    }
    return List.copyOf(found.keySet());
  }

  private static boolean isNothing(double[] sums) {
    for (double sum : sums) {
      if (sum != 0) {
        return false;
      }
    }
    return true;
  }

  /** The moments that reach farthest in each direction, and the hardest of the tangential sum. */
  private static final class Farthest {
    private final int half;
    private final double[] reach;
    private final DrawnForces.@Nullable Station[] stations;
    private final double[] turns;

    /** The directions of the plane come first among those of space. */
    Farthest(boolean inPlane) {
      this.half = (inPlane ? ForceHull.IN_PLANE : ForceHull.DIRECTIONS).length / 2;
      this.reach = new double[2 * half + 1];
      this.stations = new DrawnForces.Station[2 * half + 1];
      this.turns = new double[2 * half + 1];
    }

    /** The second half of the ways are the opposites of the first. */
    void take(DrawnForces.Station station, double turn, double[] reaches, double tangential) {
      for (int w = 0; w < half; w++) {
        double dot = reaches[w];
        take(dot > 0 ? w : w + half, Math.abs(dot), station, turn);
      }
      take(2 * half, tangential, station, turn);
    }

    private void take(int way, double far, DrawnForces.Station station, double turn) {
      if (far > reach[way]) {
        reach[way] = far;
        stations[way] = station;
        turns[way] = turn;
      }
    }

    void into(Map<Moment, Boolean> found) {
      for (int way = 0; way < reach.length; way++) {
        DrawnForces.Station station = stations[way];
        if (station != null) {
          found.put(new Moment(station, turns[way]), true);
        }
      }
    }
  }

  /** Of every moment, then of the blow, the mean in steady cutting and the mean over the pass. */
  private double[] sums(RevolutionSweep sweep, double unit) {
    int each = 3 * terms;
    double[] all = new double[each * (moments.size() + 3)];
    double[] at = new double[each];
    int to = 0;
    for (Moment moment : moments) {
      sweep.sum(moment.turnRad(), moment.station().arcs(), at);
      to = put(at, unit, all, to);
    }
    sweep.blowSums(pass.steadyArc().thickestRad(), at);
    to = put(at, unit, all, to);
    sweep.meanSums(List.of(pass.steadyArc()), at);
    to = put(at, unit, all, to);
    double[] mean = new double[each];
    for (DrawnForces.Station station : pass.distinctStations()) {
      sweep.meanSums(station.arcs(), at);
      for (int k = 0; k < each; k++) {
        mean[k] += station.share() * at[k];
      }
    }
    put(mean, unit, all, to);
    return all;
  }

  private static int put(double[] from, double unit, double[] to, int at) {
    for (int k = 0; k < from.length; k++) {
      to[at + k] = from[k] / unit;
    }
    return at + from.length;
  }

  /** The force at one draw. */
  DrawnPass at(ForceDraw draw) {
    double[] w = pass.weights(pass.split(draw));
    double scale = pass.force(draw) * pass.unit(draw.exponent(), draw.feedM());
    double[] s = interpolated(draw);
    double[] corners = new double[3 * filling.length];
    double leastX = 0;
    double leastY = 0;
    double leastZ = 0;
    double greatestX = 0;
    double greatestY = 0;
    double greatestZ = 0;
    double inPlane = 0;
    double tangential = 0;
    double fillingInPlane = 0;
    double fillingLeastY = 0;
    double fillingGreatestY = 0;
    int at = 0;
    for (int moment = 0; moment < filling.length; moment++) {
      double x = scale * RevolutionSweep.x(w, s, at, terms);
      double y = scale * RevolutionSweep.y(w, s, at, terms);
      double z = scale * RevolutionSweep.z(w, s, at, terms);
      corners[3 * moment] = x;
      corners[3 * moment + 1] = y;
      corners[3 * moment + 2] = z;
      leastX = Math.min(leastX, x);
      leastY = Math.min(leastY, y);
      leastZ = Math.min(leastZ, z);
      greatestX = Math.max(greatestX, x);
      greatestY = Math.max(greatestY, y);
      greatestZ = Math.max(greatestZ, z);
      double plane = x * x + y * y;
      inPlane = Math.max(inPlane, plane);
      if (filling[moment]) {
        fillingInPlane = Math.max(fillingInPlane, plane);
        fillingLeastY = Math.min(fillingLeastY, y);
        fillingGreatestY = Math.max(fillingGreatestY, y);
      }
      if (steady[moment]) {
        tangential = Math.max(tangential, scale * RevolutionSweep.t(w, s, at, terms));
      }
      at += 3 * terms;
    }
    ForceVector blow =
        new ForceVector(
            scale * RevolutionSweep.x(w, s, at, terms),
            scale * RevolutionSweep.y(w, s, at, terms),
            scale * RevolutionSweep.z(w, s, at, terms));
    at += 3 * terms;
    double mean = scale * RevolutionSweep.t(w, s, at, terms);
    at += 3 * terms;
    return new DrawnPass(
        new PathPeaks(leastX, greatestX, leastY, greatestY, leastZ, greatestZ),
        corners,
        Math.sqrt(inPlane),
        tangential,
        Math.max(0, mean),
        scale * RevolutionSweep.x(w, s, at, terms),
        blow,
        Math.sqrt(fillingInPlane),
        fillingLeastY,
        fillingGreatestY,
        acrossTurn(w, scale / turnUnit, draw.runOutM()));
  }

  private double[] acrossTurn(double[] w, double scale, double runOutM) {
    double place = place(runOutsM, runOutM);
    int from = (int) place;
    double next = place - from;
    double[] one = turns[from];
    double[] other = turns[Math.min(from + 1, turns.length - 1)];
    double[] across = new double[turnSteps];
    for (int k = 0; k < turnSteps; k++) {
      across[k] = scale * RevolutionSweep.y(w, one, other, next, 3 * terms * k, terms);
    }
    return across;
  }

  private double[] interpolated(ForceDraw draw) {
    double a = place(exponents, draw.exponent());
    double b = place(feedsM, draw.feedM());
    double c = place(runOutsM, draw.runOutM());
    double[] sum = new double[sums[0][0][0].length];
    for (int corner = 0; corner < 8; corner++) {
      double weight = weight(a, corner & 1) * weight(b, corner & 2) * weight(c, corner & 4);
      if (weight > 0) {
        double[] there = sums[index(a, corner & 1)][index(b, corner & 2)][index(c, corner & 4)];
        for (int k = 0; k < sum.length; k++) {
          sum[k] += weight * there[k];
        }
      }
    }
    return sum;
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
}

package org.standproud.mechanics.force;

import java.util.Arrays;
import java.util.List;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.FeedFrame;

/**
 * The force on the work through one revolution, for one case and any arcs within the steady arc.
 *
 * <p>On the work, in the feed frame (signs opposite to the force on the tool of Altintas 2012 ch.
 * 2): x' = F_t cos phi + F_r sin phi, y' = -F_t sin phi + F_r cos phi, z' = F_a, summed over the
 * teeth, where F_r = F_n sin(kappa), and F_a = F_l - F_n cos(kappa): the thrust of a slanted edge
 * presses the work down, the helix lifts it. An edge with helix is a run of tooth angles behind its
 * foot, of width 2 a_p tan(helix) / D.
 *
 * <p>Angles tried: every 3 degrees, and for every tooth where its edge begins and ends to enter and
 * to leave each arc, both sides of the jump, and the middle. A smooth peak missed by half a step
 * loses under 0.04 %.
 */
final class RevolutionSweep {

  private static final double STEP_RAD = Math.toRadians(3);
  private static final double BESIDE_RAD = 1e-8;

  /** Ends of an arc belong to it: one tooth may enter at the very moment another leaves. */
  private static final double SAME_ANGLE_RAD = 1e-9;

  private static final double STRAIGHT_RAD = 1e-5;
  private static final double TURN = 2 * Math.PI;

  private final ForceCase pass;
  private final FeedFrame frame;
  private final double wrapRad;
  private final EdgeTable[][] tables;
  private final int terms;
  private final double pitchRad;

  /**
   * Tabulates a case over the steady arc.
   *
   * @param pass the case
   * @param frame signs that lead to the vise
   * @param steady the steady arc
   * @param wrapRad angle by which the top of the edge trails its foot, rad, not negative
   */
  RevolutionSweep(ForceCase pass, FeedFrame frame, Arc steady, double wrapRad) {
    this.pass = pass;
    this.frame = frame;
    this.wrapRad = wrapRad;
    this.terms = pass.law().terms();
    int teeth = pass.ring().teeth();
    this.pitchRad = TURN / teeth;
    this.tables = new EdgeTable[teeth][terms];
    for (int tooth = 0; tooth < teeth; tooth++) {
      for (int term = 0; term < terms; term++) {
        tables[tooth][term] =
            tooth > 0 && pass.ring().alike()
                ? tables[0][term]
                : EdgeTable.of(steady, pass, tooth, term);
      }
    }
  }

  ForceCase pass() {
    return pass;
  }

  /** The extremes over a revolution for each split of the case, in the order of the splits. */
  ForceExtremes[] extremes(List<Arc> arcs) {
    ForceExtremes[] extremes = new ForceExtremes[pass.splits().size()];
    for (int s = 0; s < extremes.length; s++) {
      extremes[s] = new ForceExtremes();
    }
    double[] sums = new double[3 * terms];
    double period = pass.ring().alike() ? pitchRad : TURN;
    int steps = (int) Math.ceil(period / STEP_RAD);
    for (int k = 0; k < steps; k++) {
      take(k * period / steps, arcs, sums, extremes);
    }
    int teeth = pass.ring().alike() ? 1 : pass.ring().teeth();
    for (int tooth = 0; tooth < teeth; tooth++) {
      for (Arc arc : arcs) {
        takeEventsOf(tooth * pitchRad, arc, arcs, sums, extremes);
      }
    }
    takeMeans(arcs, sums, extremes);
    return extremes;
  }

  private void takeEventsOf(
      double lagRad, Arc arc, List<Arc> arcs, double[] sums, ForceExtremes[] extremes) {
    double entry = lagRad + arc.entryRad();
    double exit = lagRad + arc.exitRad();
    take(entry, arcs, sums, extremes);
    take(exit, arcs, sums, extremes);
    take(entry - BESIDE_RAD, arcs, sums, extremes);
    take((entry + exit + wrapRad) / 2, arcs, sums, extremes);
    take(exit + wrapRad + BESIDE_RAD, arcs, sums, extremes);
    if (wrapRad > STRAIGHT_RAD) {
      take(entry + wrapRad, arcs, sums, extremes);
    }
  }

  private void take(double turnRad, List<Arc> arcs, double[] sums, ForceExtremes[] extremes) {
    sum(turnRad, arcs, sums);
    for (int s = 0; s < extremes.length; s++) {
      ForceSplit split = pass.splits().get(s);
      extremes[s].take(x(sums, split), y(sums, split), z(sums, split), tangential(sums));
    }
  }

  /** The force on the work in the vise frame when tooth 0 stands at an angle. */
  ForceVector at(double turnRad, List<Arc> arcs, ForceSplit split) {
    double[] sums = new double[3 * terms];
    sum(turnRad, arcs, sums);
    return new ForceVector(x(sums, split), y(sums, split), z(sums, split));
  }

  /** The force of the tooth with the greatest bite, its whole edge at one angle of the arc. */
  ForceVector blow(double angleRad, ForceSplit split) {
    double[] sums = new double[3 * terms];
    int tooth = pass.ring().hungriest(pass.feedM(), Math.sin(angleRad));
    for (int term = 0; term < terms; term++) {
      tables[tooth][term].addValue(angleRad, 1, sums, 3 * term);
    }
    return new ForceVector(x(sums, split), y(sums, split), z(sums, split));
  }

  /** Means are exact sums of integrals over the arcs; the helix does not change them. */
  private void takeMeans(List<Arc> arcs, double[] sums, ForceExtremes[] extremes) {
    Arrays.fill(sums, 0);
    for (int tooth = 0; tooth < tables.length; tooth++) {
      for (int term = 0; term < terms && pass.ring().cuts(tooth); term++) {
        for (Arc arc : arcs) {
          tables[tooth][term].addIntegral(arc.exitRad(), 1 / TURN, sums, 3 * term);
          tables[tooth][term].addIntegral(arc.entryRad(), -1 / TURN, sums, 3 * term);
        }
      }
    }
    for (int s = 0; s < extremes.length; s++) {
      ForceSplit split = pass.splits().get(s);
      extremes[s].mean(x(sums, split), y(sums, split), z(sums, split), tangential(sums));
    }
  }

  private void sum(double turnRad, List<Arc> arcs, double[] sums) {
    Arrays.fill(sums, 0);
    for (int tooth = 0; tooth < tables.length; tooth++) {
      if (!pass.ring().cuts(tooth)) {
        continue;
      }
      double foot = turnRad - tooth * pitchRad;
      foot -= TURN * Math.floor((foot + SAME_ANGLE_RAD) / TURN);
      // a steep helix can still trail through the cut when its foot has gone right round
      for (; foot - wrapRad <= Math.PI + SAME_ANGLE_RAD; foot += TURN) {
        addTooth(tables[tooth], foot, arcs, sums);
      }
    }
  }

  private void addTooth(EdgeTable[] table, double footRad, List<Arc> arcs, double[] sums) {
    for (int a = 0; a < arcs.size(); a++) {
      Arc arc = arcs.get(a);
      if (wrapRad <= STRAIGHT_RAD) {
        if (footRad >= arc.entryRad() - SAME_ANGLE_RAD
            && footRad <= arc.exitRad() + SAME_ANGLE_RAD) {
          for (int term = 0; term < terms; term++) {
            table[term].addValue(footRad, 1, sums, 3 * term);
          }
        }
        continue;
      }
      double to = Math.min(footRad, arc.exitRad());
      double from = Math.max(footRad - wrapRad, arc.entryRad());
      if (to > from) {
        for (int term = 0; term < terms; term++) {
          table[term].addIntegral(to, 1 / wrapRad, sums, 3 * term);
          table[term].addIntegral(from, -1 / wrapRad, sums, 3 * term);
        }
      }
    }
  }

  private double x(double[] sums, ForceSplit split) {
    double x = 0;
    for (int term = 0; term < terms; term++) {
      double radial = pass.law().normal(term) * split.normal() * pass.edge().sine();
      x += pass.law().tangential(term) * sums[3 * term + EdgeTable.COSINE];
      x += radial * sums[3 * term + EdgeTable.SINE];
    }
    return frame.viseX(x);
  }

  private double y(double[] sums, ForceSplit split) {
    double y = 0;
    for (int term = 0; term < terms; term++) {
      double radial = pass.law().normal(term) * split.normal() * pass.edge().sine();
      y -= pass.law().tangential(term) * sums[3 * term + EdgeTable.SINE];
      y += radial * sums[3 * term + EdgeTable.COSINE];
    }
    return frame.viseY(y);
  }

  private double z(double[] sums, ForceSplit split) {
    double z = 0;
    for (int term = 0; term < terms; term++) {
      double lift = pass.law().along(term) * split.along();
      double thrust = pass.law().normal(term) * split.normal() * pass.edge().cosine();
      z += (lift - thrust) * sums[3 * term + EdgeTable.PLAIN];
    }
    return z;
  }

  private double tangential(double[] sums) {
    double force = 0;
    for (int term = 0; term < terms; term++) {
      force += pass.law().tangential(term) * sums[3 * term + EdgeTable.PLAIN];
    }
    return force;
  }
}

package org.standproud.mechanics.plate;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Springs that touch an elastic body at points and can push but not pull.
 *
 * <p>With C the give of the body between the points, k the springs, s = +1 where a support resists
 * a motion toward positive Y and -1 the other way, and c the give between the load and the points,
 * a unit load of sign d meets the reactions {@code (C s + diag(1/k)) R = c d}, of which all have to
 * push: {@code R >= -p}, p what a support was set against the body with over the load. A support
 * that would have to pull harder lets go. That is the usual complementarity of frictionless contact
 * (Johnson, Contact Mechanics, 1985, section 5.9, from memory); with few points the support that
 * pulls most is taken away until none does.
 */
final class OneSidedSupports {

  private final double[] sides;
  private final double[] springs;
  private final double[] preloads;

  /**
   * Supports.
   *
   * @param sides +1 or -1 each
   * @param springsNPerM k each, over zero
   * @param preloadsN p each, not negative
   */
  OneSidedSupports(double[] sides, double[] springsNPerM, double[] preloadsN) {
    for (double spring : springsNPerM) {
      within("stiffness of a backing", spring, 1, 1e15, "N/m");
    }
    for (double preload : preloadsN) {
      within("preload of a backing", preload, 0, 1e6, "N");
    }
    this.sides = sides.clone();
    this.springs = springsNPerM.clone();
    this.preloads = preloadsN.clone();
  }

  int count() {
    return sides.length;
  }

  /**
   * Which supports push under a load.
   *
   * @param between C, m/N
   * @param toLoad c, m/N
   * @param forceN the load, of either sign, N
   */
  boolean[] pushing(double[][] between, double[] toLoad, double forceN) {
    boolean[] active = new boolean[sides.length];
    Arrays.fill(active, true);
    for (int step = 0; step <= sides.length; step++) {
      double[] reactions = reactions(between, toLoad, Math.signum(forceN), active);
      int worst = -1;
      for (int i = 0; i < reactions.length; i++) {
        double room = reactions[i] + preloads[i] / Math.abs(forceN);
        boolean idle = reactions[i] <= 0 && preloads[i] == 0;
        if (active[i] && (idle || room < 0) && (worst < 0 || reactions[i] < reactions[worst])) {
          worst = i;
        }
      }
      if (worst < 0) {
        return active;
      }
      active[worst] = false;
    }
    return active;
  }

  /**
   * Give at the load with some supports pushing, m/N.
   *
   * @param own give at the load without any, m/N
   * @param between C, m/N
   * @param toLoad c, m/N
   * @param active which push
   */
  double giveMPerN(double own, double[][] between, double[] toLoad, boolean[] active) {
    double[] reactions = reactions(between, toLoad, 1, active);
    double give = own;
    for (int i = 0; i < reactions.length; i++) {
      give -= toLoad[i] * sides[i] * reactions[i];
    }
    return give;
  }

  /** Reactions per newton of a load, positive where they push; zero where one is not active. */
  private double[] reactions(double[][] between, double[] toLoad, double sign, boolean[] active) {
    int[] on = active(active);
    double[] all = new double[sides.length];
    if (on.length == 0) {
      return all;
    }
    DMatrixRMaj matrix = new DMatrixRMaj(on.length, on.length);
    DMatrixRMaj right = new DMatrixRMaj(on.length, 1);
    for (int i = 0; i < on.length; i++) {
      for (int j = 0; j < on.length; j++) {
        matrix.set(i, j, sides[on[i]] * between[on[i]][on[j]] * sides[on[j]]);
      }
      matrix.add(i, i, 1 / springs[on[i]]);
      right.set(i, 0, sides[on[i]] * toLoad[on[i]] * sign);
    }
    DMatrixRMaj solved = new DMatrixRMaj(on.length, 1);
    if (!CommonOps_DDRM.solve(matrix, right, solved)) {
      throw new IllegalStateException("the reactions of the backing could not be solved");
    }
    for (int i = 0; i < on.length; i++) {
      all[on[i]] = solved.get(i, 0);
    }
    return all;
  }

  private static int[] active(boolean[] active) {
    int[] on = new int[active.length];
    int count = 0;
    for (int i = 0; i < active.length; i++) {
      if (active[i]) {
        on[count++] = i;
      }
    }
    return Arrays.copyOf(on, count);
  }

  double spring(int support) {
    return springs[support];
  }
}

package org.standproud.mechanics.holding.slip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The greatest factor on a load that any admissible distribution of pressure and friction on two
 * jaws can carry: a linear programme that shares nothing with {@link JawGrip} but Coulomb's law.
 *
 * <p>Each face is four points at its corners (two on a line of packing). That loses nothing: any
 * pressure and friction on a rectangle, spread to its corners by bilinear weights, keeps its force,
 * its moments and its friction cone. The cone is a pyramid of sixteen sides inside the circle, so
 * the answer is up to 2 % low, never high. Six equations of equilibrium; the movable jaw presses
 * with the clamping force in all; a seat pushes up and a stop pushes back, without friction.
 */
final class AdmissibleHold {

  private static final int SIDES = 16;

  private final JawGrip grip;
  private final double movableTopM;
  private final double movableBottomM;
  private final List<double[]> columns = new ArrayList<>();
  private final List<int[]> cones = new ArrayList<>();
  private final List<Integer> movable = new ArrayList<>();

  AdmissibleHold(JawGrip grip, double movableTopM, double movableBottomM) {
    this.grip = grip;
    this.movableTopM = movableTopM;
    this.movableBottomM = movableBottomM;
  }

  /**
   * The greatest factor.
   *
   * @param force x, y, z in N
   * @param place x, y, z in m, z = 0 at the jaw top
   */
  double factor(double[] force, double[] place) {
    columns.clear();
    cones.clear();
    movable.clear();
    columns.add(wrench(force, place));
    double half = grip.thicknessM() / 2;
    double end = grip.contactLengthM() / 2;
    for (double x : new double[] {-end, end}) {
      face(new double[] {x, half, 0}, -1);
      face(new double[] {x, half, -grip.gripM()}, -1);
      movable.add(face(new double[] {x, -half, -movableTopM}, 1));
      movable.add(face(new double[] {x, -half, -movableBottomM}, 1));
      if (grip.seated()) {
        columns.add(wrench(new double[] {0, 0, 1}, new double[] {x, half, -grip.gripM()}));
        columns.add(wrench(new double[] {0, 0, 1}, new double[] {x, -half, -grip.gripM()}));
      }
      if (x > 0 ? grip.stopPlusX() : grip.stopMinusX()) {
        columns.add(
            wrench(new double[] {-Math.signum(x), 0, 0}, new double[] {x, 0, -grip.gripM()}));
      }
    }
    return solve();
  }

  /** Adds a point of a face and its friction; gives the column of its pressure. */
  private int face(double[] place, double inward) {
    int pressure = columns.size();
    columns.add(wrench(new double[] {0, inward, 0}, place));
    for (int k = 0; k < SIDES; k++) {
      double angle = 2 * Math.PI * k / SIDES;
      columns.add(wrench(new double[] {Math.cos(angle), 0, Math.sin(angle)}, place));
    }
    cones.add(new int[] {pressure, pressure + 1, pressure + SIDES});
    return pressure;
  }

  private static double[] wrench(double[] f, double[] r) {
    return new double[] {
      f[0],
      f[1],
      f[2],
      r[1] * f[2] - r[2] * f[1],
      r[2] * f[0] - r[0] * f[2],
      r[0] * f[1] - r[1] * f[0]
    };
  }

  /** Forces in units of the clamping force and lengths in units of the contact length. */
  private double solve() {
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int row = 0; row < 6; row++) {
      double[] equation = new double[columns.size()];
      for (int c = 0; c < equation.length; c++) {
        double scale = c == 0 ? 1 / grip.clampingForceN() : 1;
        equation[c] = columns.get(c)[row] * scale / (row < 3 ? 1 : grip.contactLengthM());
      }
      constraints.add(new LinearConstraint(equation, Relationship.EQ, 0));
    }
    double[] clamp = new double[columns.size()];
    movable.forEach(column -> clamp[column] = 1);
    constraints.add(new LinearConstraint(clamp, Relationship.EQ, 1));
    for (int[] cone : cones) {
      double[] row = new double[columns.size()];
      Arrays.fill(row, cone[1], cone[2] + 1, 1);
      row[cone[0]] = -grip.friction();
      constraints.add(new LinearConstraint(row, Relationship.LEQ, 0));
    }
    double[] bound = new double[columns.size()];
    bound[0] = 1;
    constraints.add(new LinearConstraint(bound, Relationship.LEQ, Margin.GREATEST));
    return new SimplexSolver(1e-9)
        .optimize(
            new LinearObjectiveFunction(bound, 0),
            new LinearConstraintSet(constraints),
            GoalType.MAXIMIZE,
            new NonNegativeConstraint(true))
        .getValue();
  }
}

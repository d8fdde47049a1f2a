package org.standproud.mechanics.force;

/**
 * One term of the force law along the arc of one tooth, with its running integrals: f, f cos(phi)
 * and f sin(phi). Between the nodes f is a parabola that never falls below nothing, and cosine and
 * sine are parabolas too, whose products with f are kept whole. Each direction of the force so is
 * one force that pushes, turned: it has the sign it must have at that angle, however small it is.
 * The force of an edge wrapped by a helix is a difference of two running integrals whatever part of
 * it is in cut.
 *
 * <p>Cells are at most 3 degrees: cosine and sine are true to 2e-6; for smooth terms the error of
 * an integral is below 1e-7 of it, for Kienzle's power of a chip that starts at nothing below 1e-4
 * (checked against adaptive integration in the tests).
 */
final class EdgeTable {

  /** Index of the plain force in the three results. */
  static final int PLAIN = 0;

  /** Index of force times cosine. */
  static final int COSINE = 1;

  /** Index of force times sine. */
  static final int SINE = 2;

  /** The three results of a cell lie side by side, each with its coefficients. */
  private static final int RESULTS = 3;

  /** Coefficients of the powers 0 to 4 of u in 0..1: parabola times parabola. */
  private static final int POWERS = 5;

  /** The integral has one power more; the first is the integral before the cell. */
  private static final int INTEGRAL_POWERS = POWERS + 1;

  private final double fromRad;
  private final double cellsPerRad;
  private final int cells;
  private final double[] values;
  private final double[] integrals;

  private EdgeTable(double fromRad, double cellRad, double[] values) {
    this.fromRad = fromRad;
    this.cellsPerRad = 1 / cellRad;
    this.cells = values.length / (RESULTS * POWERS);
    this.values = values;
    this.integrals = integrals(values, cells, cellRad);
  }

  /**
   * The table of one tooth.
   *
   * @param arc the steady arc
   * @param pass chip and law
   * @param tooth number of the tooth
   * @param term number of the term of the law
   */
  static EdgeTable of(ArcNodes arc, ForceCase pass, int tooth, int term) {
    int cells = arc.cells();
    double[] values = new double[RESULTS * POWERS * cells];
    double[] push = new double[3];
    double[] turned = new double[3];
    double end = pass.forcePerTerm(tooth, term, arc.sine(0));
    for (int cell = 0; cell < cells; cell++) {
      double start = end;
      double middle = pass.forcePerTerm(tooth, term, arc.sine(2 * cell + 1));
      end = pass.forcePerTerm(tooth, term, arc.sine(2 * cell + 2));
      ArcNodes.parabola(start, neverPulling(start, middle, end), end, push);
      int at = RESULTS * POWERS * cell;
      System.arraycopy(push, 0, values, at + POWERS * PLAIN, push.length);
      arc.cosines(cell, turned);
      multiply(push, turned, values, at + POWERS * COSINE);
      arc.sines(cell, turned);
      multiply(push, turned, values, at + POWERS * SINE);
    }
    return new EdgeTable(arc.arc().entryRad(), arc.cellRad(), values);
  }

  /**
   * Where a tooth begins or ceases to cut inside a cell (run-out), or its chip leaves the floor of
   * the law there, a parabola may swing to the other side of nothing; a straight line does not, and
   * errs on the side of more force.
   */
  private static double neverPulling(double start, double middle, double end) {
    return 4 * middle < start + end ? (start + end) / 2 : middle;
  }

  private static void multiply(double[] one, double[] other, double[] product, int at) {
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; j < other.length; j++) {
        product[at + i + j] += one[i] * other[j];
      }
    }
  }

  /** The coefficients of the running integral over the angle, cell after cell. */
  private static double[] integrals(double[] values, int cells, double cellRad) {
    double[] integrals = new double[RESULTS * INTEGRAL_POWERS * cells];
    double[] before = new double[RESULTS];
    for (int curve = 0; curve < RESULTS * cells; curve++) {
      int at = INTEGRAL_POWERS * curve;
      double sum = before[curve % RESULTS];
      integrals[at] = sum;
      for (int power = 0; power < POWERS; power++) {
        double share = values[POWERS * curve + power] / (power + 1) * cellRad;
        integrals[at + power + 1] = share;
        sum += share;
      }
      before[curve % RESULTS] = sum;
    }
    return integrals;
  }

  /**
   * Adds the three values at an angle on the arc, times a weight, to {@code sums} from an index.
   */
  void addValue(double angleRad, double weight, double[] sums, int index) {
    double place = place(angleRad);
    int cell = Math.min(cells - 1, (int) place);
    double u = place - cell;
    double[] c = values;
    int at = RESULTS * POWERS * cell;
    for (int f = index; f < index + RESULTS; f++) {
      double last = c[at + 2] + u * (c[at + 3] + u * c[at + 4]);
      sums[f] += weight * (c[at] + u * (c[at + 1] + u * last));
      at += POWERS;
    }
  }

  /** Adds the three running integrals up to an angle, times a weight, to {@code sums}. */
  void addIntegral(double angleRad, double weight, double[] sums, int index) {
    double place = place(angleRad);
    int cell = Math.min(cells - 1, (int) place);
    double u = place - cell;
    double[] c = integrals;
    int at = RESULTS * INTEGRAL_POWERS * cell;
    for (int f = index; f < index + RESULTS; f++) {
      double last = c[at + 3] + u * (c[at + 4] + u * c[at + 5]);
      sums[f] += weight * (c[at] + u * (c[at + 1] + u * (c[at + 2] + u * last)));
      at += INTEGRAL_POWERS;
    }
  }

  /** Cells from the start of the arc, within it. */
  private double place(double angleRad) {
    return Math.min(cells, Math.max(0, (angleRad - fromRad) * cellsPerRad));
  }
}

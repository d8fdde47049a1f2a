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

  /** Numbers a cell: the integral before it, and five coefficients of powers of u in 0..1. */
  private static final int STRIDE = 6;

  private final double fromRad;
  private final double stepRad;
  private final int cells;
  private final double[][] curves;

  private EdgeTable(double fromRad, double stepRad, int cells, double[][] curves) {
    this.fromRad = fromRad;
    this.stepRad = stepRad;
    this.cells = cells;
    this.curves = curves;
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
    double[][] curves = new double[3][STRIDE * cells];
    double[] push = new double[3];
    double[] turned = new double[3];
    double end = pass.forcePerTerm(tooth, term, arc.sine(0));
    for (int cell = 0; cell < cells; cell++) {
      double start = end;
      double middle = pass.forcePerTerm(tooth, term, arc.sine(2 * cell + 1));
      end = pass.forcePerTerm(tooth, term, arc.sine(2 * cell + 2));
      ArcNodes.parabola(start, neverPulling(start, middle, end), end, push);
      System.arraycopy(push, 0, curves[PLAIN], STRIDE * cell + 1, push.length);
      arc.cosines(cell, turned);
      multiply(push, turned, curves[COSINE], STRIDE * cell + 1);
      arc.sines(cell, turned);
      multiply(push, turned, curves[SINE], STRIDE * cell + 1);
    }
    for (double[] curve : curves) {
      runOn(curve, arc.cellRad());
    }
    return new EdgeTable(arc.arc().entryRad(), arc.cellRad(), cells, curves);
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

  /** Puts the integral over all earlier cells before each cell. */
  private static void runOn(double[] curve, double cellRad) {
    for (int at = STRIDE; at < curve.length; at += STRIDE) {
      int earlier = at - STRIDE;
      curve[at] = curve[earlier] + within(curve, earlier, 1) * cellRad;
    }
  }

  /** The integral over u from the start of a cell. */
  private static double within(double[] curve, int at, double u) {
    double last = curve[at + 4] / 4 + u * curve[at + 5] / 5;
    return u * (curve[at + 1] + u * (curve[at + 2] / 2 + u * (curve[at + 3] / 3 + u * last)));
  }

  /**
   * Adds the three values at an angle on the arc, times a weight, to {@code sums} from an index.
   */
  void addValue(double angleRad, double weight, double[] sums, int index) {
    double place = Math.min(cells, Math.max(0, (angleRad - fromRad) / stepRad));
    int cell = Math.min(cells - 1, (int) place);
    double u = place - cell;
    for (int f = 0; f < 3; f++) {
      double[] curve = curves[f];
      int at = STRIDE * cell;
      double last = curve[at + 3] + u * (curve[at + 4] + u * curve[at + 5]);
      sums[index + f] += weight * (curve[at + 1] + u * (curve[at + 2] + u * last));
    }
  }

  /** Adds the three running integrals up to an angle, times a weight, to {@code sums}. */
  void addIntegral(double angleRad, double weight, double[] sums, int index) {
    double place = Math.min(cells, Math.max(0, (angleRad - fromRad) / stepRad));
    int cell = Math.min(cells - 1, (int) place);
    double u = place - cell;
    for (int f = 0; f < 3; f++) {
      double[] curve = curves[f];
      int at = STRIDE * cell;
      sums[index + f] += weight * (curve[at] + within(curve, at, u) * stepRad);
    }
  }
}

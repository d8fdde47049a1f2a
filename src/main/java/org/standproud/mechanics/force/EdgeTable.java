package org.standproud.mechanics.force;

/**
 * One term of the force law along the arc of one tooth, with its running integrals: f, f cos(phi)
 * and f sin(phi). Between the nodes the three are parabolas (Simpson's rule), so the force of an
 * edge wrapped by a helix is a difference of two running integrals whatever part of it is in cut.
 *
 * <p>Cells are at most 3 degrees: for smooth terms the error is below 1e-8 of the integral, for
 * Kienzle's power of a chip that starts at nothing below 1e-4 (checked against adaptive integration
 * in the tests).
 */
final class EdgeTable {

  /** Index of the plain force in the three results. */
  static final int PLAIN = 0;

  /** Index of force times cosine. */
  static final int COSINE = 1;

  /** Index of force times sine. */
  static final int SINE = 2;

  private static final int STRIDE = 4;

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
    int nodes = 2 * arc.cells() + 1;
    double[] values = new double[nodes];
    double[] cosines = new double[nodes];
    double[] sines = new double[nodes];
    for (int k = 0; k < nodes; k++) {
      values[k] = pass.forcePerTerm(tooth, term, arc.sine(k));
      cosines[k] = values[k] * arc.cosine(k);
      sines[k] = values[k] * arc.sine(k);
    }
    int cells = arc.cells();
    double step = arc.cellRad();
    double[][] curves = {
      parabolas(values, cells, step), parabolas(cosines, cells, step), parabolas(sines, cells, step)
    };
    return new EdgeTable(arc.arc().entryRad(), step, cells, curves);
  }

  /** Four numbers a cell: integral before it, and the parabola a + b u + c u2 over u in 0..1. */
  private static double[] parabolas(double[] values, int cells, double step) {
    double[] curve = new double[STRIDE * cells];
    double before = 0;
    for (int cell = 0; cell < cells; cell++) {
      double start = values[2 * cell];
      double end = values[2 * cell + 2];
      double middle = monotoneMiddle(start, values[2 * cell + 1], end);
      curve[STRIDE * cell] = before;
      curve[STRIDE * cell + 1] = start;
      curve[STRIDE * cell + 2] = 4 * middle - 3 * start - end;
      curve[STRIDE * cell + 3] = 2 * (start + end) - 4 * middle;
      before += step / 6 * (start + 4 * middle + end);
    }
    return curve;
  }

  /**
   * Where a tooth begins or ceases to cut inside a cell (run-out) a parabola would swing to the
   * other side of nothing; a straight line does not, and errs on the side of more force.
   */
  private static double monotoneMiddle(double start, double middle, double end) {
    boolean begins = start == 0 && 4 * Math.abs(middle) < Math.abs(end);
    boolean ceases = end == 0 && 4 * Math.abs(middle) < Math.abs(start);
    return begins || ceases ? (start + end) / 2 : middle;
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
      sums[index + f] += weight * (curve[at + 1] + u * (curve[at + 2] + u * curve[at + 3]));
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
      double within =
          u * (curve[at + 1] + u * (curve[at + 2] / 2 + u * curve[at + 3] / 3)) * stepRad;
      sums[index + f] += weight * (curve[at] + within);
    }
  }
}

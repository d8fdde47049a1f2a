package org.standproud.mechanics.force;

import org.standproud.mechanics.engagement.Arc;

/**
 * The steady arc cut into cells of at most 3 degrees, with sine and cosine at their ends and
 * middles: the same for every tooth and every corner of the bands, so worked out once a pass.
 */
final class ArcNodes {

  private static final double WIDEST_CELL_RAD = Math.toRadians(3);
  private static final int FEWEST_CELLS = 8;

  private final Arc arc;
  private final int cells;
  private final double cellRad;
  private final double[] sines;
  private final double[] cosines;

  ArcNodes(Arc arc) {
    this.arc = arc;
    this.cells = Math.max(FEWEST_CELLS, (int) Math.ceil(arc.spanRad() / WIDEST_CELL_RAD));
    this.cellRad = arc.spanRad() / cells;
    this.sines = new double[2 * cells + 1];
    this.cosines = new double[2 * cells + 1];
    for (int k = 0; k <= 2 * cells; k++) {
      double angle = k == 2 * cells ? arc.exitRad() : arc.entryRad() + k * cellRad / 2;
      sines[k] = Math.sin(angle);
      cosines[k] = Math.cos(angle);
    }
  }

  Arc arc() {
    return arc;
  }

  int cells() {
    return cells;
  }

  double cellRad() {
    return cellRad;
  }

  /** Sine at a node: even nodes are ends of cells, odd ones their middles. */
  double sine(int node) {
    return sines[node];
  }

  /** The parabola of the cosine over a cell: coefficients of 1, u and u2 with u in 0..1. */
  void cosines(int cell, double[] parabola) {
    parabola(cosines[2 * cell], cosines[2 * cell + 1], cosines[2 * cell + 2], parabola);
  }

  /** The parabola of the sine over a cell. */
  void sines(int cell, double[] parabola) {
    parabola(sines[2 * cell], sines[2 * cell + 1], sines[2 * cell + 2], parabola);
  }

  /** The parabola through three values at u = 0, 1/2 and 1. */
  static void parabola(double start, double middle, double end, double[] coefficients) {
    coefficients[0] = start;
    coefficients[1] = 4 * middle - 3 * start - end;
    coefficients[2] = 2 * (start + end) - 4 * middle;
  }
}

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

  double cosine(int node) {
    return cosines[node];
  }
}

package org.standproud.mechanics.force;

/**
 * Force per length of cutting edge as a sum of terms, each a function of the chip times a constant
 * for each direction: dF_t = sum t_i f_i(h) db, and likewise normal to the edge (in the plane of
 * the feed and the axis) and along the edge.
 */
public sealed interface EdgeLaw permits KienzleLaw, LinearEdgeLaw {

  /** How many terms the law has, 1 or 2. */
  int terms();

  /**
   * The function of the chip in one term.
   *
   * @param term number of the term from 0
   * @param chipM h in m, not negative; zero is a tooth that just touches
   */
  double shape(int term, double chipM);

  /** Factor of the tangential force; times the shape it is in N/m. */
  double tangential(int term);

  /** Factor of the force normal to the edge, positive away from the cutter, before the split. */
  double normal(int term);

  /** Factor of the force along the edge, positive where it lifts the work, before the split. */
  double along(int term);
}

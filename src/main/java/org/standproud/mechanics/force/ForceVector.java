package org.standproud.mechanics.force;

/**
 * A force on the work in the vise frame.
 *
 * @param xN along the jaws in N
 * @param yN across the stock in N, positive toward the fixed jaw
 * @param zN up in N
 */
public record ForceVector(double xN, double yN, double zN) {

  /** The size of the part in the plane of the table in N. */
  public double inPlaneN() {
    return Math.hypot(xN, yN);
  }
}

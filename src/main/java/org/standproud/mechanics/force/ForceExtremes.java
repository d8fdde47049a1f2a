package org.standproud.mechanics.force;

import org.jspecify.annotations.Nullable;

/** Running extremes and means of the force over a revolution, in N; filled by one sweep. */
final class ForceExtremes {

  static final int X = 0;
  static final int Y = 1;
  static final int Z = 2;
  static final int TANGENTIAL = 3;

  private final double[] greatest = {
    Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, 0
  };
  private final double[] least = {
    Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0
  };
  private final double[] mean = new double[4];
  private double inPlaneSquared;
  private final @Nullable ForceHull hull;

  ForceExtremes(@Nullable ForceHull hull) {
    this.hull = hull;
  }

  void take(double x, double y, double z, double tangential) {
    greatest[X] = Math.max(greatest[X], x);
    least[X] = Math.min(least[X], x);
    greatest[Y] = Math.max(greatest[Y], y);
    least[Y] = Math.min(least[Y], y);
    greatest[Z] = Math.max(greatest[Z], z);
    least[Z] = Math.min(least[Z], z);
    greatest[TANGENTIAL] = Math.max(greatest[TANGENTIAL], tangential);
    inPlaneSquared = Math.max(inPlaneSquared, x * x + y * y);
    if (hull != null) {
      hull.take(x, y, z);
    }
  }

  void mean(double x, double y, double z, double tangential) {
    mean[X] = x;
    mean[Y] = y;
    mean[Z] = z;
    mean[TANGENTIAL] = tangential;
  }

  double greatestN(int axis) {
    return greatest[axis];
  }

  double leastN(int axis) {
    return least[axis];
  }

  double meanN(int axis) {
    return mean[axis];
  }

  double greatestInPlaneN() {
    return Math.sqrt(inPlaneSquared);
  }
}

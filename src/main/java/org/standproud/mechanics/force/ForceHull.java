package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The forces of a pass that reach farthest in fixed directions of space: the corners of the body of
 * all its forces that matter to what is held. Between the directions a corner may be missed by at
 * most the angle between two of them.
 */
final class ForceHull {

  private static final int IN_PLANE_WAYS = 12;

  /** Directions of space, unit vectors. */
  static final double[][] DIRECTIONS = directions();

  /** Directions of the plane of the table, unit vectors. */
  static final double[][] IN_PLANE =
      Arrays.stream(DIRECTIONS).filter(way -> way[2] == 0).toArray(double[][]::new);

  private static final double[] WAY_X = component(0);
  private static final double[] WAY_Y = component(1);
  private static final double[] WAY_Z = component(2);

  private final double[][] vectors = new double[DIRECTIONS.length][];
  private final double[] reach = new double[DIRECTIONS.length];

  private static double[] component(int axis) {
    return Arrays.stream(DIRECTIONS).mapToDouble(way -> way[axis]).toArray();
  }

  /** Half of them, then the opposites of these in the same order. */
  private static double[][] directions() {
    List<double[]> half = new ArrayList<>();
    for (int k = 0; k < IN_PLANE_WAYS / 2; k++) {
      double angle = 2 * Math.PI * k / IN_PLANE_WAYS;
      half.add(new double[] {Math.cos(angle), Math.sin(angle), 0});
    }
    double size = Math.sqrt(0.5);
    for (int k = 0; k < 8; k++) {
      double angle = Math.PI * k / 4;
      half.add(new double[] {size * Math.cos(angle), size * Math.sin(angle), size});
    }
    half.add(new double[] {0, 0, 1});
    List<double[]> all = new ArrayList<>(half);
    half.forEach(way -> all.add(new double[] {-way[0], -way[1], -way[2]}));
    return all.toArray(double[][]::new);
  }

  /**
   * How far a force reaches in the first half of {@link #DIRECTIONS}, negative the other way.
   *
   * @param reaches filled, one number a direction
   */
  static void reaches(double x, double y, double z, double[] reaches) {
    for (int d = 0; d < reaches.length; d++) {
      reaches[d] = WAY_X[d] * x + WAY_Y[d] * y + WAY_Z[d] * z;
    }
  }

  void take(double x, double y, double z) {
    for (int d = 0; d < DIRECTIONS.length; d++) {
      double[] way = DIRECTIONS[d];
      double dot = way[0] * x + way[1] * y + way[2] * z;
      if (dot > reach[d]) {
        reach[d] = dot;
        vectors[d] = new double[] {x, y, z};
      }
    }
  }

  /** x, y and z of the corners, each corner once. */
  double[] corners() {
    List<ForceVector> corners = new ArrayList<>();
    for (double[] v : vectors) {
      ForceVector corner = v == null ? null : new ForceVector(v[0], v[1], v[2]);
      if (corner != null && !corners.contains(corner)) {
        corners.add(corner);
      }
    }
    return corners.stream().flatMapToDouble(c -> DoubleStream.of(c.xN(), c.yN(), c.zN())).toArray();
  }
}

package org.standproud.mechanics.vibration;

import java.util.List;

/**
 * One lobe of the stability chart: above it the cut chatters.
 *
 * @param number whole waves left between two teeth
 * @param points the curve, in order of chatter frequency
 */
public record Lobe(int number, List<Point> points) {

  /** Copies the list. */
  public Lobe {
    points = List.copyOf(points);
  }

  /**
   * A point of the curve.
   *
   * @param revPerS spindle speed, 1/s
   * @param depthM limit of the axial depth, m
   * @param chatterHz frequency at which it would chatter, Hz
   */
  public record Point(double revPerS, double depthM, double chatterHz) {}
}

package org.standproud.mechanics.plate;

/** One way the plate rings, with its shape. */
public final class PlateMode {

  private final double frequencyHz;
  private final boolean even;
  private final RitzHalf half;
  private final double[] shape;
  private final double massKg;

  PlateMode(double frequencyHz, boolean even, RitzHalf half, double[] shape, double massKg) {
    this.frequencyHz = frequencyHz;
    this.even = even;
    this.half = half;
    this.shape = shape;
    this.massKg = massKg;
  }

  /** Natural frequency, undamped, Hz. */
  public double frequencyHz() {
    return frequencyHz;
  }

  /** Whether both ends move the same way; a mode that is not even has a node at mid-length. */
  public boolean isEven() {
    return even;
  }

  /**
   * Shape scaled to a modal mass of one kilogram, 1/sqrt(kg), positive on one side of the stock.
   *
   * @param point a point of the plate
   */
  public double shape(PlatePoint point) {
    double[] at = half.vector(point);
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      sum += at[i] * shape[i];
    }
    return sum / Math.sqrt(massKg / 2);
  }

  /**
   * Stiffness of the one-degree oscillator that stands for this mode at a point, N/m; very large at
   * a node and then capped at {@link #NODE_STIFFNESS_N_PER_M}.
   *
   * @param point a point of the plate
   */
  public double stiffnessNPerM(PlatePoint point) {
    double omega = 2 * Math.PI * frequencyHz;
    double value = shape(point);
    return Math.min(NODE_STIFFNESS_N_PER_M, omega * omega / (value * value));
  }

  /**
   * Mass of that oscillator, kg.
   *
   * @param point a point of the plate
   */
  public double massKg(PlatePoint point) {
    double omega = 2 * Math.PI * frequencyHz;
    return stiffnessNPerM(point) / (omega * omega);
  }

  /** What stands for "does not move" in a modal stiffness, N/m. */
  public static final double NODE_STIFFNESS_N_PER_M = 1e15;
}

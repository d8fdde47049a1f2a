package org.standproud.mechanics.plate;

/**
 * What the foot of a plate bends and shears inside the grip, beyond turning as a rigid body: the
 * compliance of a strip between even elastic layers that bear everywhere, less that of a rigid foot
 * in the same layers.
 *
 * <p>Formula: Timoshenko's beam on a Winkler layer, free at its lower end, loaded at the jaw top
 * (Hetenyi, Beams on Elastic Foundation, 1946, from memory), by the elements and weights of {@link
 * ClampedFoot}, eliminated from the bottom up. A rigid foot of depth g in layers of k in all gives
 * {@code 4/(k g)}, {@code 6/(k g^2)} and {@code 12/(k g^3)}. The clamping force that follows one
 * face moves the foot without bending it and therefore drops out. None is ever more than the foot
 * would bend free over the whole grip: {@code g^3/(3 D) + g/S}, {@code g^2/(2 D)}, {@code g/D}.
 *
 * @param shift shift at the jaw top per force and metre of jaw, m2/N, not negative
 * @param cross shift per moment, and turn per force, m/N, not negative
 * @param turn turn per moment, rad/N, not negative
 */
public record FootBending(double shift, double cross, double turn) {

  private static final int ELEMENTS = GrippedFoot.ELEMENTS;

  /** Depth that counts, in characteristic lengths of the layers: below it hardly anything moves. */
  private static final double DEEP = 6;

  /** A foot that does not bend. */
  public static final FootBending NONE = new FootBending(0, 0, 0);

  /**
   * A foot.
   *
   * @param bendingNM D, bending stiffness of the strip, N.m
   * @param shearNPerM S, shear stiffness of the strip, N per m
   * @param gripM g, height in contact, m
   * @param layersPaPerM k, stiffness of the layers that bear together, Pa/m
   */
  public static FootBending of(
      double bendingNM, double shearNPerM, double gripM, double layersPaPerM) {
    double depthM = Math.min(gripM, DEEP * Math.pow(4 * bendingNM / layersPaPerM, 0.25));
    double l = depthM / ELEMENTS;
    double phi = 12 * bendingNM / (shearNPerM * l * l);
    double unit = bendingNM / (l * l * l * (1 + phi));
    double a = -12 * unit;
    double b = 6 * l * unit;
    double d = (2 - phi) * l * l * unit;
    double ownTurn = (4 + phi) * l * l * unit;
    double shift = 12 * unit + layersPaPerM * l * ClampedFoot.weight(0);
    double cross = 6 * l * unit;
    double turn = ownTurn;
    for (int i = 1; i <= ELEMENTS; i++) {
      double det = shift * turn - cross * cross;
      // Rows of the inverse of the block times what joins it to the next, {a, b; -b, d}.
      double p = (turn * a + cross * b) / det;
      double q = (turn * b - cross * d) / det;
      double r = (-shift * b - cross * a) / det;
      double s = (shift * d - cross * b) / det;
      boolean last = i == ELEMENTS;
      double layer = layersPaPerM * l * ClampedFoot.weight(i);
      shift = 12 * unit * (last ? 1 : 2) + layer - (a * p - b * r);
      cross = (last ? -6 * l * unit : 0) - (a * q - b * s);
      turn = ownTurn * (last ? 1 : 2) - (b * q + d * s);
    }
    double det = shift * turn - cross * cross;
    double kg = layersPaPerM * gripM;
    return new FootBending(
        within(turn / det - 4 / kg, gripM * (gripM * gripM / (3 * bendingNM) + 1 / shearNPerM)),
        within(-cross / det - 6 / (kg * gripM), gripM * gripM / (2 * bendingNM)),
        within(shift / det - 12 / (kg * gripM * gripM), gripM / bendingNM));
  }

  private static double within(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }

  /**
   * The same foot bearing on less, as far as it may bend free over its grip.
   *
   * @param factor how many times as far it bends, at least 1
   * @param freeTurn turn per moment of the foot free over its whole grip, {@code g/D}, rad/N
   */
  public FootBending loosened(double factor, double freeTurn) {
    double f = turn <= 0 ? 1 : Math.max(1, Math.min(factor, freeTurn / turn));
    return new FootBending(f * shift, f * cross, f * turn);
  }
}

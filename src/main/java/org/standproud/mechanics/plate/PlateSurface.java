package org.standproud.mechanics.plate;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One standing stock on any root: how its top corner gives and rings, interpolated over what the
 * root gives.
 *
 * <p>The logarithms of flexibility, frequencies and modal stiffnesses are worked out at nodes as
 * they are needed: over the logarithms of what the root turns and shifts by cubics through the four
 * nearest nodes, over the depth about which it turns by straight lines. Modulus and density go in
 * exactly: with what the root gives times the modulus given, flexibility goes with 1/E and
 * frequencies with the root of E. Between nodes it misses the full give and the first frequency by
 * less than four hundredths (in the tests). Shared by threads.
 */
public final class PlateSurface {

  /** Modes in all, those of the even half first. */
  public static final int MODES = 2 * PlateOnFoot.MODES_EACH;

  /** Flexibility, frequencies, modal stiffnesses. */
  private static final int NUMBERS = 1 + 2 * MODES;

  private static final double TURN_STEP = Math.log(10) / 2;
  private static final double SHIFT_STEP = Math.log(10);

  /**
   * Give at the top edge by the turn of a root, in units of a^3/D, beyond which the stock swings as
   * a rigid body on a hinge: its give grows with the turn and its lowest even mode falls with the
   * root of it.
   */
  private static final double HINGE = 3000;

  /** Part of the give by turning below which a shift of the root counts for nothing. */
  private static final double LEAST_SHIFT = 1e-7;

  /** Step of the logarithm of the lever of the top edge about where the root turns. */
  private static final double DEPTH_STEP = 0.1;

  private final PlateOnFoot plate;
  private final PlateOnFoot.Place corner;
  private final double stickOutM;
  private final double densityKgPerM3;
  private final double modulusPa;
  private final double hingePerN;
  private final Map<Long, double[]> nodes = new ConcurrentHashMap<>();
  private final Map<Long, double[][]> neighbours = new ConcurrentHashMap<>();

  /**
   * A standing stock.
   *
   * @param stock its sizes and material; its root does not matter
   */
  public PlateSurface(PlateInput stock) {
    this.plate = PlateOnFoot.of(stock);
    this.corner = plate.place(stock.load());
    this.stickOutM = stock.stickOutM();
    this.densityKgPerM3 = stock.densityKgPerM3();
    this.modulusPa = stock.youngPa().likely();
    this.hingePerN =
        HINGE
            * stock.stickOutM()
            * 12
            * (1 - stock.poisson() * stock.poisson())
            / (modulusPa * Math.pow(stock.thicknessM(), 3));
  }

  /**
   * The stock at one root.
   *
   * @param modulusPa Young's modulus in Pa
   * @param shiftM2PerN shift of the point about which the root turns, m per N and metre of jaw
   * @param turnPerN turn of the root, rad per N.m and metre of jaw
   * @param depthM depth of that point below the jaw top in m, not negative
   * @param numbers filled: flexibility at the corner in m/N, then the frequencies of {@link #MODES}
   *     modes in Hz, then their stiffnesses at the corner in N/m
   */
  public void at(
      double modulusPa, double shiftM2PerN, double turnPerN, double depthM, double[] numbers) {
    double scale = modulusPa / this.modulusPa;
    double lever = 1 + depthM / stickOutM;
    double beyond = Math.max(1, turnPerN * scale * lever * lever / hingePerN);
    double turns = turnPerN * scale / beyond;
    double leverM = lever * stickOutM;
    double shifts = Math.max(shiftM2PerN * scale, LEAST_SHIFT * turns * leverM * leverM);
    double shift = Math.log(shifts) / SHIFT_STEP;
    double turn = Math.log(turns) / TURN_STEP;
    double depth = Math.log(lever) / DEPTH_STEP;
    int shiftFrom = (int) Math.floor(shift) - 1;
    int turnFrom = (int) Math.floor(turn) - 1;
    int depthFrom = (int) Math.floor(depth);
    double[] across = weights(shift - shiftFrom);
    double[] up = weights(turn - turnFrom);
    for (int k = 0; k < NUMBERS; k++) {
      numbers[k] = 0;
    }
    double[][] near = near(shiftFrom, turnFrom, depthFrom);
    for (int down = 0; down < 2; down++) {
      double part = down == 0 ? 1 - (depth - depthFrom) : depth - depthFrom;
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          double weight = part * across[i] * up[j];
          double[] node = near[16 * down + 4 * i + j];
          for (int k = 0; k < NUMBERS; k++) {
            numbers[k] += weight * node[k];
          }
        }
      }
    }
    numbers[0] = Math.exp(numbers[0]) / scale;
    double faster = Math.sqrt(scale);
    for (int m = 1; m <= MODES; m++) {
      numbers[m] = Math.exp(numbers[m]) * faster;
      numbers[MODES + m] = Math.exp(numbers[MODES + m]) * scale;
    }
    numbers[0] *= beyond;
    numbers[1] /= Math.sqrt(beyond);
    numbers[1 + MODES] /= beyond;
  }

  /** Lagrange's weights of four nodes 0 to 3 at a place. */
  private static double[] weights(double x) {
    return new double[] {
      (x - 1) * (x - 2) * (x - 3) / -6,
      x * (x - 2) * (x - 3) / 2,
      x * (x - 1) * (x - 3) / -2,
      x * (x - 1) * (x - 2) / 6
    };
  }

  /** Four nodes each way of two depths from one of them on. */
  private double[][] near(int shiftFrom, int turnFrom, int depthFrom) {
    Long key = key(shiftFrom, turnFrom, depthFrom);
    double[][] near = neighbours.get(key);
    if (near == null) {
      near = new double[32][];
      for (int k = 0; k < near.length; k++) {
        near[k] = node(shiftFrom + k % 16 / 4, turnFrom + k % 4, depthFrom + k / 16);
      }
      neighbours.put(key, near);
    }
    return near;
  }

  private static Long key(int shift, int turn, int depth) {
    return ((long) shift << 42) ^ ((long) (turn & 0x1fffff) << 21) ^ (depth & 0x1fffff);
  }

  private double[] node(int shift, int turn, int depth) {
    return nodes.computeIfAbsent(
        key(shift, turn, depth),
        k ->
            solved(
                RootStiffness.turningAbout(
                    Math.exp(shift * SHIFT_STEP),
                    Math.exp(turn * TURN_STEP),
                    stickOutM * Math.expm1(depth * DEPTH_STEP))));
  }

  private double[] solved(RootStiffness root) {
    double[] node = new double[NUMBERS];
    plate.seen(corner, modulusPa, densityKgPerM3, root, node);
    for (int k = 0; k < NUMBERS; k++) {
      node[k] = Math.log(node[k]);
    }
    return node;
  }
}

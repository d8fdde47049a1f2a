package org.standproud.mechanics.plate;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.standproud.setup.Band;

/**
 * One standing stock on any root: how its top corner gives and rings, interpolated over the
 * stiffness of the root.
 *
 * <p>The logarithms of flexibility, frequencies and modal stiffnesses are worked out at nodes of
 * the logarithms of both root stiffnesses, as they are needed, and joined by cubics through the
 * four nearest nodes each way. Modulus and density go in exactly: with the root stiffnesses over
 * the modulus given, flexibility goes with 1/E and frequencies with the root of E. Between nodes it
 * misses the full give and the first frequency by less than three hundredths (in the tests). Shared
 * by threads.
 */
public final class PlateSurface {

  /** Modes of each symmetry. */
  private static final int MODES_EACH = 3;

  /** Modes in all. */
  public static final int MODES = 2 * MODES_EACH;

  /** Flexibility, frequencies, modal stiffnesses. */
  private static final int NUMBERS = 1 + 2 * MODES;

  private static final double TILT_STEP = Math.log(10) / 2;
  private static final double SHIFT_STEP = Math.log(10);

  private final PlateInput stock;
  private final double modulusPa;
  private final Map<Long, double[]> nodes = new ConcurrentHashMap<>();
  private final Map<Long, double[][]> neighbours = new ConcurrentHashMap<>();

  /**
   * A standing stock.
   *
   * @param stock its sizes and material; its root and load do not matter
   */
  public PlateSurface(PlateInput stock) {
    this.stock = stock;
    this.modulusPa = stock.youngPa().likely();
  }

  /**
   * The stock at one root.
   *
   * @param modulusPa Young's modulus in Pa
   * @param translationNPerM2 of the root, N/m per metre of jaw
   * @param rotationNPerRad of the root, N.m/rad per metre of jaw
   * @param corner filled: flexibility at the corner in m/N, then the frequencies of {@link #MODES}
   *     modes in Hz, then their stiffnesses at the corner in N/m
   */
  public void at(
      double modulusPa, double translationNPerM2, double rotationNPerRad, double[] corner) {
    double scale = modulusPa / this.modulusPa;
    double shift = Math.log(translationNPerM2 / scale) / SHIFT_STEP;
    double tilt = Math.log(rotationNPerRad / scale) / TILT_STEP;
    int shiftFrom = (int) Math.floor(shift) - 1;
    int tiltFrom = (int) Math.floor(tilt) - 1;
    double[] across = weights(shift - shiftFrom);
    double[] up = weights(tilt - tiltFrom);
    for (int k = 0; k < NUMBERS; k++) {
      corner[k] = 0;
    }
    double[][] near = near(shiftFrom, tiltFrom);
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        double weight = across[i] * up[j];
        double[] node = near[4 * i + j];
        for (int k = 0; k < NUMBERS; k++) {
          corner[k] += weight * node[k];
        }
      }
    }
    corner[0] = Math.exp(corner[0]) / scale;
    double faster = Math.sqrt(scale);
    for (int m = 1; m <= MODES; m++) {
      corner[m] = Math.exp(corner[m]) * faster;
      corner[MODES + m] = Math.exp(corner[MODES + m]) * scale;
    }
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

  /** Four nodes each way from one of them on. */
  private double[][] near(int shiftFrom, int tiltFrom) {
    Long key = key(shiftFrom, tiltFrom);
    double[][] near = neighbours.get(key);
    if (near == null) {
      near = new double[16][];
      for (int k = 0; k < near.length; k++) {
        near[k] = node(shiftFrom + k / 4, tiltFrom + k % 4);
      }
      neighbours.put(key, near);
    }
    return near;
  }

  private static Long key(int shift, int tilt) {
    return ((long) shift << 32) ^ (tilt & 0xffffffffL);
  }

  private double[] node(int shift, int tilt) {
    return nodes.computeIfAbsent(
        key(shift, tilt), k -> solved(Math.exp(shift * SHIFT_STEP), Math.exp(tilt * TILT_STEP)));
  }

  private double[] solved(double translationNPerM2, double rotationNPerRad) {
    double[] node = new double[NUMBERS];
    new StandingStock(
            new PlateInput(
                stock.stickOutM(),
                stock.lengthM(),
                stock.thicknessM(),
                Band.exactly(modulusPa),
                stock.poisson(),
                stock.densityKgPerM3(),
                Band.exactly(translationNPerM2),
                Band.exactly(rotationNPerRad),
                stock.heldLengthM(),
                stock.load()),
            RitzOrder.EVIDENCE)
        .corner(MODES_EACH, node);
    for (int k = 0; k < NUMBERS; k++) {
      node[k] = Math.log(node[k]);
    }
    return node;
  }
}

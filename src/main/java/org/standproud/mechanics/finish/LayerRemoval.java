package org.standproud.mechanics.finish;

import static org.standproud.mechanics.OutsideValidity.within;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Stock;
import org.standproud.setup.StockCondition;
import org.standproud.setup.StockSurface;
import org.standproud.setup.request.StockFields;

/**
 * How stock bows when a layer with locked-in stress comes off one side and the hold lets go.
 *
 * <p>Formula: stress in balance over the thickness h, {@code s(u) = s0 (3 u^2 - 1)/2}, u from -1 to
 * 1 through it, s0 at both faces. Of what is left between u = -1 and {@code c = 1 - 2 d/h}, of
 * thickness {@code t = h - d} about {@code m = (c - 1)/2}, the moment is
 *
 * <pre>
 * M = s0 h^2/8 (3/4 c^4 - c^2/2 - 1/4 - m (c^3 - c))
 * </pre>
 *
 * and the free curvature {@code 12 |M| (1 - nu)/(E t^3)} of a plate, without {@code 1 - nu} of a
 * bar on edge. This is the elastic statics that Treuting and Read (J. Appl. Phys. 22 (1951)
 * 130-134) invert to find stress from curvature; for a thin layer it is Stoney's {@code 6 s0 d (1 -
 * nu)/(E h^2)} (Proc. R. Soc. A 82 (1909) 172). The bow over the length L is {@code L^2/8} times
 * the curvature. Symbols: s0 in Pa, d and h in m, E in Pa, nu Poisson's ratio.
 *
 * <p>Valid for elastic relief, a layer of less than 0.95 h, and a stress of that one shape; heat
 * and stress of the cut itself are left out, which matters for layers of less than some 0.2 mm. The
 * side to which it bows is not given: the sign of the stress is seldom known.
 *
 * @param youngPa E, Pa
 * @param poisson nu
 * @param thicknessM h, thickness from which the layer comes off, m
 * @param plate whether it bends as a plate; a bar on edge otherwise
 */
public record LayerRemoval(double youngPa, double poisson, double thicknessM, boolean plate) {

  private static final double MOST_REMOVED = 0.95;

  private static final String SOURCE =
      "stretched plate a tenth of quenched: Prime and Hill, Scripta Materialia 46 (2002) 77;"
          + " otherwise common practice, no source";

  /**
   * Refuses what does not bend by the formula.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public LayerRemoval {
    within("Young's modulus", youngPa, 1e8, 1e12, "Pa");
    within("Poisson's ratio", poisson, 0, 0.49, "");
    within("thickness", thicknessM, 1e-4, 2, "m");
  }

  /**
   * Curvature after a layer is off, 1/m, not negative.
   *
   * @param surfaceStressPa s0, of either sign, Pa
   * @param removedM d, m
   */
  public double curvaturePerM(double surfaceStressPa, double removedM) {
    within("removed layer", removedM, 0, MOST_REMOVED * thicknessM, "m");
    double c = 1 - 2 * removedM / thicknessM;
    double middle = (c - 1) / 2;
    double momentN =
        surfaceStressPa
            * thicknessM
            * thicknessM
            / 8
            * (0.75 * c * c * c * c - c * c / 2 - 0.25 - middle * (c * c * c - c));
    double leftM = thicknessM - removedM;
    double modulus = plate ? youngPa / (1 - poisson) : youngPa;
    return 12 * Math.abs(momentN) / (modulus * leftM * leftM * leftM);
  }

  /**
   * Height of the bow over a length, m.
   *
   * @param surfaceStressPa s0, Pa
   * @param removedM d, m
   * @param lengthM L, m
   */
  public double bowM(double surfaceStressPa, double removedM, double lengthM) {
    return curvaturePerM(surfaceStressPa, removedM) * lengthM * lengthM / 8;
  }

  /**
   * Surface stress of stock as a part of its yield.
   *
   * @param condition how it was delivered; null if not known
   * @param surface condition of its faces; null if not known
   */
  public static Band stressOverYield(
      @Nullable StockCondition condition, @Nullable StockSurface surface) {
    if (condition == null) {
      return surface == StockSurface.CAST
          ? new Band(0.1, 0.2, 0.4)
          : surface == StockSurface.ROLLED ? new Band(0.03, 0.15, 0.5) : new Band(0.02, 0.1, 0.5);
    }
    return switch (condition) {
      case STRESS_RELIEVED -> new Band(0, 0.02, 0.05);
      case STRETCHED -> new Band(0.02, 0.05, 0.1);
      case HOT_ROLLED -> new Band(0.03, 0.1, 0.25);
      case COLD_DRAWN -> new Band(0.2, 0.4, 0.7);
      case AS_CAST -> new Band(0.1, 0.2, 0.4);
    };
  }

  /**
   * What is assumed of the stress in a stock.
   *
   * @param stock the stock
   */
  public static Assumption stress(Stock stock) {
    Band part = stressOverYield(stock.condition(), stock.surface());
    String statement =
        "stress of "
            + part.low()
            + " to "
            + part.high()
            + " of yield at the faces, in balance over the thickness";
    return stock.condition() == null
        ? new Assumption(StockFields.CONDITION, statement, SOURCE, "how the stock was delivered")
        : new Assumption(StockFields.CONDITION, statement, SOURCE);
  }
}

package org.standproud.mechanics.holding.contact;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * Bending of the gripped strip of thin stock when packing presses along a line at depth w and the
 * fixed jaw answers over its face.
 *
 * <p>The fixed jaw's pressure is linear over the gripped height with its resultant at w (over
 * {@code 3w} only, when w lies outside the middle third). The moment is greatest under the line:
 * {@code N g/8} with the line in the middle. Stress {@code 6 M/(L t^2)}; bow over the gripped
 * height at most {@code M g^2/(8 D L)} with {@code D = E t^3/(12 (1-nu^2))}, as if the greatest
 * moment stood over the whole height. Own model, from beam theory; meant for stock thinner than the
 * grip is deep, and an upper estimate for thicker stock, where the force goes straight through.
 *
 * @param momentNm greatest bending moment in N m over the whole length
 * @param stressPa greatest bending stress in Pa
 * @param bowM bow over the gripped height in m
 */
public record StockBow(double momentNm, double stressPa, double bowM) {

  /**
   * The bow under the clamping force alone.
   *
   * @param clampingForceN N in N
   * @param lineDepthM w in m, 0 to g
   * @param gripM g in m
   * @param lengthM jaw contact length L in m
   * @param thicknessM t in m
   * @param youngsPa E in Pa
   * @param poisson nu
   * @throws OutsideValidity if a value is out of range
   */
  public static StockBow of(
      double clampingForceN,
      double lineDepthM,
      double gripM,
      double lengthM,
      double thicknessM,
      double youngsPa,
      double poisson) {
    within("clamping force", clampingForceN, 0, 1e6, "N");
    within("gripped height", gripM, 1e-3, 0.5, "m");
    within("depth of the packing", lineDepthM, 0, gripM, "m");
    within("jaw contact length", lengthM, 1e-3, 2, "m");
    within("stock thickness", thicknessM, 1e-4, 1, "m");
    within("Young's modulus", youngsPa, 1e8, 1e12, "Pa");
    double moment = momentNm(clampingForceN, lineDepthM, gripM);
    double plate = youngsPa * Math.pow(thicknessM, 3) / (12 * (1 - poisson * poisson));
    return new StockBow(
        moment,
        6 * moment / (lengthM * thicknessM * thicknessM),
        moment * gripM * gripM / (8 * plate * lengthM));
  }

  private static double momentNm(double force, double depth, double grip) {
    double w = Math.min(depth, grip - depth);
    if (w < grip / 3) {
      return force * w * 8 / 27;
    }
    double atLip = force / grip * (4 - 6 * w / grip);
    double atBottom = force / grip * (6 * w / grip - 2);
    return atLip * w * w / 2 + (atBottom - atLip) / grip * w * w * w / 6;
  }
}

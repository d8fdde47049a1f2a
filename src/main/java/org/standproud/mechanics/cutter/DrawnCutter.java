package org.standproud.mechanics.cutter;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Cutter;

/**
 * A cutter in its spindle, ready to be asked for single values of what is not known. The modulus of
 * the tool goes in as a factor on the part of the give that is the tool's own.
 *
 * @param toolMPerNPa give of the tool times its modulus, in Pa m/N
 * @param holderMPerN give of what is not of the tool material, in m/N
 * @param stressPaPerN greatest bending stress outside the holder for one newton at the tip
 * @param overhangM from the spindle nose to the cutting end in m
 * @param overhangRatio stick-out from the holder over the lesser of cutting and shank diameter
 */
public record DrawnCutter(
    double toolMPerNPa,
    double holderMPerN,
    double stressPaPerN,
    double overhangM,
    double overhangRatio) {

  private static final double PROBE_PA = 200e9;

  /**
   * A cutter.
   *
   * @throws OutsideValidity if a length or diameter is no cutter's
   */
  public static DrawnCutter of(Cutter cutter) {
    double once = CutterBeam.toNose(cutter, PROBE_PA).complianceMPerN();
    double half = CutterBeam.toNose(cutter, 2 * PROBE_PA).complianceMPerN();
    double tool = 2 * (once - half);
    return new DrawnCutter(
        tool * PROBE_PA,
        once - tool,
        CutterBeam.outsideHolder(cutter, PROBE_PA).bendingStressPa(1),
        OutsideValidity.within("overhang", cutter.overhangM(), 0, 1, "m"),
        cutter.stickOutM() / Math.min(cutter.diameterM(), cutter.shankDiameterM()));
  }

  /**
   * Give at the cutting end in m/N.
   *
   * @param modulusPa of the tool in Pa
   * @param spindleNPerM stiffness of the spindle at its nose in N/m
   * @param perPivotM one over the distance of the point about which the spindle tilts, in 1/m
   */
  public double complianceMPerN(double modulusPa, double spindleNPerM, double perPivotM) {
    double lever = 1 + overhangM * perPivotM;
    return toolMPerNPa / modulusPa + holderMPerN + lever * lever / spindleNPerM;
  }
}

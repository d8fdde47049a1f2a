package org.standproud.mechanics.holding.other;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * How stock that hardly stands out of its backing gives and rings: a rigid block that shifts and
 * turns about the middle of what is backed.
 *
 * <p>Formula: a push at the height H above the backing gives {@code 1/K + (H + g/2)^2/T}, K the
 * stiffness against shift and T against turning. It rocks at {@code sqrt(T/I)/(2 pi)} and shifts at
 * {@code sqrt(K/m)/(2 pi)}, with {@code I = m ((h^2 + t^2)/12 + (h/2 - g/2)^2)} of a bar h high and
 * t thick about that middle. K in N/m, T in N.m/rad, m in kg, lengths in m. A plate on springs
 * along its root would carry a load at its end by a few millimetres of root: that is wrong here,
 * where the stock below the top of the backing spreads it. Valid while what stands out is no higher
 * than it is thick, so that its own bending stays below a few hundredths of the rest. Own model,
 * from statics.
 *
 * @param massKg m
 * @param heightM h, whole height
 * @param thicknessM t
 * @param backedM g, height that is backed, at most h
 * @param loadM H, height of the push above the backing
 */
public record BackedBlock(
    double massKg, double heightM, double thicknessM, double backedM, double loadM) {

  /**
   * Refuses what is out of range.
   *
   * @throws OutsideValidity if a value is out of range, or the stock stands out by more than its
   *     thickness
   */
  public BackedBlock {
    within("mass of the stock", massKg, 1e-4, 1e4, "kg");
    within("height of the stock", heightM, 1e-3, 2, "m");
    within("thickness of the stock", thicknessM, 1e-4, 1, "m");
    within("backed height", backedM, 1e-3, heightM, "m");
    within("height above the backing", heightM - backedM, 0, thicknessM, "m");
    within("height of the push above the backing", loadM, 0, thicknessM, "m");
  }

  private double leverM() {
    return loadM + backedM / 2;
  }

  /**
   * Give at the push, m/N.
   *
   * @param shiftNPerM K
   * @param turnNmPerRad T
   */
  public double giveMPerN(double shiftNPerM, double turnNmPerRad) {
    return 1 / shiftNPerM + 1 / rockingNPerM(turnNmPerRad);
  }

  /**
   * Stiffness against rocking as seen at the push, N/m.
   *
   * @param turnNmPerRad T
   */
  public double rockingNPerM(double turnNmPerRad) {
    return turnNmPerRad / (leverM() * leverM());
  }

  /**
   * Frequency of rocking, Hz.
   *
   * @param turnNmPerRad T
   */
  public double rockingHz(double turnNmPerRad) {
    double offM = (heightM - backedM) / 2;
    double inertia = massKg * ((heightM * heightM + thicknessM * thicknessM) / 12 + offM * offM);
    return Math.sqrt(turnNmPerRad / inertia) / (2 * Math.PI);
  }

  /**
   * Frequency of shifting, Hz.
   *
   * @param shiftNPerM K
   */
  public double shiftingHz(double shiftNPerM) {
    return Math.sqrt(shiftNPerM / massKg) / (2 * Math.PI);
  }
}

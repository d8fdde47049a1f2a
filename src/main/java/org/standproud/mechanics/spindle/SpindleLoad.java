package org.standproud.mechanics.spindle;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Machine;

/**
 * What a pass asks of a spindle against what it has at that speed.
 *
 * @param speedInRange whether the machine turns at that speed at all
 * @param nearestSpeedRevPerS nearest speed the machine has in 1/s
 * @param powerAtCutterW mean power asked at the cutter in W
 * @param availableAtCutterW power the motor leaves at the cutter in W, drive losses taken off; zero
 *     above the power curve
 * @param torqueAtCutterNm mean torque asked at the cutter in N m
 * @param availableTorqueNm torque left at the cutter in N m
 * @param askedOverAvailable power asked over power left, which is also the ratio of the torques;
 *     above 1 the spindle slows or stalls; not above {@value #NO_POWER}
 */
public record SpindleLoad(
    boolean speedInRange,
    double nearestSpeedRevPerS,
    Band powerAtCutterW,
    Band availableAtCutterW,
    Band torqueAtCutterNm,
    Band availableTorqueNm,
    Band askedOverAvailable) {

  /** The ratio written when there is next to no power at that speed, however little is asked. */
  public static final double NO_POWER = 1000;

  /**
   * Sets a cutting power against the machine.
   *
   * @param machine the machine
   * @param speedRevPerS n in 1/s, 0.01 to 10 000
   * @param powerAtCutterW mean power at the cutter in W, not negative
   * @throws OutsideValidity if a speed, the power curve or the efficiency (0.05 to 1) is out of its
   *     range
   */
  public static SpindleLoad of(Machine machine, double speedRevPerS, Band powerAtCutterW) {
    CuttingPower asked = CuttingPower.ofPower(powerAtCutterW, speedRevPerS);
    SpindleSpeeds speeds = SpindleSpeeds.of(machine);
    Band efficiency = machine.driveEfficiency();
    OutsideValidity.within("drive efficiency", efficiency.low(), 0.05, 1, "");
    OutsideValidity.within("drive efficiency", efficiency.high(), 0.05, 1, "");
    Band available = efficiency.times(new PowerCurve(machine.power()).powerW(speedRevPerS));
    return new SpindleLoad(
        speeds.inRange(speedRevPerS),
        speeds.nearestRevPerS(speedRevPerS),
        powerAtCutterW,
        available,
        asked.torqueNm(),
        available.times(1 / (2 * FastMath.PI * speedRevPerS)),
        ratio(powerAtCutterW, available));
  }

  private static Band ratio(Band asked, Band available) {
    if (available.low() <= 0) {
      return Band.exactly(NO_POWER);
    }
    return asked.over(available).map(r -> FastMath.min(r, NO_POWER));
  }
}

package org.standproud.mechanics.spindle;

import java.util.List;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.PowerPoint;

/**
 * Power at the motor against spindle speed.
 *
 * <p>Between the points power goes linearly with speed. Below the least point the torque stays that
 * of the least point, so power falls in proportion to speed. Above the greatest point nothing is
 * promised: the power is zero.
 *
 * @param points speeds in 1/s rising, powers in W, at least one point
 */
public record PowerCurve(List<PowerPoint> points) {

  /**
   * Copies the points.
   *
   * @throws OutsideValidity if there is no point, a speed is not above the one before or a power is
   *     negative
   */
  public PowerCurve {
    points = List.copyOf(points);
    OutsideValidity.within("points of the power curve", points.size(), 1, 1000, "");
    double before = 0;
    for (PowerPoint point : points) {
      OutsideValidity.within(
          "speed on the power curve", point.speedRevPerS(), FastMath.nextUp(before), 1e4, "1/s");
      OutsideValidity.within("power on the power curve", point.powerW(), 0, 1e6, "W");
      before = point.speedRevPerS();
    }
  }

  /**
   * Power at the motor in W.
   *
   * @param speedRevPerS spindle speed in 1/s, 0 to 10 000
   * @throws OutsideValidity if the speed is out of its range
   */
  public double powerW(double speedRevPerS) {
    OutsideValidity.within("spindle speed", speedRevPerS, 0, 1e4, "1/s");
    PowerPoint least = points.get(0);
    PowerPoint greatest = points.get(points.size() - 1);
    if (speedRevPerS <= least.speedRevPerS()) {
      return least.powerW() * speedRevPerS / least.speedRevPerS();
    }
    if (speedRevPerS > greatest.speedRevPerS()) {
      return 0;
    }
    double[] speeds = points.stream().mapToDouble(PowerPoint::speedRevPerS).toArray();
    double[] powers = points.stream().mapToDouble(PowerPoint::powerW).toArray();
    return new LinearInterpolator().interpolate(speeds, powers).value(speedRevPerS);
  }
}

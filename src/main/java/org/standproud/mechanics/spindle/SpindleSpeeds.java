package org.standproud.mechanics.spindle;

import java.util.Comparator;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Machine;

/**
 * The speeds a spindle can turn at: a stepless range, or the steps of a geared head.
 *
 * @param leastRevPerS least speed in 1/s
 * @param greatestRevPerS greatest speed in 1/s
 * @param stepsRevPerS the steps in 1/s; empty if stepless
 */
public record SpindleSpeeds(
    double leastRevPerS, double greatestRevPerS, List<Double> stepsRevPerS) {

  /**
   * Copies the steps.
   *
   * @throws OutsideValidity if the range is no range or a step lies outside it
   */
  public SpindleSpeeds {
    stepsRevPerS = List.copyOf(stepsRevPerS);
    OutsideValidity.within("least spindle speed", leastRevPerS, 0.001, 1e4, "1/s");
    OutsideValidity.within("greatest spindle speed", greatestRevPerS, leastRevPerS, 1e4, "1/s");
    for (double step : stepsRevPerS) {
      OutsideValidity.within("geared speed", step, leastRevPerS, greatestRevPerS, "1/s");
    }
  }

  /**
   * The speeds of a machine.
   *
   * @throws OutsideValidity if its speeds are no speeds
   */
  public static SpindleSpeeds of(Machine machine) {
    return new SpindleSpeeds(
        machine.leastSpeedRevPerS(), machine.greatestSpeedRevPerS(), machine.speedsRevPerS());
  }

  /**
   * Whether the spindle can turn at a speed, steps left aside.
   *
   * @param speedRevPerS speed in 1/s
   */
  public boolean inRange(double speedRevPerS) {
    return speedRevPerS >= leastRevPerS && speedRevPerS <= greatestRevPerS;
  }

  /**
   * The speed the spindle can turn at that is nearest by ratio; of two equally near, the slower.
   *
   * @param speedRevPerS wanted speed in 1/s, 0.001 to 10 000
   * @return the speed itself if the head is stepless and it lies in the range
   * @throws OutsideValidity if the wanted speed is out of its range
   */
  public double nearestRevPerS(double speedRevPerS) {
    OutsideValidity.within("spindle speed", speedRevPerS, 0.001, 1e4, "1/s");
    return stepsRevPerS.stream()
        .sorted()
        .min(Comparator.comparingDouble(step -> FastMath.abs(FastMath.log(step / speedRevPerS))))
        .orElseGet(() -> FastMath.max(leastRevPerS, FastMath.min(speedRevPerS, greatestRevPerS)));
  }
}

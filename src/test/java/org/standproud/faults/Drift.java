package org.standproud.faults;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * How much something grew from the first look to the last, by the straight line of least squares
 * through all of them.
 *
 * @param mean of all looks
 * @param grown the line's end less its beginning
 */
record Drift(double mean, double grown) {

  static Drift of(List<Vitals> looks, ToDoubleFunction<Vitals> what) {
    SimpleRegression line = new SimpleRegression();
    double sum = 0;
    for (int i = 0; i < looks.size(); i++) {
      line.addData(i, what.applyAsDouble(looks.get(i)));
      sum += what.applyAsDouble(looks.get(i));
    }
    return new Drift(sum / looks.size(), line.getSlope() * (looks.size() - 1));
  }

  /** Whether it grew by no more than a share of its mean, or by no more than is noise. */
  boolean flat(double share, double noise) {
    return grown <= Math.max(share * mean, noise);
  }
}

package org.standproud.rules.trace;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.jspecify.annotations.Nullable;

/**
 * Finds the zero of a function nearest to a start: among known places if there are any, by one
 * secant step if the function is linear, otherwise by widening steps to both sides and Brent's
 * method in the first bracket found.
 */
final class ThresholdSolver {

  private static final int MAX_STEPS = 48;
  private static final int MAX_EVALUATIONS = 60;
  private static final double STRAIGHT = 1e-9;

  /** Replaces a missing bound of a fact. */
  private static final double FAR = 1e12;

  private final DoubleUnaryOperator function;
  private final double least;
  private final double greatest;

  ThresholdSolver(DoubleUnaryOperator function, double least, double greatest) {
    this.function = function;
    this.least = Math.max(-FAR, least);
    this.greatest = Math.min(FAR, greatest);
  }

  /**
   * The zero of a function that rises or falls all the way and has its zero, if any, at one of some
   * places; null if it has none within the range.
   *
   * @param start the start
   * @param places where the zero may be, in rising order
   * @param first the places to try first, by index
   */
  @Nullable Double among(double start, double[] places, int... first) {
    double atStart = function.applyAsDouble(start);
    if (Double.isNaN(atStart) || atStart == 0) {
      return atStart == 0 ? (Double) start : null;
    }
    for (int place : first) {
      if (within(places[place]) && isZero(function.applyAsDouble(places[place]), atStart)) {
        return places[place];
      }
    }
    // The zero stands beside the first place that has the sign of the last one, or at the last.
    int last = places.length - 1;
    int low = 0;
    int high = last;
    boolean sign = last >= 0 && function.applyAsDouble(places[last]) > 0;
    while (low < high) {
      int middle = (low + high) / 2;
      if (function.applyAsDouble(places[middle]) > 0 == sign) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    for (int place : new int[] {low, low - 1, last}) {
      if (place >= 0
          && place <= last
          && within(places[place])
          && isZero(function.applyAsDouble(places[place]), atStart)) {
        return places[place];
      }
    }
    return null;
  }

  /**
   * A zero near the start and within the range, or null; the function may be NaN where it has no
   * value.
   *
   * @param start the start
   */
  @Nullable Double nearest(double start) {
    double atStart = function.applyAsDouble(start);
    if (Double.isNaN(atStart) || atStart == 0) {
      return atStart == 0 ? (Double) start : null;
    }
    double step = Math.max(Math.abs(start), 1e-6) / 64;
    Double straight = secant(start, atStart, step);
    if (straight != null) {
      return straight;
    }
    boolean rising = function.applyAsDouble(start + step) > atStart;
    double toward = rising == atStart > 0 ? -step : step;
    Double near = side(start, atStart, toward);
    return near != null ? near : side(start, atStart, -toward);
  }

  private @Nullable Double secant(double start, double atStart, double step) {
    double aside = start + step;
    double zero = crossing(start, atStart, aside, function.applyAsDouble(aside));
    if (!within(zero)) {
      return null;
    }
    double atZero = function.applyAsDouble(zero);
    // Over a short step rounding affects the slope; over the whole distance it does not.
    if (!isZero(atZero, atStart)) {
      zero = crossing(start, atStart, zero, atZero);
      if (!within(zero)) {
        return null;
      }
      atZero = function.applyAsDouble(zero);
    }
    double middle = function.applyAsDouble((start + zero) / 2);
    boolean line = isZero(atZero, atStart) && isZero(middle - atStart / 2, atStart);
    return line ? (Double) zero : null;
  }

  /** Only rounding is left of the function's value at the start. */
  private static boolean isZero(double value, double atStart) {
    return Math.abs(value) <= STRAIGHT * Math.abs(atStart);
  }

  /** The zero of the straight line through the start and another point. */
  private static double crossing(double start, double atStart, double other, double atOther) {
    return start - atStart * (other - start) / (atOther - atStart);
  }

  private boolean within(double x) {
    return x >= least && x <= greatest;
  }

  private @Nullable Double side(double start, double atStart, double firstStep) {
    double last = start;
    double step = firstStep;
    for (int i = 0; i < MAX_STEPS; i++) {
      double next = Math.max(least, Math.min(greatest, last + step));
      double value = function.applyAsDouble(next);
      if (next == last || Double.isNaN(value)) {
        return null;
      }
      if (value == 0) {
        return next;
      }
      if (value > 0 != atStart > 0) {
        return solve(Math.min(last, next), Math.max(last, next));
      }
      last = next;
      step *= 2;
    }
    return null;
  }

  private @Nullable Double solve(double low, double high) {
    try {
      double accuracy = Math.max(Math.abs(low), Math.abs(high)) * 1e-12;
      return new BrentSolver(accuracy).solve(MAX_EVALUATIONS, this::finite, low, high);
    } catch (MathRuntimeException e) {
      return null;
    }
  }

  private double finite(double x) {
    return function.applyAsDouble(x);
  }
}

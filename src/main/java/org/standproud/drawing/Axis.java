package org.standproud.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis of a chart, in the units of the reader.
 *
 * @param words what it measures, with its unit
 * @param least value at its beginning
 * @param greatest value at its end, more than the least
 * @param byRatio whether the scale is logarithmic; the least value is then positive
 * @param every distance of its ticks; 0 to choose automatically
 */
record Axis(String words, double least, double greatest, boolean byRatio, double every) {

  private static final double[] LEADS = {1, 2, 5};
  private static final int STEPS = 6;

  /** An axis rounded to whole steps may have two more. */
  private static final int MOST_STEPS = 8;

  /** Beyond this ratio only powers of ten are written. */
  private static final double MANY_TENS = 5e3;

  private static final MathContext SHORT = new MathContext(4);

  Axis {
    if (!(greatest > least) || byRatio && !(least > 0) || !Double.isFinite(greatest - least)) {
      throw new IllegalArgumentException("no axis from " + least + " to " + greatest);
    }
  }

  /** An even axis from one value to another. */
  static Axis from(String words, double least, double greatest) {
    return new Axis(words, least, greatest, false, 0);
  }

  /** One turn of the cutter, in degrees. */
  static Axis turn() {
    return new Axis("turn of the cutter, deg", 0, 360, false, 90);
  }

  /**
   * An even axis that covers all values, and zero.
   *
   * @param words what it measures, with its unit
   * @param values the values it must cover
   */
  static Axis even(String words, List<Double> values) {
    double least = Math.min(0, values.stream().mapToDouble(v -> v).min().orElse(0));
    double greatest = Math.max(0, values.stream().mapToDouble(v -> v).max().orElse(0));
    double step = step((greatest > least ? greatest - least : 1) / STEPS);
    double from = Math.floor(least / step) * step;
    double to = Math.ceil(greatest / step) * step;
    return from(words, from, to > from ? to : from + step);
  }

  /**
   * An axis by ratio with a little room at both ends.
   *
   * @param words what it measures, with its unit
   * @param values the values it must cover, all positive
   */
  static Axis ratio(String words, List<Double> values) {
    double least = values.stream().mapToDouble(v -> v).min().orElseThrow();
    double greatest = values.stream().mapToDouble(v -> v).max().orElseThrow();
    return new Axis(words, least / 1.15, greatest * 1.15, true, 0);
  }

  /** Position of a value: 0 at the beginning, 1 at the end; values beyond are at the end. */
  double part(double value) {
    double held = Math.max(least, Math.min(value, greatest));
    return byRatio
        ? Math.log(held / least) / Math.log(greatest / least)
        : (held - least) / (greatest - least);
  }

  /** Values to label. */
  List<Double> ticks() {
    return byRatio ? ratioTicks() : evenTicks();
  }

  private List<Double> evenTicks() {
    List<Double> ticks = new ArrayList<>();
    double step = every > 0 ? every : step((greatest - least) / MOST_STEPS);
    for (long k = (long) Math.ceil(least / step - 1e-9); k * step <= greatest + 1e-9 * step; k++) {
      ticks.add(k * step);
    }
    return ticks;
  }

  private List<Double> ratioTicks() {
    List<Double> ticks = new ArrayList<>();
    boolean tensOnly = greatest / least > MANY_TENS;
    int from = (int) Math.floor(Math.log10(least));
    for (int power = from; Math.pow(10, power) <= greatest; power++) {
      for (double lead : LEADS) {
        double value = lead * Math.pow(10, power);
        if (value >= least && value <= greatest && !(tensOnly && lead > 1)) {
          ticks.add(value);
        }
      }
    }
    return ticks;
  }

  /** The least of 1, 2, 5, 10 … times a power of ten that is not smaller. */
  private static double step(double wanted) {
    double ten = Math.pow(10, Math.floor(Math.log10(wanted)));
    for (double lead : LEADS) {
      if (lead * ten >= wanted * (1 - 1e-9)) {
        return lead * ten;
      }
    }
    return 10 * ten;
  }

  /** A tick in figures. */
  static String figures(double tick) {
    BigDecimal rounded = BigDecimal.valueOf(tick).round(SHORT);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}

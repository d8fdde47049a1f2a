package org.standproud.mechanics.holding.jaw;

import static org.standproud.mechanics.OutsideValidity.within;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Hold;

/**
 * Where the stock sits along the jaws, and how it bears where it sits to one side of the screw.
 *
 * <p>The screw presses at the middle of the movable jaw, the stock answers along the length b that
 * jaws and stock share, whose middle lies e beside the screw. A linear pressure with its resultant
 * off the middle of b by e stays a pressure everywhere while {@code e <= b/6}, the kern of a
 * rectangle (statics of a no-tension joint; Timoshenko, Strength of Materials, eccentric
 * compression, from memory). Beyond it the jaw bears over {@code 3 (b/2 - e)} only, and from {@code
 * e = b/2} on the stock alone cannot keep it square: the jaw swings in its ways by their play and
 * bears on a corner. The ways are not counted on: their play is not known.
 *
 * @param sharedM b, m
 * @param offScrewM e, m, not negative
 * @param overhangM greatest length of stock beyond the jaws at one end, m
 */
public record JawSpan(double sharedM, double offScrewM, double overhangM) {

  /** Least part of the shared length that counts as bearing. */
  private static final double LEAST_BEARING = 0.05;

  /**
   * Refuses stock that is not between the jaws.
   *
   * @throws OutsideValidity if stock and jaws share less than a tenth of a millimetre
   */
  public JawSpan {
    within("length of stock between the jaws", sharedM, 1e-4, 10, "m");
  }

  /**
   * The span of a hold; the stock is in the middle of the jaws if its place is not known.
   *
   * @param hold the hold
   * @param stockLengthM length of the stock along X, m
   * @throws OutsideValidity if the stock is beside the jaws
   */
  public static JawSpan of(Hold hold, double stockLengthM) {
    return of(hold.alongM(), stockLengthM, hold.vise().jawWidthM());
  }

  static JawSpan of(@Nullable Double alongM, double stockLengthM, double jawWidthM) {
    double at = alongM == null ? 0 : Math.abs(alongM);
    double from = Math.max(at - stockLengthM / 2, -jawWidthM / 2);
    double to = Math.min(at + stockLengthM / 2, jawWidthM / 2);
    double overhang = at + stockLengthM / 2 - jawWidthM / 2;
    return new JawSpan(to - from, (from + to) / 2, Math.max(0, overhang));
  }

  /** How far the screw is beside the stock over how far it may be without a gap: {@code 6 e/b}. */
  public double rackingRatio() {
    return 6 * offScrewM / sharedM;
  }

  /** Length that bears, m. */
  public double bearingM() {
    return offScrewM <= sharedM / 6
        ? sharedM
        : Math.max(LEAST_BEARING * sharedM, 3 * (sharedM / 2 - offScrewM));
  }

  /**
   * Length in the middle of the stock that may count as held, with the longer end overhanging on
   * both sides, m.
   *
   * @param stockLengthM length of the stock along X, m
   */
  public double evenlyHeldM(double stockLengthM) {
    return stockLengthM - 2 * overhangM;
  }

  /**
   * Distance from the screw to the end of the stock that is farther from it, m.
   *
   * @param hold the hold
   * @param stockLengthM length of the stock along X, m
   */
  public static double farEndM(Hold hold, double stockLengthM) {
    return stockLengthM / 2 + (hold.alongM() == null ? 0 : Math.abs(hold.alongM()));
  }

  /**
   * Length of stock beyond the jaws, or beyond a backing outside them, at the end toward which the
   * cutter moves, m.
   *
   * @param hold the hold
   * @param stockLengthM length of the stock along X, m
   * @param feedSign +1 where the cutter moves toward positive X, -1 the other way
   */
  public static double exitOverhangM(Hold hold, double stockLengthM, int feedSign) {
    double at = hold.alongM() == null ? 0 : hold.alongM();
    double beyondJaws = feedSign * at + stockLengthM / 2 - hold.vise().jawWidthM() / 2;
    double beyondBacking =
        hold.backing().stream()
            .filter(each -> Math.abs(each.alongM()) <= stockLengthM / 2)
            .mapToDouble(each -> stockLengthM / 2 - feedSign * each.alongM() - each.lengthM() / 2)
            .min()
            .orElse(beyondJaws);
    return Math.max(0, Math.min(beyondJaws, beyondBacking));
  }
}

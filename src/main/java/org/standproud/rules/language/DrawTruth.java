package org.standproud.rules.language;

import java.util.function.IntUnaryOperator;
import org.standproud.mechanics.evidence.DrawSet;

/**
 * The truth of a condition in each draw of the joint sample: it holds, fails, or is unknown because
 * a fact is missing. In the remaining draws the set-up lets go and a number of the condition does
 * not exist; there the condition neither holds nor fails. A single draw represents all of them
 * where they are equal. Immutable.
 */
public final class DrawTruth {

  /** Holds in every draw. */
  public static final DrawTruth TRUE =
      new DrawTruth(DrawSet.all(1), DrawSet.none(1), DrawSet.none(1));

  /** Holds in no draw. */
  public static final DrawTruth FALSE =
      new DrawTruth(DrawSet.none(1), DrawSet.all(1), DrawSet.none(1));

  /** Not known in any draw. */
  public static final DrawTruth UNKNOWN =
      new DrawTruth(DrawSet.none(1), DrawSet.none(1), DrawSet.all(1));

  /** Neither holds nor fails in any draw: the set-up lets go in all. */
  public static final DrawTruth GONE =
      new DrawTruth(DrawSet.none(1), DrawSet.none(1), DrawSet.none(1));

  private final DrawSet holds;
  private final DrawSet fails;
  private final DrawSet unknown;

  private DrawTruth(DrawSet holds, DrawSet fails, DrawSet unknown) {
    this.holds = holds;
    this.fails = fails;
    this.unknown = unknown;
  }

  /** The same in every draw. */
  public static DrawTruth of(boolean holds) {
    return holds ? TRUE : FALSE;
  }

  /** Holds in these draws and in no other. */
  public static DrawTruth of(DrawSet holds) {
    return of(holds, holds.not(), DrawSet.none(holds.draws()));
  }

  /**
   * By draw.
   *
   * @param holds where it holds
   * @param fails where it does not, none of them in the first set
   * @param unknown where it is not known, none of them in the other two
   */
  public static DrawTruth of(DrawSet holds, DrawSet fails, DrawSet unknown) {
    // Equal truth in every draw is reduced to one, which is cheaper and gives equal objects.
    return holds.isAll()
        ? TRUE
        : fails.isAll() ? FALSE : unknown.isAll() ? UNKNOWN : new DrawTruth(holds, fails, unknown);
  }

  /** Number of distinct draws; 1 if they are equal. */
  public int draws() {
    return holds.draws();
  }

  /** The draws in which it holds. */
  public DrawSet holds() {
    return holds;
  }

  /** The draws in which it does not hold. */
  public DrawSet fails() {
    return fails;
  }

  /** The draws in which it is not known. */
  public DrawSet unknown() {
    return unknown;
  }

  /** The share of all draws in which it holds, 0 to 1. */
  public double share() {
    return holds.share();
  }

  /** The truth over all draws. */
  public Truth truth() {
    if (holds.isAll()) {
      return Truth.TRUE;
    }
    if (fails.isAll()) {
      return Truth.FALSE;
    }
    return holds.isEmpty() || !unknown.isEmpty() ? Truth.UNKNOWN : Truth.EITHER;
  }

  /** Whether it does not hold in any draw. */
  public boolean isFalse() {
    return fails.isAll();
  }

  /** Whether it holds in all draws but a share of them. */
  public boolean holdsBut(double level) {
    return draws() - holds.count() <= level * draws();
  }

  /** Whether it holds in more than a share of the draws. */
  public boolean exceeds(double level) {
    return holds.count() > level * draws();
  }

  /**
   * Whether it may hold in more than a share of the draws: where it is unknown, and where the
   * set-up lets go, failing is not proven.
   */
  public boolean mayExceed(double level) {
    return draws() - fails.count() > level * draws();
  }

  /** And, draw by draw: failing dominates, then unknown, then letting go. */
  public DrawTruth and(DrawTruth other) {
    if (this == TRUE || other == FALSE) {
      return other;
    }
    if (other == TRUE || this == FALSE) {
      return this;
    }
    int draws = Math.max(draws(), other.draws());
    DrawTruth a = over(draws);
    DrawTruth b = other.over(draws);
    DrawSet failing = a.fails.or(b.fails);
    return of(a.holds.and(b.holds), failing, a.unknown.or(b.unknown).and(failing.not()));
  }

  /** Or, draw by draw: holding dominates, then unknown, then letting go. */
  public DrawTruth or(DrawTruth other) {
    return not().and(other.not()).not();
  }

  /** The opposite; unknown stays unknown. */
  public DrawTruth not() {
    return of(fails, holds, unknown);
  }

  private DrawTruth over(int draws) {
    if (draws == draws()) {
      return this;
    }
    IntUnaryOperator place = draw -> (int) ((long) draw * draws() / draws);
    return new DrawTruth(
        DrawSet.where(draws, draw -> holds.contains(place.applyAsInt(draw))),
        DrawSet.where(draws, draw -> fails.contains(place.applyAsInt(draw))),
        DrawSet.where(draws, draw -> unknown.contains(place.applyAsInt(draw))));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DrawTruth truth
        && holds.equals(truth.holds)
        && fails.equals(truth.fails)
        && unknown.equals(truth.unknown);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * holds.hashCode() + fails.hashCode()) + unknown.hashCode();
  }

  @Override
  public String toString() {
    return "holds in " + holds + ", not known in " + unknown;
  }
}

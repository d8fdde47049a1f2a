package org.standproud.mechanics.holding;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import org.standproud.setup.Worded;

/** The way in which a stock would leave its jaws first. */
public enum WeakestWay implements Worded {
  /** Friction along the jaws is exceeded. */
  SLIDE("slide along the jaws"),
  /** Friction upward is exceeded. */
  LIFT("lift out of the jaws"),
  /** A push toward the fixed jaw turns it over the jaw top. */
  TIP_TOWARD_FIXED("tip toward the fixed jaw"),
  /** A push away from the fixed jaw turns it over the jaw top. */
  TIP_TOWARD_MOVABLE("tip toward the movable jaw");

  private final String words;

  WeakestWay(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }

  /** The way with the least margin of its own in one draw. */
  public static WeakestWay of(DrawnHold.Margins margins) {
    return of(margins.slip(), margins.lift(), margins.tipTowardFixed(), margins.tipAway());
  }

  /**
   * The way with the least margin of its own.
   *
   * @param slip against sliding along the jaws, capacity over demand
   * @param lift against lifting out of them
   * @param tipTowardFixed against tipping toward the fixed jaw
   * @param tipAway against tipping the other way
   */
  public static WeakestWay of(double slip, double lift, double tipTowardFixed, double tipAway) {
    Map<WeakestWay, Double> each = new EnumMap<>(WeakestWay.class);
    each.put(SLIDE, slip);
    each.put(LIFT, lift);
    each.put(TIP_TOWARD_FIXED, tipTowardFixed);
    each.put(TIP_TOWARD_MOVABLE, tipAway);
    return each.entrySet().stream()
        .min(Comparator.comparingDouble(Map.Entry::getValue))
        .orElseThrow()
        .getKey();
  }
}

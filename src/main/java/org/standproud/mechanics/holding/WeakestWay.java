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

  /**
   * The way with the least margin of its own.
   *
   * @param margins the margins of one draw
   */
  public static WeakestWay of(DrawnHold.Margins margins) {
    Map<WeakestWay, Double> each = new EnumMap<>(WeakestWay.class);
    each.put(SLIDE, margins.slip());
    each.put(LIFT, margins.lift());
    each.put(TIP_TOWARD_FIXED, margins.tipTowardFixed());
    each.put(TIP_TOWARD_MOVABLE, margins.tipAway());
    return each.entrySet().stream()
        .min(Comparator.comparingDouble(Map.Entry::getValue))
        .orElseThrow()
        .getKey();
  }
}

package org.standproud.mechanics.sampling;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.holding.DrawnHold;

/**
 * In which draws the stock lets go, and how.
 *
 * @param draws the draws of each way; every draw that does not hold is in the first that fits
 */
public record LettingGo(Map<Way, DrawSet> draws) {

  /** A way to let go, the soonest first. */
  public enum Way {
    /** It does not stand on its own: clamping leaves it on a hinge or tips it. */
    TIPS_UNDER_CLAMPING("the stock does not stand under clamping alone"),
    /** A push across the jaws tips it over. */
    TIPS("the cut tips the stock over"),
    /** A pull draws it out of the jaws. */
    LIFTS("the cut lifts the stock out of the jaws"),
    /** It slips along the jaws. */
    SLIPS("the cut pushes the stock along the jaws"),
    /** None of these alone, but all of them together. */
    TOGETHER("push, pull and twist together move the stock");

    private final String words;

    Way(String words) {
      this.words = words;
    }

    /** What happens, as a machinist would say it. */
    public String words() {
      return words;
    }
  }

  /** Copies the map. */
  public LettingGo {
    draws = Collections.unmodifiableMap(new EnumMap<>(draws));
  }

  /**
   * How a cut lets go.
   *
   * @throws org.standproud.mechanics.OutsideValidity if an input of the hold is outside the range
   *     of the formulas
   */
  public static LettingGo of(DrawnCut cut) {
    cut.checkHold();
    @Nullable Way[] ways = new Way[cut.draws()];
    Arrays.setAll(ways, draw -> how(cut, draw));
    Map<Way, DrawSet> all = new EnumMap<>(Way.class);
    for (Way way : Way.values()) {
      all.put(way, DrawSet.where(cut.draws(), draw -> way == ways[draw]));
    }
    return new LettingGo(all);
  }

  private static @Nullable Way how(DrawnCut cut, int draw) {
    DrawnHold.State state = cut.state(draw);
    if (state == null || state.holds()) {
      return null;
    }
    DrawnHold.Margins margins = state.margins();
    if (Math.min(margins.tipTowardFixed(), margins.tipAway()) < 1) {
      return Way.TIPS;
    }
    if (margins.lift() < 1) {
      return Way.LIFTS;
    }
    if (margins.slip() < 1) {
      return Way.SLIPS;
    }
    return margins.combined() < 1 ? Way.TOGETHER : Way.TIPS_UNDER_CLAMPING;
  }

  /** The part of all draws in which the stock lets go, 0 to 1. */
  public double share() {
    return draws.values().stream().mapToDouble(DrawSet::share).sum();
  }

  /** The part of all draws in which it lets go one way, 0 to 1. */
  public double share(Way way) {
    DrawSet set = draws.get(way);
    return set == null ? 0 : set.share();
  }
}

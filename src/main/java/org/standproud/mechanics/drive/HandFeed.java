package org.standproud.mechanics.drive;

import java.util.List;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CutFields;

/**
 * What a hand on the wheel makes of a feed per tooth: from half to twice of what was meant, if the
 * caller names one value; a band that the caller names stands.
 */
public final class HandFeed {

  /** Feed that a hand gives over the feed that was meant. */
  public static final Band OVER_MEANT = new Band(0.5, 1, 2);

  /** What is taken for the evenness of a hand. */
  public static final Assumption ASSUMPTION =
      new Assumption(
          CutFields.FEED_PER_TOOTH,
          "a hand feeds from half to twice of what was meant",
          "common practice, no source");

  private HandFeed() {}

  /**
   * The feed per tooth that the teeth really see, before any lurch, in m.
   *
   * @param cut the pass
   * @throws OutsideValidity if the feed per tooth is not within 0 and 0.01 m
   */
  public static Band feedPerToothM(Cut cut) {
    Band meant = cut.feedPerToothM();
    OutsideValidity.within("feed per tooth", meant.low(), 0, 0.01, "m");
    OutsideValidity.within("feed per tooth", meant.high(), 0, 0.01, "m");
    return assumed(cut) ? meant.times(OVER_MEANT) : meant;
  }

  /**
   * The set-up with the feed per tooth that the teeth really see in the place of the one meant.
   *
   * @param meant the set-up as the caller means it
   * @throws OutsideValidity if the feed per tooth is not within 0 and 0.01 m
   */
  public static Setup asTheTeethSeeIt(Setup meant) {
    Cut cut = meant.cut();
    Cut seen = CutBuilder.builder(cut).feedPerToothM(feedPerToothM(cut)).build();
    return meant.with(seen, meant.passes());
  }

  /** What was assumed of a feed: something if one value was named for a hand. */
  public static List<Assumption> assumptions(Cut meant) {
    return assumed(meant) ? List.of(ASSUMPTION) : List.of();
  }

  /** Whether the band of a hand was put in the place of one value. */
  public static boolean assumed(Cut cut) {
    return cut.feedDrive() == FeedDrive.HAND && cut.feedPerToothM().isExact();
  }
}

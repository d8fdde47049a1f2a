package org.standproud.mechanics.holding.jaw;

import java.util.List;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Stock;
import org.standproud.setup.request.HoldFields;

/**
 * What the backing of a hold withstands, to one side.
 *
 * <p>A plate that tips toward a backing is held by it with at most Q at the height z: the moment
 * {@code Q z} about the jaw top comes on top of what the jaws take (limit analysis, lower bound; Q
 * is the push at which the backing slides). Away from it nothing is added. Q is taken from what the
 * fixed jaw bears, so that friction there is not counted twice. The curves that are drawn of a hold
 * at its three ends leave it out.
 *
 * @param forceN Q of all of them, N
 * @param momentNm sum of Q z, N.m
 * @param placeM greatest distance of one from the middle of the stock along X, m
 */
public record BackingHold(double forceN, double momentNm, double placeM) {

  /** No backing. */
  public static final BackingHold NONE = new BackingHold(0, 0, 0);

  private static final Assumption STIFFNESS =
      new Assumption(
          HoldFields.BACKING,
          "a jack gives 5 to 60 N/um, a block 20 to 150, an angle plate 40 to 300",
          "common practice, no source",
          "how far the backing gives under a known push, with an indicator");

  private static final Assumption HOLDS =
      new Assumption(
          HoldFields.BACKING,
          "a jack withstands 300 to 1500 N, a block 700 to 3000, an angle plate 1500 to 5000",
          "friction of one or two M12 bolts at a friction of 0.07 to 0.15; common practice, no"
              + " source",
          "the push at which the backing slides");

  /**
   * The backing of a hold on one side.
   *
   * @param hold the hold
   * @param stock the stock; a backing beside its ends does not count
   * @param side the side of the plate on which it stands
   * @param place place in the bands, 0 to 1
   */
  public static BackingHold of(Hold hold, Stock stock, JawSide side, double place) {
    if (hold.backing().isEmpty()) {
      return NONE;
    }
    double force = 0;
    double moment = 0;
    double farM = 0;
    for (Backing each : touching(hold, stock)) {
      if (each.side() == side) {
        double holds = holdsN(each).part(place);
        force += holds;
        moment += holds * heightM(each, hold, stock);
        farM = Math.max(farM, Math.abs(each.alongM()));
      }
    }
    return force == 0 ? NONE : new BackingHold(force, moment, farM);
  }

  /** The backing that touches the stock between its ends. */
  public static List<Backing> touching(Hold hold, Stock stock) {
    return hold.backing().stream()
        .filter(each -> Math.abs(each.alongM()) <= stock.lengthM() / 2)
        .toList();
  }

  /** Height above the jaws at which it touches the stock, m. */
  public static double heightM(Backing backing, Hold hold, Stock stock) {
    return Math.min(backing.heightM(), stock.heightM() - hold.gripDepthM());
  }

  /** Stiffness of a backing, N/m. */
  public static Band stiffnessNPerM(Backing backing) {
    Band given = backing.stiffnessNPerM();
    return given != null ? given : usualStiffnessNPerM(backing.kind());
  }

  private static Band usualStiffnessNPerM(BackingKind kind) {
    return switch (kind) {
      case JACK -> new Band(5e6, 20e6, 60e6);
      case BLOCK -> new Band(20e6, 60e6, 150e6);
      case ANGLE_PLATE -> new Band(40e6, 120e6, 300e6);
    };
  }

  private static Band holdsN(Backing backing) {
    Band given = backing.holdsN();
    return given != null ? given : usualN(backing.kind());
  }

  private static Band usualN(BackingKind kind) {
    return switch (kind) {
      case JACK -> new Band(300, 700, 1500);
      case BLOCK -> new Band(700, 1500, 3000);
      case ANGLE_PLATE -> new Band(1500, 3000, 5000);
    };
  }

  /** What is assumed of the backing of a hold. */
  public static List<Assumption> assumptions(Hold hold) {
    boolean soft = hold.backing().stream().anyMatch(each -> each.stiffnessNPerM() == null);
    boolean weak = hold.backing().stream().anyMatch(each -> each.holdsN() == null);
    return soft && weak
        ? List.of(STIFFNESS, HOLDS)
        : soft ? List.of(STIFFNESS) : weak ? List.of(HOLDS) : List.of();
  }
}

package org.standproud.setup.request;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.HandFeedPace;
import org.standproud.setup.JawSide;
import org.standproud.setup.Mode;
import org.standproud.setup.Operation;
import org.standproud.setup.Spin;
import tools.jackson.databind.JsonNode;

/**
 * The pass over this stock with this cutter: converts what may be given in two ways to one, and
 * checks that the cutter can take the path at all. Works with what was read; what is missing or at
 * fault was reported before, and the checks that need it are left out.
 */
final class PlannedPassFields {

  private final Values cut;
  private final JsonNode node;
  private final FieldLocation place;
  private final @Nullable Double thickness;
  private final @Nullable Double diameter;
  private final @Nullable Integer teeth;
  private final @Nullable Spin spin;

  /**
   * Keeps what the pass depends on.
   *
   * @param cut what was read of the cut
   * @param stock what was read of the stock
   * @param cutter what was read of the cutter
   * @param node the cut in the request
   * @param place where it stands
   */
  PlannedPassFields(Values cut, Values stock, Values cutter, JsonNode node, FieldLocation place) {
    this.cut = cut;
    this.node = node;
    this.place = place;
    this.thickness = stock.get(StockFields.THICKNESS);
    this.diameter = cutter.get(CutterFields.DIAMETER);
    this.teeth = cutter.get(CutterFields.TEETH);
    this.spin = cutter.get(CutterFields.SPIN);
  }

  /** Puts the one way of saying it in the place of the other, and reports what does not fit. */
  void settle() {
    settleOffset();
    checkOverlap();
    settleFeedDirection();
    settleSpeed();
    settleFeed();
    settleLeadIn();
  }

  private void settleOffset() {
    boolean fromSide = given(CutFields.SIDE) || given(CutFields.RADIAL_DEPTH);
    Operation operation = cut.get(CutFields.OPERATION);
    if (fromSide && operation == Operation.TOP_EDGE) {
      Field<?, ?> wrong = given(CutFields.SIDE) ? CutFields.SIDE : CutFields.RADIAL_DEPTH;
      at(wrong).fault(node.get(wrong.name()), "a top edge is placed by offset alone");
      return;
    }
    if (given(CutFields.OFFSET) && fromSide) {
      at(CutFields.OFFSET)
          .fault(node.get("offset"), "enter an offset, or a side and a radial depth, not both");
      return;
    }
    if (!fromSide) {
      if (!given(CutFields.OFFSET)) {
        String wanted =
            operation == Operation.BROAD_SIDE ? "the side and the radial depth" : "the offset";
        at(operation == Operation.BROAD_SIDE ? CutFields.RADIAL_DEPTH : CutFields.OFFSET)
            .fault(null, "enter " + wanted + " to place the cutter");
      }
      return;
    }
    offsetFromSide();
  }

  private void offsetFromSide() {
    needed(CutFields.SIDE, "pick the side that is milled");
    needed(CutFields.RADIAL_DEPTH, "enter the radial depth");
    JawSide side = cut.get(CutFields.SIDE);
    Double radial = cut.get(CutFields.RADIAL_DEPTH);
    if (radial != null && thickness != null && radial >= thickness) {
      exceeds(radial, CutFields.RADIAL_DEPTH, thickness, "the thickness of the stock");
      return;
    }
    if (radial != null && diameter != null && radial > diameter) {
      exceeds(radial, CutFields.RADIAL_DEPTH, diameter, "the diameter of the cutter");
      return;
    }
    if (side != null && radial != null && thickness != null && diameter != null) {
      double beyond = thickness / 2 - radial + diameter / 2;
      cut.put(CutFields.OFFSET, side == JawSide.FIXED ? beyond : -beyond);
    }
  }

  private void checkOverlap() {
    Double offset = cut.get(CutFields.OFFSET);
    if (offset == null || thickness == null || diameter == null) {
      return;
    }
    double reach = thickness / 2 + diameter / 2;
    if (Math.abs(offset) >= reach) {
      exceeds(Math.abs(offset), CutFields.OFFSET, reach, "what lets the cutter touch the stock");
    } else if (cut.get(CutFields.OPERATION) == Operation.BROAD_SIDE && !leavesAPlate(offset)) {
      at(CutFields.OFFSET)
          .fault(
              node.get("offset"), "milled there, nothing would be left standing of the thickness");
    }
  }

  private boolean leavesAPlate(double offset) {
    return thickness != null && diameter != null && Math.abs(offset) > (diameter - thickness) / 2;
  }

  private void settleFeedDirection() {
    Mode mode = cut.get(CutFields.MODE);
    FeedDirection feed = cut.get(CutFields.FEED);
    if (!given(CutFields.MODE) && !given(CutFields.FEED)) {
      at(CutFields.FEED)
          .fault(
              null,
              "pick which way the cutter travels, or climb or conventional",
              "+x, -x",
              null,
              null);
    }
    Double offset = cut.get(CutFields.OFFSET);
    if (mode == null || offset == null || thickness == null || spin == null) {
      return;
    }
    Mode towardPlus = FeedSense.mode(offset, thickness, FeedDirection.PLUS_X, spin);
    if (given(CutFields.FEED)) {
      if (feed != null && FeedSense.mode(offset, thickness, feed, spin) != mode) {
        disagree(FeedSense.mode(offset, thickness, feed, spin).words());
      }
    } else {
      feedFromMode(mode, towardPlus);
    }
  }

  private void feedFromMode(Mode mode, Mode towardPlus) {
    if (mode == Mode.BOTH && towardPlus == Mode.BOTH) {
      at(CutFields.FEED)
          .fault(null, "feed is needed: both ways this mode is the same", "+x, -x", null, null);
    } else if (towardPlus == Mode.BOTH) {
      disagree(Mode.BOTH.words());
    } else if (mode == Mode.BOTH) {
      disagree(Mode.CLIMB.words() + " or " + Mode.CONVENTIONAL.words());
    } else {
      cut.put(CutFields.FEED, towardPlus == mode ? FeedDirection.PLUS_X : FeedDirection.MINUS_X);
    }
  }

  private void disagree(String actual) {
    at(CutFields.MODE)
        .fault(
            node.get("mode"),
            "mode does not agree with feed, side and spin: this pass is " + actual,
            actual,
            null,
            null);
  }

  private void settleSpeed() {
    if (!oneOf(CutFields.SPINDLE, CutFields.CUTTING)) {
      return;
    }
    Double cutting = cut.get(CutFields.CUTTING);
    if (cutting == null || diameter == null) {
      return;
    }
    double speed = cutting / (Math.PI * diameter);
    if (!CutFields.SPINDLE.range().holds(speed)) {
      at(CutFields.CUTTING)
          .fault(
              node.get("cuttingSpeed"),
              "with this diameter the spindle speed is out of range",
              CutFields.SPINDLE.allowed(place.units()),
              null,
              null);
    } else {
      cut.put(CutFields.SPINDLE, speed);
    }
  }

  private void settleFeed() {
    if (given(CutFields.HAND_FEED)) {
      settleHandFeed();
      return;
    }
    if (!oneOf(CutFields.FEED_PER_TOOTH, CutFields.TABLE)) {
      return;
    }
    Band table = cut.get(CutFields.TABLE);
    Double speed = cut.get(CutFields.SPINDLE);
    if (table != null && speed != null && teeth != null) {
      double teethPerSecond = speed * teeth;
      cut.put(CutFields.FEED_PER_TOOTH, table.map(v -> v / teethPerSecond));
    }
    Band feed = cut.get(CutFields.FEED_PER_TOOTH);
    if (feed == null) {
      return;
    }
    cut.put(CutFields.FEED_PER_TOOTH, feed);
    checkFeed(feed, given(CutFields.TABLE) ? CutFields.TABLE : CutFields.FEED_PER_TOOTH);
  }

  /** A feed in words is a feed of the table, in a band. */
  private void settleHandFeed() {
    HandFeedPace words = cut.get(CutFields.HAND_FEED);
    Double speed = cut.get(CutFields.SPINDLE);
    if (given(CutFields.FEED_PER_TOOTH) || given(CutFields.TABLE)) {
      at(CutFields.HAND_FEED)
          .fault(
              node.get(CutFields.HAND_FEED.name()),
              "give handFeed, feedPerTooth or tableFeed, only one of them");
    } else if (cut.get(CutFields.FEED_DRIVE) == FeedDrive.POWER) {
      at(CutFields.HAND_FEED)
          .fault(node.get(CutFields.HAND_FEED.name()), "a power feed turns no hand wheel");
    } else if (words != null && speed != null && teeth != null) {
      double teethPerSecond = speed * teeth;
      Band perTooth = SpokenShop.feedMPerS(words).map(v -> v / teethPerSecond);
      cut.put(CutFields.FEED_PER_TOOTH, perTooth);
      checkFeed(perTooth, CutFields.HAND_FEED);
    }
  }

  private void checkFeed(Band perTooth, Field<?, ?> field) {
    Range range = CutFields.FEED_PER_TOOTH.range();
    if (!range.holds(perTooth.low()) || !range.holds(perTooth.high())) {
      at(field)
          .fault(
              node.get(field.name()),
              "the feed per tooth that comes of this is out of range",
              range.allowed(place.units()),
              null,
              null);
    }
  }

  private void settleLeadIn() {
    Double offset = cut.get(CutFields.OFFSET);
    if (offset == null || thickness == null || diameter == null) {
      return;
    }
    double clear = clearOfTheEnd(offset, thickness, diameter);
    Double leadIn = cut.get(CutFields.LEAD_IN);
    if (!given(CutFields.LEAD_IN)) {
      cut.put(CutFields.LEAD_IN, diameter / 2);
    } else if (leadIn != null && leadIn < clear * (1 - 1e-9)) {
      var unit = CutFields.LEAD_IN.range().kind().unit(place.units());
      at(CutFields.LEAD_IN)
          .fault(
              node.get("leadIn"),
              "the feed would start with the cutter already in the stock",
              "at least " + MessageText.of(unit.fromSi(clear)),
              unit.code(),
              null);
    }
  }

  /** Least distance along X from the axis to the end of the stock at which no tooth touches. */
  private static double clearOfTheEnd(double offset, double thickness, double diameter) {
    double across = Math.max(0, Math.abs(offset) - thickness / 2);
    double radius = diameter / 2;
    return Math.sqrt(Math.max(0, radius * radius - across * across));
  }

  private boolean oneOf(Field<?, ?> first, Field<?, ?> second) {
    if (given(first) == given(second)) {
      String message =
          "enter a "
              + MessageText.spoken(first.name())
              + " or a "
              + MessageText.spoken(second.name());
      at(first).fault(null, given(first) ? message + ", not both" : message);
      return false;
    }
    return true;
  }

  private void needed(Field<?, ?> field, String message) {
    if (!given(field)) {
      at(field).fault(null, message);
    }
  }

  /** Whether the caller gave a value there, valid or not. */
  private boolean given(Field<?, ?> field) {
    return node.hasNonNull(field.name()) && !field.isUnknown(node.get(field.name()));
  }

  private void exceeds(double value, Quantity<?> field, double limit, String limitName) {
    OrderCheck.exceeds(value, field, limit, limitName, at(field));
  }

  private FieldLocation at(Field<?, ?> field) {
    return place.child(field.name());
  }
}

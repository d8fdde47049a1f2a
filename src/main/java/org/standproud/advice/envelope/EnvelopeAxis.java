package org.standproud.advice.envelope;

import java.util.stream.IntStream;
import org.standproud.advice.whatif.CutterSwap;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.setup.Cut;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Machine;
import org.standproud.setup.Setup;
import org.standproud.setup.units.QuantityKind;

/** The quantity on the horizontal axis of an envelope. */
enum EnvelopeAxis {
  /** f_z: on a top edge the radial depth is given by the stock and the offset. */
  FEED_PER_TOOTH(
      "feed per tooth",
      QuantityKind.LENGTH,
      "a_e is given by the stock on a top edge, so the depth is drawn over the feed per tooth"),
  /** a_e on a broad side. */
  RADIAL_DEPTH("radial depth", QuantityKind.LENGTH, "on a broad side depth and width are chosen"),
  /** n, for vibration. */
  SPINDLE_SPEED(
      "spindle speed",
      QuantityKind.SPINDLE_SPEED,
      "each speed stands for itself: between two of them the plate may sing where at both it does"
          + " not");

  private static final double LEAST_FEED_M = 5e-6;
  private static final double LEAST_WIDTH_M = 0.05e-3;

  /** Part of the thickness beyond which a side pass leaves hardly any plate. */
  private static final double MOST_OF_THE_STOCK = 0.8;

  private static final double BEYOND = 1.5;

  private final String words;
  private final QuantityKind kind;
  private final String why;

  EnvelopeAxis(String words, QuantityKind kind, String why) {
    this.words = words;
    this.kind = kind;
    this.why = why;
  }

  String words() {
    return words;
  }

  QuantityKind kind() {
    return kind;
  }

  String why() {
    return why;
  }

  /** The value of a set-up, in SI. */
  double of(Setup s) {
    return switch (this) {
      case FEED_PER_TOOTH -> s.cut().feedPerToothM().likely();
      case RADIAL_DEPTH -> s.sideDepthM();
      case SPINDLE_SPEED -> s.cut().spindleSpeedRevPerS();
    };
  }

  /** The set-up with another value and another axial depth, in SI. */
  Setup with(Setup s, double value, double depthM) {
    Cut cut = s.cut();
    SetupEditor rework = SetupEditor.of(s).depth(depthM);
    return switch (this) {
      case FEED_PER_TOOTH ->
          rework.feed(cut.feedPerToothM().times(value / cut.feedPerToothM().likely())).done();
      case RADIAL_DEPTH -> CutterSwap.withSideDepth(rework.done(), value);
      case SPINDLE_SPEED -> rework.speed(value).done();
    };
  }

  /** The values of the columns, rising, in SI: evenly by ratio, or the speeds of a geared head. */
  double[] columns(Setup s, int count) {
    CuttingRange range = s.stock().material().rangeFor(s.cutter().toolMaterial());
    Machine machine = s.machine();
    double now = of(s);
    return switch (this) {
      case FEED_PER_TOOTH ->
          spaced(
              Math.max(LEAST_FEED_M, Math.min(range.leastFeedPerToothM(), now) / BEYOND),
              BEYOND * Math.max(range.greatestFeedPerToothM(), now),
              count);
      case RADIAL_DEPTH ->
          spaced(
              Math.min(LEAST_WIDTH_M, now),
              Math.max(
                  now,
                  Math.min(s.cutter().diameterM(), MOST_OF_THE_STOCK * s.stock().thicknessM())),
              count);
      case SPINDLE_SPEED ->
          machine.speedsRevPerS().isEmpty()
              ? spaced(machine.leastSpeedRevPerS(), machine.greatestSpeedRevPerS(), count)
              : machine.speedsRevPerS().stream().mapToDouble(n -> n).sorted().toArray();
    };
  }

  /** Values evenly spaced by ratio. */
  static double[] spaced(double least, double greatest, int count) {
    double ratio = Math.pow(greatest / least, 1.0 / (count - 1));
    // The last is the exact upper bound: rounding up would pass the end of a cutting edge.
    return IntStream.range(0, count)
        .mapToDouble(i -> Math.min(greatest, least * Math.pow(ratio, i)))
        .toArray();
  }
}

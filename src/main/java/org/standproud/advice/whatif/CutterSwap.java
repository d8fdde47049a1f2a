package org.standproud.advice.whatif;

import org.standproud.mechanics.spindle.SpindleSpeeds;
import org.standproud.setup.Cutter;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;

/** Replaces the cutter of a set-up, with cutting data for the new one. */
public final class CutterSwap {

  /** Air between cutter and stock before the feed starts, in m. */
  private static final double AIR_M = 5e-3;

  private CutterSwap() {}

  /**
   * The set-up with another cutter: on the same side and to the same depths, as near the middle of
   * its published speeds as the machine allows, at the same feed per tooth if that is in its
   * published range.
   *
   * @param s the set-up
   * @param cutter the cutter
   */
  public static Setup with(Setup s, Cutter cutter) {
    CuttingRange range = s.stock().material().rangeFor(cutter.toolMaterial());
    double speedMPerS = Math.sqrt(range.leastSpeedMPerS() * range.greatestSpeedMPerS());
    double wanted = speedMPerS / (Math.PI * cutter.diameterM());
    double feedM = s.cut().feedPerToothM().likely();
    double allowed =
        Math.max(range.leastFeedPerToothM(), Math.min(feedM, range.greatestFeedPerToothM()));
    SetupEditor swapped =
        SetupEditor.of(s)
            .cutter(cutter)
            .speed(SpindleSpeeds.of(s.machine()).nearestRevPerS(wanted))
            .feed(s.cut().feedPerToothM().times(allowed / feedM))
            .leadIn(Math.max(s.cut().leadInM(), cutter.diameterM() / 2 + AIR_M));
    return s.cut().operation() == Operation.BROAD_SIDE
        ? swapped.offset(axisM(s, cutter, s.sideDepthM())).done()
        : swapped.done();
  }

  /** The set-up with another overlap in m, on the same side. */
  public static Setup withSideDepth(Setup s, double depthM) {
    return SetupEditor.of(s).offset(axisM(s, s.cutter(), depthM)).done();
  }

  private static double axisM(Setup s, Cutter cutter, double depthM) {
    double axisM = cutter.diameterM() / 2 + s.stock().thicknessM() / 2 - depthM;
    return Math.copySign(axisM, s.cut().offsetM());
  }
}

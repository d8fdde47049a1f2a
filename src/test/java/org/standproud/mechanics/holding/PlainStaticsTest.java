package org.standproud.mechanics.holding;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

/** Rows that follow from statics alone; own model, no publication. */
@Tag(PublishedTable.TESTS)
class PlainStaticsTest {

  private static final PublishedTable STATICS =
      new PublishedTable(Subject.HOLDING, "statics of two jaws, own model", SourceTag.DERIVED);

  /** 2 mu N against S F: 1200 N at .15 and S 2.5 needs 10 kN; 800 N at .2 and S 2 needs 4 kN. */
  @ParameterizedTest(name = "{0} N, mu {1}, S {2}: {3} kN [derived]")
  @CsvSource({"1200, .15, 2.5, 10", "800, .2, 2, 4"})
  void theForceThatKeepsAPullFromSlippingByAFactor(
      double pullN, double friction, double factor, double kilonewtons) {
    JawGrip grip =
        new JawGrip(kilonewtons * 1e3, friction, 1e9, 1e9, 0.1, 0.01, 0.02, false, false, false);
    STATICS
        .row("F " + pullN + " N, mu " + friction + ", N " + kilonewtons + " kN")
        .figure("slip margin", "", factor, grip.slipMargin(new Peaks(pullN, 0, 0, 0, 0, 0)), 1e-9);
  }

  /** N 20 kN, g 15: middle third 100 N m, rigid 300 N m, friction couple 30 N m at t 10. */
  @Test
  void theMomentsAGripOfFifteenMillimetresTakes() {
    double high = 1.5;
    RigidLimits whole =
        new RigidLimits(Bearing.wholeFace(0.015), Bearing.wholeFace(0.015), high, 0);
    STATICS
        .row("N 20 kN, g 15 mm, whole faces")
        .figure("rigid moment about the lip", "N.m", 300, whole.towardFixedN(20e3) * high, 1e-9)
        .figure(
            "friction couple, mu .15, t 10",
            "N.m",
            30,
            RigidLimits.frictionCoupleNm(0.15, 20e3, 0.010),
            1e-9);
    RigidLimits third =
        new RigidLimits(Bearing.withoutGap(0.015), Bearing.withoutGap(0.015), high, 0);
    double force = third.towardFixedN(20e3);
    STATICS
        .row("N 20 kN, g 15 mm, no gap at either lip")
        .figure("moment, the push back at g/3 counted", "N.m", 100, force * (high + 0.005), 1e-9);
  }

  /** H 60, g 15: a push of 740.7 N with S 2 makes F (H + g/2) = N g/(3 S) = 50 N m. */
  @Test
  void theTradesMiddleThirdRuleLiesNearTheNoGapLimit() {
    RigidLimits third =
        new RigidLimits(Bearing.withoutGap(0.015), Bearing.withoutGap(0.015), 0.060, 0);
    STATICS
        .row("N 20 kN, g 15 mm, H 60 mm, S 2, push at mid-grip level against the rule F (H + g/2)")
        .percent("F toward the fixed jaw", "N", 740.7, third.towardFixedN(20e3) / 2, 5)
        .percent("F away from it", "N", 740.7, third.awayN(20e3) / 2, 5);
  }
}

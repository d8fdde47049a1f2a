package org.standproud.mechanics.holding.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.Band;

/**
 * Corners of the load worked by hand from the sentences of {@link JawGrip}: 20 kN, friction 0.15, a
 * contact of 120 x 15 mm, the cut 60 mm above the jaws. 2 mu N L = 720 N m (own model).
 */
class JawGripCornersTest {

  private static final Band NONE = Band.exactly(0);
  private static final double FAR_TIP = 1e9;

  private static JawGrip grip(double clampN, double tipN, boolean seated) {
    return new JawGrip(clampN, .15, tipN, tipN, .120, .010, .015, seated, false, false);
  }

  private static HoldingLoad place(double xM, double offCentreM) {
    return new HoldingLoad(NONE, NONE, NONE, NONE, NONE, NONE, .06, xM, offCentreM);
  }

  private static double margin(JawGrip grip, HoldingLoad load, Peaks peaks) {
    return grip.combinedMargin(load, peaks);
  }

  private static final Peaks ALONG = new Peaks(1000, 0, 0, 0, 0, 0);

  /** Pitch 1000 N 75 mm = 75 N m, four times that and 120 N m: 323.11; seated twice: 192.09. */
  @Test
  void aPushAlongTheJawsPitchesTheStockAndASeatHalvesThat() {
    assertThat(margin(grip(20_000, FAR_TIP, false), place(0, 0), ALONG))
        .isCloseTo(720 / 323.1099, within(1e-5));
    assertThat(margin(grip(20_000, FAR_TIP, true), place(0, 0), ALONG))
        .isCloseTo(720 / 192.0937, within(1e-5));
    Peaks back = new Peaks(0, 1000, 0, 0, 0, 0);
    assertThat(margin(grip(20_000, FAR_TIP, true), place(0, 0), back))
        .isCloseTo(720 / 192.0937, within(1e-5));
  }

  /** A quarter of the thickness off the middle: 1 + 2/4; at a face twice, and never more. */
  @Test
  void aCutOffTheMiddleLoadsOneFaceMore() {
    double even = margin(grip(20_000, FAR_TIP, false), place(0, 0), ALONG);
    assertThat(margin(grip(20_000, FAR_TIP, false), place(0, .0025), ALONG))
        .isCloseTo(even / 1.5, within(1e-6));
    assertThat(margin(grip(20_000, FAR_TIP, false), place(0, .005), ALONG))
        .isCloseTo(even / 2, within(1e-6));
    assertThat(margin(grip(20_000, FAR_TIP, false), place(0, .008), ALONG))
        .isCloseTo(even / 2, within(1e-6));
  }

  /** At 40 mm 1 kN takes the resultant 60 mm out, to the end of the contact, at 12 times itself. */
  @Test
  void aPushAcrossFarFromTheMiddleYawsTheStockOutOfTheJaws() {
    Peaks across = new Peaks(0, 0, 1000, 0, 0, 0);
    assertThat(margin(grip(20_000, FAR_TIP, true), place(.04, 0), across))
        .isCloseTo(12, within(1e-6));
    assertThat(margin(grip(20_000, FAR_TIP, true), place(-.04, 0), across))
        .isCloseTo(12, within(1e-6));
    assertThat(margin(grip(20_000, 1000, true), place(0, 0), across)).isCloseTo(1, within(1e-9));
  }

  /** Seated: 1 kN down 20 mm beyond the end of the contact is 20 N m, twice that of 720. */
  @Test
  void aForceDownOnTheOverhangPitchesSeatedStockAndOverTheJawsItDoesNot() {
    Peaks down = new Peaks(0, 0, 0, 0, 0, 1000);
    JawGrip seated = grip(20_000, FAR_TIP, true);
    assertThat(margin(seated, place(.08, 0), down)).isCloseTo(18, within(1e-6));
    assertThat(margin(seated, place(-.08, 0), down)).isCloseTo(18, within(1e-6));
    assertThat(margin(seated, place(.04, 0), down)).isEqualTo(Margin.GREATEST);
    // unseated at 40 mm: 1 kN 120 mm and four times 40 N m
    assertThat(margin(grip(20_000, FAR_TIP, false), place(.04, 0), down))
        .isCloseTo(720 / 280.0, within(1e-6));
    // upward a seat does not take the force, and only halves the pitch: 120 + 2 40 N m
    assertThat(margin(seated, place(.04, 0), new Peaks(0, 0, 0, 0, 1000, 0)))
        .isCloseTo(720 / 200.0, within(1e-6));
  }

  /**
   * At half of the tip limit three quarters of the face bear: 2 mu (N - 1000) 0.75 L = 323.11 N m,
   * as 1 kN along the jaws asks, at N = 12 967 N.
   */
  @Test
  void aFaceThatRocksCountsLessForFriction() {
    Peaks both = new Peaks(1000, 0, 1000, 0, 0, 0);
    assertThat(margin(grip(12_967.03, 2000, false), place(0, 0), both)).isCloseTo(1, within(1e-4));
  }

  @Test
  void theLeastForceAlongAnAxisIsThePushTheOtherWay() {
    assertThat(Peaks.of(-10, 20, -30, 40, -50, 60)).isEqualTo(new Peaks(20, 10, 40, 30, 60, 50));
    assertThat(Peaks.of(10, 20, 30, 40, 50, 60)).isEqualTo(new Peaks(20, 0, 40, 0, 60, 0));
  }
}

package org.standproud.mechanics.direction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.ForceModel;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Spin;

/**
 * Signs by hand, clockwise, cutter fed toward +x. A tooth at phi stands at R (sin phi, cos phi) and
 * moves along (cos phi, -sin phi); it drags the work along its motion with F_t and presses it
 * outward with F_r. Straight ahead (phi = 90 degrees) that is F_r toward +x and F_t toward -y, the
 * movable jaw. Statics of one tooth; own derivation with the convention of Altintas 2012 ch. 2.
 */
class PassDirectionsTest {

  private static PassDirections directions(PassFixture pass) {
    return PassDirections.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut())).orElseThrow();
  }

  private static PassDirections directions(PassFixture pass, double radialRatio) {
    ForceModel law =
        new ForceModel.Kienzle(
            Band.exactly(1500e6),
            Band.exactly(0.22),
            Band.exactly(1),
            Band.exactly(radialRatio),
            Band.exactly(0));
    return PassDirections.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()).with(law))
        .orElseThrow();
  }

  @Test
  void aCentredFaceMillWiderThanTheStockPushesAcrossTheJawsAndThrustsOneWayAlongThem() {
    PassFixture pass = PassFixture.pass(63, 5, 10, 0, 0.12);
    Pushes steady = directions(pass, 0.35).steady();
    double across = steady.peakN(Way.TOWARD_MOVABLE_JAW).likely();
    assertThat(steady.occurs(Way.TOWARD_FIXED_JAW)).isEqualTo(Occurrence.NO);
    assertThat(steady.occurs(Way.LENGTHWISE_MINUS)).isEqualTo(Occurrence.NO);
    // the thrust: F_r = 0.35 F_t straight ahead, a little more where the tooth enters
    assertThat(steady.peakN(Way.LENGTHWISE_PLUS).likely()).isBetween(0.35 * across, 0.52 * across);
    assertThat(steady.occurs(Way.UP)).isEqualTo(Occurrence.NO);
  }

  @ParameterizedTest(name = "fed {0}, turning {1}")
  @CsvSource({"PLUS_X,CLOCKWISE", "MINUS_X,CLOCKWISE", "PLUS_X,COUNTERCLOCKWISE"})
  void aCutterNarrowerThanTheStockBitesLengthwiseWhicheverWayItIsFed(
      FeedDirection feed, Spin spin) {
    PassFixture slot = PassFixture.pass(20, 2, 40, 0, 0.05).turning(spin, feed);
    // tangential force alone, one tooth at a time, force in proportion to the chip: sin cos = 1/2
    ForceModel tangential =
        new ForceModel.Kienzle(
            Band.exactly(1500e6),
            Band.exactly(0),
            Band.exactly(1),
            Band.exactly(0),
            Band.exactly(0));
    ForceInput input = ForceInput.of(slot.stock(), slot.cutter(), slot.cut()).with(tangential);
    Pushes steady = PassDirections.of(input).orElseThrow().steady();
    double peak = 1500 * 2 * 0.05;
    assertThat(steady.peakN(Way.LENGTHWISE_PLUS).likely()).isCloseTo(peak / 2, within(0.01 * peak));
    assertThat(steady.peakN(Way.LENGTHWISE_MINUS).likely())
        .isCloseTo(peak / 2, within(0.01 * peak));
    Pushes withThrust = directions(slot).steady();
    assertThat(withThrust.occurs(Way.LENGTHWISE_PLUS)).isEqualTo(Occurrence.YES);
    assertThat(withThrust.occurs(Way.LENGTHWISE_MINUS)).isEqualTo(Occurrence.YES);
  }

  @Test
  void reversingTheFeedOfACentredFaceMillSwapsTheJawThatTakesTheLoad() {
    PassFixture pass = PassFixture.pass(63, 5, 10, 0, 0.12);
    Pushes toward = directions(pass).steady();
    Pushes back = directions(pass.turning(Spin.CLOCKWISE, FeedDirection.MINUS_X)).steady();
    assertThat(toward.occurs(Way.TOWARD_MOVABLE_JAW)).isEqualTo(Occurrence.YES);
    assertThat(toward.occurs(Way.TOWARD_FIXED_JAW)).isEqualTo(Occurrence.NO);
    assertThat(back.occurs(Way.TOWARD_FIXED_JAW)).isEqualTo(Occurrence.YES);
    assertThat(back.occurs(Way.TOWARD_MOVABLE_JAW)).isEqualTo(Occurrence.NO);
    assertThat(back.peakN(Way.TOWARD_FIXED_JAW)).isEqualTo(toward.peakN(Way.TOWARD_MOVABLE_JAW));
  }

  /**
   * By hand: D 20, a_e 3, cutter on the movable-jaw side, clockwise toward +x: conventional, arc 0
   * to 45.573 deg. First touch at 45.573 deg, on the corner at the movable-jaw side (y = -5). There
   * y = -F_t 0.714 + F_r 0.7: toward -y for any F_r under F_t, where the cutter is.
   */
  @Test
  void aConventionalSideCutFirstPullsTheStockTowardTheCutter() {
    PassFixture pass = PassFixture.pass(20, 4, 10, -12, 0.05);
    FirstContact touch = directions(pass).firstContact();
    assertThat(Math.toDegrees(touch.angleRad())).isCloseTo(45.573, within(1e-3));
    assertThat(touch.place()).isEqualTo(ContactPlace.CORNER_AT_MOVABLE_JAW_SIDE);
    assertThat(touch.xM()).isCloseTo(-0.1, within(1e-12));
    assertThat(touch.yM()).isCloseTo(-0.005, within(1e-12));
    assertThat(touch.chipM().likely()).isCloseTo(0.05e-3 * 0.714143, within(1e-10));
    assertThat(touch.pullTowardCutterN()).isNotNull();
    assertThat(touch.pullTowardCutterN().low()).isPositive();
    assertThat(touch.force().xN().low()).as("ahead, with the cutter").isPositive();
  }

  /** The same cutter fed back: climb, arc 134.427 to 180 deg; y' = -F_t 0.714 - F_r 0.7. */
  @Test
  void aClimbSideCutFirstPushesTheStockToTheFarJaw() {
    PassFixture pass =
        PassFixture.pass(20, 4, 10, -12, 0.05).turning(Spin.CLOCKWISE, FeedDirection.MINUS_X);
    FirstContact touch = directions(pass).firstContact();
    assertThat(Math.toDegrees(touch.angleRad())).isCloseTo(134.427, within(1e-3));
    assertThat(touch.place()).isEqualTo(ContactPlace.CORNER_AT_MOVABLE_JAW_SIDE);
    assertThat(touch.xM()).isCloseTo(0.1, within(1e-12));
    assertThat(touch.pullTowardCutterN()).isNotNull();
    assertThat(touch.pullTowardCutterN().high()).isNegative();
    assertThat(touch.force().yN().low()).as("toward the fixed jaw").isPositive();
    assertThat(touch.force().xN().likely())
        .as("pulled toward the oncoming cutter, which moves toward -x")
        .isPositive();
  }

  @Test
  void aFaceMillOverTheMiddleTouchesTheEndFaceFirst() {
    FirstContact touch = directions(PassFixture.pass(63, 5, 10, 2, 0.12)).firstContact();
    assertThat(touch.place()).isEqualTo(ContactPlace.END_FACE);
    assertThat(touch.yM()).isCloseTo(0.002, within(1e-12));
    assertThat(touch.pullTowardCutterN()).isNull();
    assertThat(touch.force().yN().high()).as("toward the movable jaw").isNegative();
    assertThat(touch.force().xN().low()).as("away from the cutter, along").isPositive();
    assertThat(touch.startsInStock()).isFalse();
    assertThat(touch.greatestWhileFillingN().likely()).isPositive();
  }

  /**
   * By hand: kc = 2000 MPa (mc 0), f_z 0.05, a_p 2, F_r = 0.3 F_t. A tooth straight ahead gives F_t
   * = 200 N, in the plane 200 sqrt(1.09) = 208.81 N: the first blow. In the slot the force of a
   * tooth is half of that, standing still, and half turning with twice its angle; of eight teeth
   * four cut, 45 degrees apart, whose turning halves cancel: 4 x 104.40 = 417.61 N.
   */
  @Test
  void inASlotAnEightToothCutterDoublesItsFirstBlowAsTheCutFills() {
    ForceModel law =
        new ForceModel.Kienzle(
            Band.exactly(2000e6),
            Band.exactly(0),
            Band.exactly(1),
            Band.exactly(0.3),
            Band.exactly(0));
    PassFixture slot = PassFixture.pass(20, 8, 40, 0, 0.05);
    FirstContact touch = first(slot, law);
    assertThat(touch.force().xN().likely()).isCloseTo(60, within(1e-6));
    assertThat(touch.force().yN().likely()).isCloseTo(-200, within(1e-6));
    assertThat(touch.greatestWhileFillingN().likely()).isCloseTo(417.61, within(0.3));
    assertThat(touch.jumpWhileFillingN().likely()).isCloseTo(208.81, within(0.3));
    assertThat(touch.jumpWhileFillingN().high())
        .as("the first tooth may only graze")
        .isGreaterThanOrEqualTo(417.61);
    assertThat(first(PassFixture.pass(20, 2, 40, 0, 0.05), law).jumpWhileFillingN().likely())
        .as("one tooth at a time: its whole bite is the most there is")
        .isCloseTo(0, within(0.3));
  }

  private static FirstContact first(PassFixture pass, ForceModel law) {
    return PassDirections.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()).with(law))
        .orElseThrow()
        .firstContact();
  }

  @Test
  void aHelicalEndMillMayLiftTheStockOutOfTheJaws() {
    PassFixture pass = PassFixture.climb(20, 4, 5, 0.05).shaped(90, 10, 35, 0);
    assertThat(directions(pass).pass().occurs(Way.UP)).isEqualTo(Occurrence.YES);
  }

  @ParameterizedTest(name = "offset {0} mm")
  @CsvSource({"0", "4", "-9", "25", "-30"})
  void aLeftHandCutterOnTheMirroredStockDoesTheMirroredThing(double offset) {
    PassFixture pass = PassFixture.pass(63, 5, 10, offset, 0.12);
    PassDirections right = directions(pass);
    PassDirections left =
        directions(pass.at(-offset).turning(Spin.COUNTERCLOCKWISE, FeedDirection.PLUS_X));
    assertThat(left.pass().peakN(Way.TOWARD_FIXED_JAW).high())
        .isCloseTo(right.pass().peakN(Way.TOWARD_MOVABLE_JAW).high(), within(1e-9));
    assertThat(left.pass().peakN(Way.LENGTHWISE_PLUS).high())
        .isCloseTo(right.pass().peakN(Way.LENGTHWISE_PLUS).high(), within(1e-9));
    assertThat(left.firstContact().yM()).isCloseTo(-right.firstContact().yM(), within(1e-12));
    assertThat(left.firstContact().force().yN().likely())
        .isCloseTo(-right.firstContact().force().yN().likely(), within(1e-9));
  }

  /**
   * The corner of the stock of 10 mm is 5 mm out: an axis there or nearer stands over the stock.
   */
  @Test
  void onlyAnAxisBesideTheStockCanPullItTowardTheCutter() {
    PassFixture pass = PassFixture.pass(20, 4, 10, -5, 0.05);
    assertThat(directions(pass).firstContact().pullTowardCutterN()).isNull();
    assertThat(directions(pass.at(-5.1)).firstContact().pullTowardCutterN()).isNotNull();
    assertThat(directions(pass.at(5.1)).firstContact().pullTowardCutterN()).isNotNull();
  }

  /**
   * Lead-in 200 mm. D 420 touches 210 mm ahead of its axis in the middle, so its feed starts in the
   * stock; D 390 does not. At an offset where the stock reaches to 60 deg only, D 420 touches 210
   * sin 60 = 182 mm ahead.
   */
  @Test
  void theFeedStartsInTheStockOnlyIfTheCutterReachesFartherThanTheLeadIn() {
    assertThat(directions(PassFixture.pass(420, 12, 10, 0, 0.1)).firstContact().startsInStock())
        .isTrue();
    assertThat(directions(PassFixture.pass(390, 12, 10, 0, 0.1)).firstContact().startsInStock())
        .isFalse();
    assertThat(directions(PassFixture.pass(420, 12, 10, -110, 0.1)).firstContact().startsInStock())
        .isFalse();
  }

  @Test
  void aLeftHandCutterTouchesTheOtherCornerAtTheSameAngle() {
    PassFixture pass = PassFixture.pass(20, 4, 10, 12, 0.05);
    FirstContact touch = directions(pass).firstContact();
    assertThat(touch.place()).isEqualTo(ContactPlace.CORNER_AT_FIXED_JAW_SIDE);
    assertThat(touch.yM()).isCloseTo(0.005, within(1e-12));
  }

  /** KAPR 45 deg without a corner: the chip straight ahead is 0.12 sin 45 = 0.08485 mm. */
  @Test
  void theFirstChipIsThinnedByTheEnteringAngle() {
    FirstContact touch =
        directions(PassFixture.pass(63, 5, 10, 0, 0.12).shaped(45, 2, 0, 0)).firstContact();
    assertThat(touch.chipM().likely()).isCloseTo(0.0848528e-3, within(1e-9));
  }
}

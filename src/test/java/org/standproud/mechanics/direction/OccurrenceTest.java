package org.standproud.mechanics.direction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.VectorBand;
import org.standproud.setup.Band;

class OccurrenceTest {

  private static final Band NONE = Band.exactly(0);

  private static AxisForce axis(Band greatest, Band least) {
    return new AxisForce(greatest, NONE, least);
  }

  @Test
  void aPushNoGreaterThanWhatIsNegligibleDoesNotHappen() {
    assertThat(Occurrence.of(new Band(1, 2, 2), 2)).isEqualTo(Occurrence.NO);
    assertThat(Occurrence.of(new Band(1, 2, 2.1), 2)).isEqualTo(Occurrence.MAYBE);
    assertThat(Occurrence.of(new Band(0, 2.1, 3), 2)).isEqualTo(Occurrence.YES);
  }

  /** Worked by hand: 2 % of the 1000 N in the plane are 20 N. */
  @Test
  void aPushOfLessThanAFiftiethOfTheGreatestForceDoesNotCount() {
    Pushes pushes =
        Pushes.of(
            axis(Band.exactly(21), Band.exactly(-19)),
            axis(new Band(900, 1000, 1100), NONE),
            axis(NONE, new Band(-30, -20, -5)),
            new Band(900, 1000, 1100));
    assertThat(pushes.negligibleN()).isCloseTo(20, within(1e-9));
    assertThat(pushes.occurs(Way.LENGTHWISE_PLUS)).isEqualTo(Occurrence.YES);
    assertThat(pushes.occurs(Way.LENGTHWISE_MINUS)).isEqualTo(Occurrence.NO);
    assertThat(pushes.occurs(Way.TOWARD_MOVABLE_JAW)).isEqualTo(Occurrence.NO);
    assertThat(pushes.occurs(Way.DOWN)).isEqualTo(Occurrence.MAYBE);
    assertThat(pushes.peakN(Way.DOWN)).isEqualTo(new Band(5, 20, 30));
    assertThat(pushes.occurs(Way.UP)).isEqualTo(Occurrence.NO);
  }

  private static FirstContact touch(Band xN, Band yN, Band fillingN) {
    return new FirstContact(
        1,
        ContactPlace.END_FACE,
        0,
        0,
        Band.exactly(1e-4),
        new VectorBand(xN, yN, NONE),
        null,
        fillingN,
        false);
  }

  /**
   * Worked by hand: a first blow of (30, -40) N is 50 N likely and (60, -80) N, 100 N, at most. Up
   * to 800 N is a jump of 750; from 500 N it is 400 at least and 1000 at most.
   */
  @Test
  void theJumpIsFromTheFirstBlowToTheFullCut() {
    FirstContact touch =
        touch(new Band(20, 30, 60), new Band(-80, -40, -20), new Band(500, 800, 1000));
    assertThat(touch.jumpWhileFillingN().likely()).isCloseTo(750, within(1e-9));
    assertThat(touch.jumpWhileFillingN().low()).isCloseTo(400, within(1e-9));
    assertThat(touch.jumpWhileFillingN().high()).isCloseTo(1000, within(1e-9));
  }

  @Test
  void aCutThatIsFullAtTheFirstBlowDoesNotJump() {
    Band jump = touch(Band.exactly(300), Band.exactly(400), Band.exactly(500)).jumpWhileFillingN();
    assertThat(jump.low()).isZero();
    assertThat(jump.likely()).isZero();
    assertThat(jump.high()).as("the first blow may be anything up to it").isEqualTo(500);
  }
}

package org.standproud.mechanics.engagement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Spin;

class FeedFrameTest {

  /**
   * Independent of the sign rule: a tooth is placed in the vise frame by turning it bodily, and its
   * velocity by a small turn in the sense of the spin.
   */
  @Property
  void aToothRunsWithTheSpinAndMeetsTheStockAheadOfTheFeed(
      @ForAll Spin spin,
      @ForAll FeedDirection feed,
      @ForAll @DoubleRange(min = 0.01, max = 3.13) double phi) {
    FeedFrame frame = FeedFrame.of(spin, feed);
    double x = frame.viseX(Math.sin(phi));
    double y = frame.viseY(Math.cos(phi));
    int ahead = feed == FeedDirection.PLUS_X ? 1 : -1;
    assertThat(x * ahead).as("the tooth stands ahead of the axis").isPositive();
    double nextX = frame.viseX(Math.sin(phi + 1e-6));
    double nextY = frame.viseY(Math.cos(phi + 1e-6));
    // seen from above with x right and y up, counterclockwise is the positive cross product
    double cross = x * nextY - y * nextX;
    assertThat(cross * 1e6).isCloseTo(spin == Spin.COUNTERCLOCKWISE ? 1 : -1, within(1e-6));
    assertThat(frame.feedY(frame.viseY(0.7))).isEqualTo(0.7);
  }
}

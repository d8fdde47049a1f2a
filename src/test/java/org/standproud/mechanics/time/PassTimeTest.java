package org.standproud.mechanics.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;

class PassTimeTest {

  private static final PublishedTable KALPAKJIAN =
      new PublishedTable(
          Subject.TIME,
          "Kalpakjian and Schmid, Manufacturing Engineering and Technology, ex. 24.1 and 24.2",
          SourceTag.MEMORY);

  /**
   * Kalpakjian and Schmid, Manufacturing Engineering and Technology, ex. 24.2: D 150, 500 long, 600
   * mm/min, 10 teeth, 100 rpm: .6 mm a tooth and 65 s [memory, arithmetic re-checked].
   */
  @Tag(PublishedTable.TESTS)
  @Test
  void aFaceMillPassesHalfAMetreInSixtyFiveSeconds() {
    Band feed = PassTime.tableFeedMPerS(Band.exactly(.6e-3), 10, 100 / 60.0);
    double time = PassTime.onePassS(new PassPath(.075, .5, .075), feed).likely();
    KALPAKJIAN
        .row("ex. 24.2, D 150, 500 mm long")
        .figure("v_f", "mm/min", 600, feed.likely() * 60e3, 1e-9)
        .figure("t", "s", 65, time, 1e-9);
  }

  /** The same book, ex. 24.1: .25 mm a tooth, 20 teeth, 100 rpm give 500 mm/min [memory]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void theTableGoesByFeedPerToothTeethAndSpeed() {
    double feed = PassTime.tableFeedMPerS(Band.exactly(.25e-3), 20, 100 / 60.0).likely();
    KALPAKJIAN.row("ex. 24.1, 20 teeth").figure("v_f", "mm/min", 500, feed * 60e3, 1e-9);
  }

  @Test
  void aDepthThatDividesEvenlyGainsNoPass() {
    assertThat(PassTime.passes(.003, .001)).isEqualTo(3);
    assertThat(PassTime.passes(.0031, .001)).isEqualTo(4);
    assertThat(PassTime.passes(.0005, .001)).isEqualTo(1);
    assertThat(PassTime.passes(0, .001)).isZero();
  }

  @Property
  void enoughPassesAlwaysTakeOffTheWholeAndOneLessNeverDoes(
      @ForAll @Scale(5) @DoubleRange(min = .0001, max = .1) double whole,
      @ForAll @Scale(5) @DoubleRange(min = .0001, max = .1) double each) {
    int passes = PassTime.passes(whole, each);
    assertThat(passes * each).isGreaterThanOrEqualTo(whole - 1e-8);
    assertThat((passes - 1) * each).isLessThan(whole);
  }

  @Test
  void anUncertainFeedGivesAnUncertainTimeWithTheSlowFeedLongest() {
    Band time = PassTime.onePassS(new PassPath(.05, .1, .05), new Band(.001, .002, .004));
    assertThat(time).isEqualTo(new Band(50, 100, 200));
  }

  @Test
  void aTableThatStandsStillIsRefused() {
    assertThatThrownBy(() -> PassTime.onePassS(new PassPath(0, .1, 0), Band.exactly(0)))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> PassTime.passes(.1, 0)).isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> new PassPath(-.1, .1, 0)).isInstanceOf(OutsideValidity.class);
  }
}

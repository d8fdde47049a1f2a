package org.standproud.mechanics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;

class SampleTest {

  @Test
  void percentilesAgreeWithAGeneralPurposeLibrary() {
    double[] values = IntStream.range(0, 37).mapToDouble(i -> Math.sin(i * 7.0) * i).toArray();
    Percentile library = new Percentile().withEstimationType(EstimationType.R_7);
    library.setData(values);
    Band band = Sample.of(values).band();
    assertThat(band.low()).isCloseTo(library.evaluate(5), within(1e-12));
    assertThat(band.likely()).isCloseTo(library.evaluate(50), within(1e-12));
    assertThat(band.high()).isCloseTo(library.evaluate(95), within(1e-12));
  }

  @Test
  void aDrawThatLetsGoHasNoNumberAndDoesNotMoveThePercentiles() {
    Sample sample = Sample.of(new double[] {1, Double.NaN, 2, 3});
    assertThat(sample.share()).isEqualTo(0.75);
    assertThat(sample.band().likely()).isEqualTo(2);
    assertThat(sample.share(v -> v > 0)).isEqualTo(0.75);
    assertThat(sample.isExact()).isFalse();
  }

  @Test
  void aNumberThatNeverExistsIsNoSample() {
    assertThatThrownBy(() -> Sample.of(new double[] {Double.NaN}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aSpreadBandGivesItsPercentilesBack() {
    Band band = new Band(-2, 1, 9);
    Band back = Sample.spread(band, 3).band();
    assertThat(back.low()).isCloseTo(-2, within(0.05));
    assertThat(back.likely()).isCloseTo(1, within(0.05));
    assertThat(back.high()).isCloseTo(9, within(0.05));
  }

  @Test
  void spreadsOfDifferentStreamsAreIndependent() {
    Band band = new Band(0, 1, 2);
    Sample a = Sample.spread(band, 1);
    Sample b = Sample.spread(band, 2);
    long both = IntStream.range(0, Sample.DRAWS).filter(i -> a.at(i) > 1 && b.at(i) > 1).count();
    assertThat((double) both / Sample.DRAWS).isCloseTo(0.25, within(0.08));
  }

  @Test
  void drawSetsCountDrawByDraw() {
    DrawSet even = DrawSet.where(100, i -> i % 2 == 0);
    DrawSet low = DrawSet.where(100, i -> i < 50);
    assertThat(even.and(low).share()).isEqualTo(0.25);
    assertThat(even.or(low).share()).isEqualTo(0.75);
    assertThat(even.not().count()).isEqualTo(50);
    assertThat(even.and(even.not())).isEqualTo(DrawSet.none(100));
    assertThat(even.or(even.not())).isEqualTo(DrawSet.all(100));
  }
}

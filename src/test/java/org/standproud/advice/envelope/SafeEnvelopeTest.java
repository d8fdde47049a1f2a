package org.standproud.advice.envelope;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.ComputationTest;
import org.standproud.advice.DemoShop;
import org.standproud.advice.whatif.Trials;
import org.standproud.setup.Setup;

/** Inside the envelope nothing stops the cut; outside something does. */
@ComputationTest
class SafeEnvelopeTest {

  /** Points in each of four envelopes; {@code -Dtest.envelope.inside=250} tries a thousand. */
  private static final int INSIDE = Integer.getInteger("test.envelope.inside", 75);

  private static final int OUTSIDE = INSIDE / 5;

  private static final int FINENESS = 12;

  private static final Envelope FIRST =
      SafeEnvelope.cut(DemoShop.setup("01"), DemoShop.trials(), FINENESS);

  @ParameterizedTest
  @ValueSource(strings = {"01", "02", "05", "07"})
  void insideNoStopFailsOrIsOpenAndOutsideOneDoes(String name) {
    Setup setup = DemoShop.setup(name);
    Trials trials = DemoShop.trials();
    Envelope envelope = SafeEnvelope.cut(setup, trials, FINENESS);
    EnvelopeAxis across =
        envelope.over().equals(EnvelopeAxis.FEED_PER_TOOTH.words())
            ? EnvelopeAxis.FEED_PER_TOOTH
            : EnvelopeAxis.RADIAL_DEPTH;
    double[] columns = across.columns(setup, FINENESS);
    double[] depths = SafeEnvelope.depthsM(setup, FINENESS);
    List<double[]> inside = between(envelope, columns, depths[0], true);
    List<double[]> outside = between(envelope, columns, depths[depths.length - 1], false);
    assertThat(inside).isNotEmpty();
    for (double[] point : points(inside, INSIDE)) {
      assertThat(trials.of(across.with(setup, point[0], point[1])).isStopped())
          .as("inside at %s, %s", point[0], point[1])
          .isFalse();
    }
    for (double[] point : points(outside, outside.isEmpty() ? 0 : OUTSIDE)) {
      assertThat(trials.of(across.with(setup, point[0], point[1])).isStopped())
          .as("outside at %s, %s", point[0], point[1])
          .isTrue();
    }
  }

  /**
   * Boxes between two neighbouring columns, as left, right and two depths in m: up to the lower of
   * their free depths, or from the higher of their refused ones. The set-ups here are metric: the
   * envelope is in mm.
   */
  private static List<double[]> between(
      Envelope envelope, double[] columns, double endM, boolean inside) {
    List<double[]> boxes = new ArrayList<>();
    for (int i = 0; i + 1 < columns.length; i++) {
      Column left = envelope.columns().get(i);
      Column right = envelope.columns().get(i + 1);
      Double here = inside ? left.greatestDepth() : left.refusedDepth();
      Double next = inside ? right.greatestDepth() : right.refusedDepth();
      if (here != null && next != null) {
        double edgeM = (inside ? Math.min(here, next) : Math.max(here, next)) / 1000;
        boxes.add(new double[] {columns[i], columns[i + 1], edgeM, endM});
      }
    }
    return boxes;
  }

  private static List<double[]> points(List<double[]> boxes, int count) {
    Random random = new Random(20261125);
    return IntStream.range(0, count)
        .mapToObj(i -> boxes.get(random.nextInt(boxes.size())))
        .map(b -> new double[] {between(random, b[0], b[1]), between(random, b[2], b[3])})
        .toList();
  }

  private static double between(Random random, double least, double greatest) {
    return least * Math.pow(greatest / least, random.nextDouble());
  }

  @Test
  void moreFeedNeverAllowsMoreDepthWhereHoldingIsTheLimit() {
    List<Double> depths =
        FIRST.columns().stream()
            .map(c -> c.greatestDepth() == null ? 0 : c.greatestDepth())
            .toList();
    assertThat(depths).anyMatch(depth -> depth > 0);
    assertThat(depths).isSortedAccordingTo((a, b) -> Double.compare(b, a));
  }

  @Test
  void everyEdgeNamesTheCardThatBoundsItAndItsTitle() {
    for (Column column : FIRST.columns()) {
      assertThat(column.limits().isEmpty()).isEqualTo(column.refusedDepth() == null);
      assertThat(FIRST.titles().keySet()).containsAll(column.limits());
    }
  }

  @Test
  void aPlateThatNoDepthClearsSaysWhatStandsAgainstEveryDepth() {
    Envelope envelope = SafeEnvelope.cut(DemoShop.setup("11"), DemoShop.trials(), FINENESS);
    assertThat(envelope.columns()).allMatch(column -> column.greatestDepth() == null);
    assertThat(envelope.always()).isNotEmpty();
  }

  /** A blow at the top of a tall plate that rocks on a high spot turns it over at any depth. */
  @Test
  void aTallPlateThatMayRockIsNotRoughedAtAnyDepth() {
    Envelope envelope = SafeEnvelope.cut(DemoShop.setup("04"), DemoShop.trials(), FINENESS);
    assertThat(envelope.columns()).allMatch(column -> column.greatestDepth() == null);
    assertThat(envelope.always()).contains("HOLD-014");
  }

  /** The deepest level is the end of the cutting edge, and not a rounding error beyond it. */
  @Test
  void theDeepestLevelIsAsDeepAsTheEdgeReaches() {
    for (String name : DemoShop.names()) {
      Setup setup = DemoShop.setup(name);
      double[] depths = SafeEnvelope.depthsM(setup, FINENESS);
      double most = Math.min(setup.cutter().greatestDepthM(), setup.stickOutM());
      assertThat(depths[depths.length - 1])
          .isLessThanOrEqualTo(Math.max(most, setup.cut().axialDepthM()));
    }
  }

  @Test
  void onAGearedHeadTheColumnsAreItsSpeeds() {
    Setup setup = DemoShop.setup("01");
    Envelope envelope = SafeEnvelope.speed(setup, DemoShop.trials(), FINENESS);
    assertThat(envelope.columns()).hasSameSizeAs(setup.machine().speedsRevPerS());
  }
}

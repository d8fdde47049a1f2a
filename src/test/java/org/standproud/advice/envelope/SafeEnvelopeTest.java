package org.standproud.advice.envelope;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.advice.DemoShop;
import org.standproud.advice.trial.Trials;
import org.standproud.setup.Setup;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Inside the envelope nothing stops the cut; outside something does. */
class SafeEnvelopeTest {

  /** Points judged at random; {@code -Dstandproud.envelope.points=1000} for the full count. */
  private static final int POINTS = Integer.getInteger("standproud.envelope.points", 100);

  private static final int FINENESS = 12;

  @ParameterizedTest
  @ValueSource(strings = {"01", "02", "04", "08"})
  void insideNoStopFailsOrIsOpenAndOutsideOneDoes(String name) {
    Setup setup = DemoShop.setup(name);
    Trials trials = DemoShop.trials();
    Envelope envelope = SafeEnvelope.cut(setup, trials, FINENESS);
    Across across =
        envelope.over().equals(Across.FEED_PER_TOOTH.words())
            ? Across.FEED_PER_TOOTH
            : Across.RADIAL_DEPTH;
    double[] columns = across.columns(setup, FINENESS);
    double[] depths = SafeEnvelope.depthsM(setup, FINENESS);
    Random random = new Random(20261125);
    int inside = 0;
    int outside = 0;
    for (int i = 0; i < POINTS; i++) {
      int column = random.nextInt(columns.length - 1);
      Column left = envelope.columns().get(column);
      Column right = envelope.columns().get(column + 1);
      double x = between(random, columns[column], columns[column + 1]);
      double y = between(random, depths[0], depths[depths.length - 1]);
      double shownM = y * setupScale(setup);
      boolean stopped = trials.of(across.with(setup, x, y)).isStopped();
      if (below(shownM, left) && below(shownM, right)) {
        inside++;
        assertThat(stopped).as("inside at %s, %s", x, y).isFalse();
      } else if (above(shownM, left) && above(shownM, right)) {
        outside++;
        assertThat(stopped).as("outside at %s, %s", x, y).isTrue();
      }
    }
    assertThat(inside + outside).isGreaterThan(POINTS / 4);
  }

  /** The set-ups here are metric: the envelope is in mm. */
  private static double setupScale(Setup setup) {
    assertThat(setup.units().words()).isEqualTo("metric");
    return 1000;
  }

  private static double between(Random random, double least, double greatest) {
    return least * Math.pow(greatest / least, random.nextDouble());
  }

  private static boolean below(double depth, Column column) {
    return column.greatestDepth() != null && depth <= column.greatestDepth();
  }

  private static boolean above(double depth, Column column) {
    return column.refusedDepth() != null && depth >= column.refusedDepth();
  }

  @Test
  void moreFeedNeverAllowsMoreDepthWhereHoldingIsTheLimit() {
    Envelope envelope = SafeEnvelope.cut(DemoShop.setup("08"), DemoShop.trials(), FINENESS);
    List<Double> depths =
        envelope.columns().stream()
            .map(c -> c.greatestDepth() == null ? 0 : c.greatestDepth())
            .toList();
    assertThat(depths).isSortedAccordingTo((a, b) -> Double.compare(b, a));
  }

  @Test
  void everyEdgeNamesTheCardThatBoundsItAndItsTitle() {
    Envelope envelope = SafeEnvelope.cut(DemoShop.setup("01"), DemoShop.trials(), FINENESS);
    for (Column column : envelope.columns()) {
      assertThat(column.limits().isEmpty()).isEqualTo(column.refusedDepth() == null);
      assertThat(envelope.titles().keySet()).containsAll(column.limits());
    }
  }

  @Test
  void aPlateThatNoDepthClearsSaysWhatStandsAgainstEveryDepth() {
    Envelope envelope = SafeEnvelope.cut(DemoShop.setup("11"), DemoShop.trials(), FINENESS);
    assertThat(envelope.columns()).allMatch(column -> column.greatestDepth() == null);
    assertThat(envelope.always()).isNotEmpty();
  }

  @Test
  void onAGearedHeadTheColumnsAreItsSpeeds() {
    Setup setup = DemoShop.setup("01");
    Envelope envelope = SafeEnvelope.speed(setup, DemoShop.trials(), FINENESS);
    assertThat(envelope.columns()).hasSameSizeAs(setup.machine().speedsRevPerS());
  }

  @Test
  void theDrawingIsWellFormedAndShowsTheSetUpAsAPoint() throws Exception {
    Envelope envelope = SafeEnvelope.cut(DemoShop.setup("01"), DemoShop.trials(), FINENESS);
    Document drawing =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(EnvelopeDrawing.svg(envelope))));
    assertThat(drawing.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(drawing.getElementsByTagName("circle").getLength()).isOne();
    assertThat(drawing.getElementsByTagName("rect").getLength()).isPositive();
  }
}

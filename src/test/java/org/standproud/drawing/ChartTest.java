package org.standproud.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.envelope.Column;
import org.standproud.advice.envelope.Envelope;
import org.standproud.mechanics.curves.EdgeCurve;
import org.standproud.mechanics.curves.StabilityCurve;
import org.standproud.mechanics.history.ForceHistory;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.web.SeedSetups;
import org.w3c.dom.Element;

class ChartTest {

  private static final double ROUNDING = 0.02;

  static Stream<String> seeds() {
    return SeedSetups.names().stream();
  }

  private static Envelope envelope(List<Column> columns, double now, double depth, boolean in) {
    return new Envelope(
        "feed per tooth",
        "mm",
        "mm",
        "no stop fails",
        "why",
        columns,
        now,
        depth,
        in,
        List.of(),
        Map.of(),
        true,
        1);
  }

  @Test
  void theFreeRegionReachesNoHigherThanTheLowerOfTwoNeighbours() {
    Picture picture =
        new Picture(
            EnvelopeChart.of(
                envelope(
                    List.of(
                        new Column(0.05, 2.0, 2.5, List.of("HOLD-005")),
                        new Column(0.1, 1.0, 1.2, List.of("VIB-001"))),
                    0.1,
                    1.0,
                    true),
                "e"));
    double[] free = picture.points("free");
    double here = picture.number("here", "cy");
    assertThat(free[5]).as("top of the region").isCloseTo(here, within(ROUNDING));
    assertThat(free[7]).isCloseTo(here, within(ROUNDING));
    assertThat(picture.words())
        .contains("HOLD-005")
        .contains("VIB-001")
        .contains("this cut")
        .contains("axial depth, mm")
        .contains("feed per tooth, mm");
  }

  @Test
  void whereNoDepthIsFreeTheChartSaysSo() {
    Picture picture =
        new Picture(
            EnvelopeChart.of(
                envelope(
                    List.of(
                        new Column(0.05, null, 0.05, List.of("HOLD-005")),
                        new Column(0.1, null, 0.05, List.of("HOLD-005"))),
                    0.1,
                    1.0,
                    false),
                "e"));
    assertThat(picture.part("free")).isEmpty();
    assertThat(picture.words()).contains("no depth is free").contains("HOLD-005");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everySetUpHasChartsInItsOwnUnitsInsideTheirFrame(String name) {
    Setup setup = SeedSetups.setup(name);
    String length = setup.units() == UnitSystem.INCH ? "in" : "mm";
    StabilityCurve.of(setup, 100)
        .ifPresent(
            curve -> {
              Picture lobes = new Picture(LobeChart.of(curve, setup.units(), "lobes"));
              assertInside(lobes);
              assertThat(lobes.words()).contains("axial depth, " + length).contains("this cut");
            });
    ForceHistory.of(setup)
        .ifPresent(
            force -> {
              assertInside(new Picture(ForceChart.turn(force, setup.units(), "turn")));
              assertInside(new Picture(ForceChart.along(force, setup.units(), "along")));
              Picture across = new Picture(ForceChart.across(force, setup.units(), "across"));
              assertInside(across);
              assertThat(across.words()).contains("axis, " + length).contains("fixed jaw");
            });
    EdgeCurve.of(setup, 21)
        .ifPresent(
            edge -> {
              Picture give = new Picture(EdgeChart.of(edge, setup.units(), "edge"));
              assertInside(give);
              assertThat(give.words()).contains("along the jaws, " + length);
            });
  }

  @Test
  void theEdgeGivesMoreAtItsEndsThanInTheMiddle() {
    Setup setup = SeedSetups.setup("03-tall-plate-barely-gripped");
    EdgeCurve edge = EdgeCurve.of(setup, 21).orElseThrow();
    double[] drawn = new Picture(EdgeChart.of(edge, setup.units(), "edge")).points("under-cutter");
    double middle = drawn[2 * 10 + 1];
    assertThat(drawn[1]).as("higher on the sheet").isLessThanOrEqualTo(middle);
    assertThat(drawn[drawn.length - 1]).isLessThanOrEqualTo(middle);
  }

  @Test
  void thePeaksOfATurnLieBetweenTheWorstPeaksAndTheMeanBetweenThem() {
    Setup setup = SeedSetups.setup("03-tall-plate-barely-gripped");
    ForceHistory force = ForceHistory.of(setup).orElseThrow();
    Picture drawn = new Picture(ForceChart.across(force, setup.units(), "across"));
    double[] up = drawn.points("worst-up");
    double[] mean = drawn.points("mean");
    double[] down = drawn.points("worst-down");
    for (int i = 1; i < up.length; i += 2) {
      assertThat(up[i]).as("higher on the sheet").isLessThanOrEqualTo(mean[i] + ROUNDING);
      assertThat(mean[i]).isLessThanOrEqualTo(down[i] + ROUNDING);
    }
  }

  @Test
  void axesHaveRoundTicksAndNoughtOnAnEvenOne() {
    assertThat(Axis.even("force", List.of(-130.0, 410.0)).ticks())
        .containsExactly(-200.0, -100.0, 0.0, 100.0, 200.0, 300.0, 400.0, 500.0);
    assertThat(Axis.ratio("speed", List.of(80.0, 1500.0)).ticks())
        .containsExactly(100.0, 200.0, 500.0, 1000.0);
    assertThat(Axis.figures(0.0005)).isEqualTo("0.0005");
  }

  private static void assertInside(Picture picture) {
    double wide = Double.parseDouble(picture.root().getAttribute("width"));
    double high = Double.parseDouble(picture.root().getAttribute("height"));
    for (String shape : List.of("polyline", "polygon")) {
      for (Element line : picture.elements(shape)) {
        String[] places = line.getAttribute("points").split("[ ,]");
        for (int i = 0; i < places.length; i += 2) {
          assertThat(Double.parseDouble(places[i])).isBetween(0.0, wide);
          assertThat(Double.parseDouble(places[i + 1])).isBetween(0.0, high);
        }
      }
    }
  }
}

package org.standproud.mechanics.curves;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;

/** What is drawn agrees with what is judged. */
class CurvesTest {

  private static final Percentage EXACT = Percentage.withPercentage(1e-9);

  private static final Setup FACE_MILLED =
      SmallShop.plate(
          SmallShop.faceMill(), SmallShop.pass(Operation.TOP_EDGE, .001, 0, FeedDirection.PLUS_X));

  private static final Setup BESIDE =
      SmallShop.plate(
          SmallShop.faceMill(),
          SmallShop.pass(Operation.TOP_EDGE, .001, 0.2, FeedDirection.PLUS_X));

  private static Band fact(Setup setup, Fact fact) {
    Evidence evidence = EvidenceGathering.of(setup);
    return ((Value.Quantity) evidence.get(fact)).band();
  }

  @Test
  void theEndOfTheEdgeGivesAsMuchAsTheEvidenceSays() {
    List<EdgeCurve.Point> edge = EdgeCurve.of(FACE_MILLED, 21).orElseThrow().points();
    Band computed = fact(FACE_MILLED, Vocabulary.EDGE_DEFLECTION);
    EdgeCurve.Point end = edge.get(20);
    assertThat(end.underCutterM().low()).isCloseTo(computed.low(), EXACT);
    assertThat(end.underCutterM().likely()).isCloseTo(computed.likely(), EXACT);
    Fact.Number range = (Fact.Number) Vocabulary.EDGE_DEFLECTION.type();
    assertThat(Math.min(range.greatest(), end.underCutterM().high()))
        .isCloseTo(computed.high(), EXACT);
    assertThat(end.cutterAtEndM()).isCloseTo(computed.likely(), EXACT);
    assertThat(end.xM()).isCloseTo(FACE_MILLED.stock().lengthM() / 2, within(1e-12));
  }

  @Test
  void theEdgeGivesLeastNearItsMiddleAndAlikeAtBothEnds() {
    List<EdgeCurve.Point> edge = EdgeCurve.of(FACE_MILLED, 21).orElseThrow().points();
    double middle = edge.get(10).underCutterM().likely();
    for (int i = 0; i < 21; i++) {
      double here = edge.get(i).underCutterM().likely();
      assertThat(here).isGreaterThanOrEqualTo(middle * 0.999);
      assertThat(here).isCloseTo(edge.get(20 - i).underCutterM().likely(), EXACT);
    }
    assertThat(edge.get(0).underCutterM().likely()).isGreaterThan(1.5 * middle);
  }

  @Test
  void theBentEdgeFallsOffAwayFromTheCutter() {
    List<EdgeCurve.Point> edge = EdgeCurve.of(FACE_MILLED, 21).orElseThrow().points();
    for (int i = 11; i < 20; i++) {
      assertThat(edge.get(i).cutterAtEndM()).isLessThan(edge.get(i + 1).cutterAtEndM());
    }
  }

  @Test
  void theChartAtTheSpeedOfTheSetUpSaysWhatTheEvidenceSays() {
    double speed = FACE_MILLED.cut().spindleSpeedRevPerS();
    StabilityCurve curve = StabilityCurve.of(FACE_MILLED, speed, 2 * speed, 50).orElseThrow();
    Band limit = curve.points().get(0).depthM();
    Band computed = fact(FACE_MILLED, Vocabulary.STABILITY_MARGIN);
    Fact.Number range = (Fact.Number) Vocabulary.STABILITY_MARGIN.type();
    assertThat(Math.min(range.greatest(), limit.likely() / curve.depthM()))
        .isCloseTo(computed.likely(), EXACT);
    assertThat(Math.min(range.greatest(), limit.low() / curve.depthM()))
        .isCloseTo(computed.low(), EXACT);
    assertThat(curve.revPerS()).isEqualTo(speed);
  }

  @Test
  void theChartSpansTheSpeedsOfTheMachineAndNoLimitLiesBelowTheLeast() {
    Setup side =
        SmallShop.plate(
            SmallShop.faceMill(),
            SmallShop.pass(Operation.TOP_EDGE, .001, 0.02, FeedDirection.PLUS_X));
    StabilityCurve curve = StabilityCurve.of(side, 200).orElseThrow();
    assertThat(curve.points()).hasSize(200);
    assertThat(curve.points().get(0).revPerS())
        .isCloseTo(side.machine().leastSpeedRevPerS(), EXACT);
    assertThat(curve.points().get(199).revPerS())
        .isCloseTo(side.machine().greatestSpeedRevPerS(), EXACT);
    assertThat(curve.points())
        .allSatisfy(
            p -> assertThat(p.depthM().low()).isGreaterThanOrEqualTo(curve.leastDepthM().low()))
        .allSatisfy(
            p ->
                assertThat(p.depthM().likely())
                    .isGreaterThanOrEqualTo(curve.leastDepthM().likely()));
  }

  @Test
  void noLobeThatIsDrawnHangsBelowTheLimit() {
    Setup side =
        SmallShop.plate(
            SmallShop.faceMill(),
            SmallShop.pass(Operation.TOP_EDGE, .001, 0.02, FeedDirection.PLUS_X));
    StabilityCurve curve = StabilityCurve.of(side, 50, 400, 50).orElseThrow();
    assertThat(curve.lobes()).hasSizeGreaterThan(3);
    assertThat(curve.lobes())
        .allSatisfy(
            lobe ->
                assertThat(lobe.points())
                    .allSatisfy(
                        p ->
                            assertThat(p.depthM())
                                .isGreaterThanOrEqualTo(curve.leastDepthM().likely())));
    assertThat(curve.better())
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.depthM()).isGreaterThan(curve.leastDepthM().likely()));
  }

  /** A centred face mill fed the other way swaps the jaw that takes the load; worked by hand. */
  @Test
  void theBestDepthFollowsTheDirectionOfTheForce() {
    Cut cut = SmallShop.pass(Operation.TOP_EDGE, .001, 0, FeedDirection.MINUS_X);
    Setup back = SmallShop.plate(SmallShop.faceMill(), cut);
    assertThat(fact(FACE_MILLED, Vocabulary.BEST_PACKING_DEPTH).likely())
        .isLessThan(fact(back, Vocabulary.BEST_PACKING_DEPTH).likely());
  }

  @Test
  void aCutterThatPassesBesideTheStockHasNothingToDraw() {
    assertThat(EdgeCurve.of(BESIDE, 5)).isEmpty();
    assertThat(StabilityCurve.of(BESIDE, 5)).isEmpty();
  }

  @Test
  void knownLimitsAreRefused() {
    assertThatThrownBy(() -> EdgeCurve.of(FACE_MILLED, 1)).isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> StabilityCurve.of(FACE_MILLED, 20, 10, 50))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("greatest speed of the chart");
  }
}

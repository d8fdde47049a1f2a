package org.standproud.mechanics.holding.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.contact.ElasticRoot.Stance;

class ElasticRootTest {

  private static final double N = 20_000;
  private static final double G = 0.015;
  private static final double L = 0.12;
  private static final double H = 0.06;
  private static final double K = 2e12;

  private static ElasticRoot wire(double layer, double depth) {
    return new ElasticRoot(layer, null, depth, L, G, N, 0);
  }

  private static ElasticRoot whole(double layer) {
    return new ElasticRoot(layer, layer, 0, L, G, N, 0);
  }

  @Test
  void aFullyBearingFootTurnsByItsMomentOverTheLayersOwnStiffness() {
    // k L g^3/12 from the even layer; load small enough that no edge lets go.
    double face = K * L * Math.pow(G, 3) / 12;
    double fy = 1;
    // About the middle of the grip the moment is Fy (H + g/2).
    double expected = face * H / (H + G / 2);
    assertThat(wire(K, G / 2).turningStiffnessNmPerRad(fy, H))
        .isCloseTo(expected, Percentage.withPercentage(0.01));
    assertThat(whole(K).turningStiffnessNmPerRad(fy, H))
        .isCloseTo(2 * expected, Percentage.withPercentage(0.01));
  }

  @Test
  void aPushTowardTheFixedJawTurnsTheTopTowardIt() {
    assertThat(wire(K, G / 2).under(300, H).orElseThrow().turnRad()).isPositive();
    assertThat(wire(K, G / 2).under(-300, H).orElseThrow().turnRad()).isNegative();
  }

  @Property
  void contactWithAWireIsThreeTimesTheResultantsDistanceFromTheEdge(
      @ForAll @DoubleRange(min = 900, max = 2300) double fy) {
    double r = (G / 2 * N - H * fy) / (N + fy);
    Stance stance = wire(K, G / 2).under(fy, H).orElseThrow();
    assertThat(stance.fixedContactM()).isCloseTo(Math.min(G, 3 * r), within(1e-6));
    assertThat(stance.peakPressurePa())
        .isCloseTo(2 * (N + fy) / (stance.fixedContactM() * L), Percentage.withPercentage(0.1));
    assertThat(stance.gapM()).isNotNegative();
  }

  @Test
  void theElasticFootTipsWhereTheRigidOneDoes() {
    double toward = N * 0.006 / H;
    double away = N * (G - 0.006) / (H + G);
    assertThat(wire(K, 0.006).under(toward * 0.995, H)).isPresent();
    assertThat(wire(K, 0.006).under(toward * 1.005, H)).isEmpty();
    assertThat(wire(K, 0.006).under(-away * 0.995, H)).isPresent();
    assertThat(wire(K, 0.006).under(-away * 1.005, H)).isEmpty();
    assertThat(whole(K).under(N * G / H * 0.99, H)).isPresent();
    assertThat(whole(K).under(N * G / H * 1.01, H)).isEmpty();
    assertThat(whole(K).under(-N * G / (H + G) * 0.99, H)).isPresent();
    assertThat(whole(K).under(-N * G / (H + G) * 1.01, H)).isEmpty();
  }

  @Property
  void stifferFacesMakeAStifferRootAndAGreaterLoadASofterOne(
      @ForAll @DoubleRange(min = 50, max = 1200) double fy) {
    double here = whole(K).turningStiffnessNmPerRad(fy, H);
    assertThat(whole(4 * K).turningStiffnessNmPerRad(fy, H)).isGreaterThan(here);
    assertThat(whole(K).turningStiffnessNmPerRad(fy * 1.5, H))
        .isLessThanOrEqualTo(here * (1 + 1e-5));
  }

  @Test
  void aLeaningMovableJawBearsAtTheBottomAndLeansTheStockBack() {
    ElasticRoot leaning = new ElasticRoot(K, K, 0, L, G, N, 5e-3);
    assertThat(leaning.under(0, H).orElseThrow().turnRad()).isNegative();
    assertThat(leaning.under(0, H).orElseThrow().gapM()).isPositive();
  }

  @Test
  void aWireInTheMiddleBowsTheGrippedStripAsABeamUnderAnEvenLoad() {
    StockBow bow = StockBow.of(N, G / 2, G, L, 0.004, 205e9, 0.29);
    assertThat(bow.momentNm()).isCloseTo(N * G / 8, within(1e-9));
    assertThat(bow.stressPa())
        .isCloseTo(6 * N * G / 8 / (L * 0.004 * 0.004), Percentage.withPercentage(1e-9));
    assertThat(StockBow.of(N, 0, G, L, 0.004, 205e9, 0.29).bowM()).isZero();
  }

  @Test
  void bowIsTheSameWhereTheBeamFormulasMeetAndFromEitherEdge() {
    double below = StockBow.of(N, G / 3 * (1 - 1e-9), G, L, 0.004, 205e9, 0.29).momentNm();
    double above = StockBow.of(N, G / 3 * (1 + 1e-9), G, L, 0.004, 205e9, 0.29).momentNm();
    assertThat(below).isCloseTo(above, within(1e-5));
    assertThat(StockBow.of(N, 0.004, G, L, 0.004, 205e9, 0.29).momentNm())
        .isCloseTo(StockBow.of(N, G - 0.004, G, L, 0.004, 205e9, 0.29).momentNm(), within(1e-9));
  }
}

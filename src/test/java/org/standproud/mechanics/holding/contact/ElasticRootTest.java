package org.standproud.mechanics.holding.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.contact.ElasticRoot.Stance;
import org.standproud.setup.Band;
import org.standproud.setup.StockSurface;

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

  private static ElasticRoot faces(Double movable, double lineM, double leanRad) {
    return new ElasticRoot(1e12, movable, lineM, 0.1, 0.03, 10_000, leanRad);
  }

  /**
   * Worked by hand: 100 N toward the fixed jaw 0.995 m up against a line 15 mm deep bring the fixed
   * jaw's 10.1 kN to (150 - 99.5)/10.1 = 5 mm: 15 mm bear, with 2 10.1 kN/(15 100 mm) = 13.467 MPa
   * at the lip; q = p/(k c) = 0.89778 mrad parts the rest of 15 mm by 13.467 um.
   */
  @Test
  void aHardPushLeavesTheUpperHalfOfTheFixedFace() {
    ElasticRoot.Stance stance = faces(null, 0.015, 0).under(100, 0.995).orElseThrow();
    assertThat(stance.fixedContactM()).isCloseTo(0.015, within(1e-6));
    assertThat(stance.turnRad()).isCloseTo(0.89778e-3, within(1e-7));
    assertThat(stance.gapM()).isCloseTo(13.467e-6, within(1e-9));
    assertThat(stance.peakPressurePa()).isCloseTo(13.467e6, within(2e3));
    assertThat(stance.movableContactM()).isZero();
  }

  /**
   * Worked by hand: between two alike faces the stock takes half of a lean. Of 1 mrad either face
   * is turned by 0.5: c = sqrt(2 N/(k L q)) = 20 mm, gap 0.5 mrad 10 mm, 2 N/(20 100 mm) = 10 MPa.
   */
  @Test
  void betweenAlikeFacesTheStockTakesHalfOfALean() {
    ElasticRoot.Stance stance = faces(1e12, 0, 1e-3).under(0, 0.06).orElseThrow();
    assertThat(stance.turnRad()).isCloseTo(-0.5e-3, within(1e-8));
    assertThat(stance.fixedContactM()).isCloseTo(0.020, within(1e-6));
    assertThat(stance.movableContactM()).isCloseTo(0.020, within(1e-6));
    assertThat(stance.gapM()).isCloseTo(5e-6, within(1e-9));
    assertThat(stance.peakPressurePa()).isCloseTo(10e6, within(1e3));
  }

  /** A lean of 0.2 mrad parts nothing: N/(L g) = 3.333 MPa and k q g/2 = 1.5 MPa at the edge. */
  @Test
  void aSmallLeanOnlyAddsPressureAtAnEdge() {
    ElasticRoot.Stance stance = faces(1e12, 0, 0.2e-3).under(0, 0.06).orElseThrow();
    assertThat(stance.fixedContactM()).isEqualTo(0.03);
    assertThat(stance.gapM()).isZero();
    assertThat(stance.peakPressurePa()).isCloseTo(4.8333e6, within(1e3));
  }

  /**
   * The movable layer a thousand times softer leans alone: 1 mrad on it, its gap is the greatest.
   */
  @Test
  void theGapIsThatOfTheSofterFace() {
    ElasticRoot.Stance stance =
        new ElasticRoot(1e15, 1e12, 0, 0.1, 0.03, 10_000, 1e-3).under(0, 0.06).orElseThrow();
    // c = sqrt(2 10 000/(1e11 1e-3)) = 14.14 mm; 15.86 mm parted
    assertThat(stance.movableContactM()).isCloseTo(0.01414, within(5e-5));
    assertThat(stance.gapM()).isCloseTo(15.86e-6, within(1e-7));
    assertThat(stance.peakPressurePa()).isCloseTo(14.14e6, within(5e4));
  }

  /**
   * Worked by hand: 20 kN on a line in the middle of 15 mm by 120 mm of stock 10 mm thick: M = N
   * g/8 = 37.5 N m, 6 M/(L t^2) = 18.75 MPa; E t^3/(12 (1 - nu^2)) = 18 652 N m, bow M g^2/(8 D L)
   * = 0.4712 um.
   */
  @Test
  void packingInTheMiddleBendsTheStockLikeABeam() {
    StockBow bow = StockBow.of(20_000, 0.0075, 0.015, 0.120, 0.010, 205e9, 0.29);
    assertThat(bow.momentNm()).isCloseTo(37.5, within(1e-9));
    assertThat(bow.stressPa()).isCloseTo(18.75e6, within(1.0));
    assertThat(bow.bowM()).isCloseTo(0.47121e-6, within(1e-10));
  }

  /** Unknown faces may be as good as machined ones and as bad as cast ones. */
  @Test
  void aFaceWithoutADescriptionSpansAllOfThem() {
    Band unknown = JointStiffness.coefficient(null);
    for (StockSurface surface : StockSurface.values()) {
      Band known = JointStiffness.coefficient(surface);
      assertThat(unknown.low()).isLessThanOrEqualTo(known.low());
      assertThat(unknown.high()).isGreaterThanOrEqualTo(known.high());
    }
    assertThat(unknown.low()).isLessThan(unknown.high());
  }
}

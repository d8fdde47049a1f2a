package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.sampling.LettingGo;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.Hold;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.Stop;

class JointEvidenceTest {

  private static Setup held(Setup s, Hold hold) {
    return new Setup(
        s.job(), s.stock(), hold, s.machine(), s.cutter(), s.cut(), s.passes(), s.units());
  }

  private static Setup standing(Setup s, @Nullable Double highSpotM) {
    Stock t = s.stock();
    Stock stock = StockBuilder.builder(t).highSpotM(highSpotM).build();
    return new Setup(
        s.job(), stock, s.hold(), s.machine(), s.cutter(), s.cut(), s.passes(), s.units());
  }

  private static Setup clamped(Setup s, @Nullable Band forceN) {
    return held(s, s.hold().but().clamping(forceN, null, s.hold().jawFriction()).held());
  }

  private static Sample sample(Evidence evidence, Fact fact) {
    return ((Value.Quantity) evidence.get(fact)).sample();
  }

  private static double letsGo(Setup setup) {
    LettingGo lettingGo = EvidenceGathering.jointly(setup).lettingGo();
    assertThat(lettingGo).isNotNull();
    return lettingGo.share();
  }

  @Test
  void aReplayGivesTheSameEvidence() {
    for (String name : List.of("01", "05", "08", "12")) {
      assertThat(EvidenceGathering.of(DemoShop.setup(name)).values())
          .isEqualTo(EvidenceGathering.of(DemoShop.setup(name)).values());
    }
  }

  @Test
  void aKnownValueIsABandOfNoWidth() {
    Setup setup = clamped(DemoShop.setup("08"), Band.exactly(15e3));
    Evidence evidence = EvidenceGathering.of(setup);
    assertThat(sample(evidence, Vocabulary.CLAMPING_FORCE)).isEqualTo(Sample.exactly(15e3));
    assertThat(sample(evidence, Vocabulary.CONTACT_LENGTH).isExact()).isTrue();
  }

  /** One step of a hundredth in the width of a band moves no percentile by a jump. */
  @Test
  void wideningABandMovesTheNumbersWithoutAJump() {
    Setup setup = DemoShop.setup("08");
    double low = Double.NaN;
    double deflection = Double.NaN;
    double chance = Double.NaN;
    for (int step = 0; step <= 40; step++) {
      double spread = 1 + 0.02 * step;
      Setup wide = clamped(setup, new Band(12e3 / spread, 12e3, 12e3 * spread));
      JointEvidence joint = EvidenceGathering.jointly(wide);
      double margin = sample(joint.evidence(), Vocabulary.TIP_MARGIN_MOVABLE).band().low();
      double give = sample(joint.evidence(), Vocabulary.EDGE_DEFLECTION).band().likely();
      double holds = 1 - letsGo(wide);
      if (step > 0) {
        assertThat(margin).isCloseTo(low, withinPercentage(3));
        assertThat(give).isCloseTo(deflection, withinPercentage(10));
        assertThat(holds).isCloseTo(chance, within(0.05));
      }
      low = margin;
      deflection = give;
      chance = holds;
    }
  }

  /**
   * Between the chances at the values that nine shops of ten have, and no safer than the middle.
   */
  @ParameterizedTest
  @CsvSource({"03", "04", "08", "12"})
  void anUnknownHighSpotOrForceIsNeverSaferThanAPlausibleOne(String name) {
    Setup setup = DemoShop.setup(name);
    double unknown = letsGo(standing(setup, null));
    List<Double> known = new ArrayList<>();
    for (double um : new double[] {2, 5, 30, 120}) {
      known.add(letsGo(standing(setup, um * 1e-6)));
    }
    assertThat(unknown).isBetween(least(known) - 0.02, most(known) + 0.02);
    double force = letsGo(clamped(setup, null));
    Band drawn =
        sample(EvidenceGathering.of(clamped(setup, null)), Vocabulary.CLAMPING_FORCE).band();
    // Where the middle of the shops lets go, the better half of them may still hold.
    double middle = letsGo(clamped(setup, Band.exactly(drawn.likely())));
    assertThat(force)
        .isGreaterThanOrEqualTo(Math.min(middle, 0.5) - 0.02)
        .isBetween(
            letsGo(clamped(setup, Band.exactly(drawn.high()))) - 0.02,
            letsGo(clamped(setup, Band.exactly(drawn.low()))) + 0.02);
  }

  /** A spot makes the root softer, so an unmeasured spot makes the foot no stiffer. */
  @Test
  void anUnknownSpotIsNoStifferThanTheMiddleOfWhatShopsHave() {
    Setup setup = DemoShop.setup("01");
    Sample unknown =
        sample(EvidenceGathering.of(standing(setup, null)), Vocabulary.NATURAL_FREQUENCY);
    Sample middle =
        sample(EvidenceGathering.of(standing(setup, 5e-6)), Vocabulary.NATURAL_FREQUENCY);
    Sample bad = sample(EvidenceGathering.of(standing(setup, 30e-6)), Vocabulary.NATURAL_FREQUENCY);
    assertThat(unknown.band().low()).isLessThan(middle.band().low());
    assertThat(unknown.band().low()).isGreaterThan(bad.band().low());
  }

  private static double least(List<Double> all) {
    return all.stream().mapToDouble(v -> v).min().orElseThrow();
  }

  private static double most(List<Double> all) {
    return all.stream().mapToDouble(v -> v).max().orElseThrow();
  }

  /** The packing that a finding recommends is judged by the same draws first. */
  @Test
  void theRecommendedPackingDepthIsNoWorseThanTheOneItReplaces() {
    Setup setup = DemoShop.setup("08");
    Evidence before = EvidenceGathering.of(setup);
    double depthM = sample(before, Vocabulary.BEST_PACKING_DEPTH).band().likely();
    Packing wire = setup.hold().packing().get(0);
    Packing moved = new Packing(wire.side(), wire.kind(), wire.material(), wire.sizeM(), depthM);
    Evidence after =
        EvidenceGathering.of(held(setup, setup.hold().but().packing(List.of(moved)).held()));
    double gap = sample(after, Vocabulary.NO_GAP_MARGIN).band().low();
    assertThat(gap).isGreaterThan(sample(before, Vocabulary.NO_GAP_MARGIN).band().low());
    assertThat(gap).isPositive();
    assertThat(sample(after, Vocabulary.TIP_MARGIN_MOVABLE).band().low())
        .isGreaterThan(sample(before, Vocabulary.TIP_MARGIN_MOVABLE).band().low());
    assertThat(sample(after, Vocabulary.BEST_PACKING_DEPTH).band().likely())
        .isCloseTo(depthM, within(1e-3));
  }

  /** Give across the jaws leaves the height of a top edge as it is. */
  @Test
  void springingAcrossTheJawsIsNoErrorOfSizeOnATopEdge() {
    Evidence top = EvidenceGathering.of(DemoShop.setup("01"));
    assertThat(sample(top, Vocabulary.SIZE_ERROR)).isEqualTo(Sample.exactly(0));
    Evidence side = EvidenceGathering.of(DemoShop.setup("02"));
    assertThat(sample(side, Vocabulary.SIZE_ERROR).band().low()).isPositive();
  }

  /** The cut goes down to 0.5 to 2 mm below the top: a block as high as the stock is milled. */
  @ParameterizedTest
  @CsvSource({"NONE", "BOTH", "''"})
  void aBlockAtTheEndThatStandsAsHighAsTheStockIsACollisionWhateverItIsCalled(String word) {
    Setup setup = DemoShop.setup("01");
    Stop stop = word.isEmpty() ? null : Stop.valueOf(word);
    Setup blocked = held(setup, setup.hold().but().stop(stop).stopHeight(setup.stickOutM()).held());
    Evidence evidence = EvidenceGathering.of(blocked);
    Fact fact = stop == Stop.BOTH ? Vocabulary.STOP_CLEARANCE : Vocabulary.CLAMP_CLEARANCE;
    assertThat(sample(evidence, fact).band().high()).isNegative();
    if (stop != Stop.BOTH) {
      assertThat(evidence.get(Vocabulary.CLAMPS_TOLD)).isEqualTo(new Value.Truth(true));
    }
    Setup low = held(setup, setup.hold().but().stop(stop).stopHeight(0.0).held());
    assertThat(sample(EvidenceGathering.of(low), fact).band().low()).isPositive();
  }

  private static String asked(Setup setup) {
    Value value = EvidenceGathering.of(setup).get(Vocabulary.HOLDING_MARGIN);
    assertThat(value).isInstanceOf(Value.Missing.class);
    return ((Value.Missing) value).measure();
  }

  /** Slips of a digit: each value is within its field and out of this world beside the rest. */
  @Test
  void inconsistentValuesAreQuestioned() {
    Setup setup = DemoShop.setup("01");
    Hold hold = setup.hold();
    assertThat(asked(held(setup, hold.but().clamping(null, Band.exactly(1000), null).held())))
        .contains("/hold/handleTorque");
    assertThat(asked(held(setup, hold.but().clamping(null, Band.exactly(300), null).held())))
        .contains("/hold/handleTorque");
    assertThat(asked(held(setup, hold.but().viseRunOut(0.01).held()))).contains("/hold/viseRunOut");
    assertThat(asked(standing(setup, 5e-3))).contains("/stock/highSpot");
    assertThat(asked(with(setup, soft(setup.machine())))).contains("/machine/spindleStiffness");
    Setup endMill = DemoShop.setup("04");
    assertThat(asked(with(endMill, thick(endMill.cutter())))).contains("/cutter/shankDiameter");
    assertThat(asked(with(setup, hasty(setup.cut())))).contains("/cut/feedPerTooth");
    assertThat(EvidenceGathering.of(setup).get(Vocabulary.HOLDING_MARGIN))
        .isInstanceOf(Value.Quantity.class);
  }

  private static Setup with(Setup s, Machine machine) {
    return new Setup(
        s.job(), s.stock(), s.hold(), machine, s.cutter(), s.cut(), s.passes(), s.units());
  }

  private static Setup with(Setup s, Cutter cutter) {
    return new Setup(
        s.job(), s.stock(), s.hold(), s.machine(), cutter, s.cut(), s.passes(), s.units());
  }

  private static Setup with(Setup s, Cut cut) {
    return s.with(cut, s.passes());
  }

  private static Machine soft(Machine m) {
    return MachineBuilder.builder(m).spindleStiffnessNPerM(Band.exactly(0.5e6)).build();
  }

  private static Cutter thick(Cutter c) {
    return CutterBuilder.builder(c).shankDiameterM(16 * c.diameterM()).build();
  }

  private static Cut hasty(Cut c) {
    return CutBuilder.builder(c).spindleSpeedRevPerS(100 * c.spindleSpeedRevPerS()).build();
  }
}

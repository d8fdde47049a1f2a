package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.Hold;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.Setup;
import org.standproud.setup.Spin;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;

/** What must rise or fall, and what must mirror, in the evidence of any set-up. */
class EvidenceOrderTest {

  private static final long SEED = 41;
  private static final int SETUPS = 80;

  private static Setup held(Setup s, Hold hold) {
    return new Setup(s.job(), s.stock(), hold, s.machine(), s.cutter(), s.cut(), s.units());
  }

  private static Setup gripped(Setup s, double clampN, double friction, double spread) {
    Hold h = s.hold();
    return held(
        s,
        h.but()
            .clamping(
                new Band(clampN / spread, clampN, clampN * spread),
                null,
                new Band(friction / spread, friction, friction * spread))
            .held());
  }

  private static @Nullable Band band(Evidence evidence, Fact fact) {
    return evidence.get(fact) instanceof Value.Quantity quantity ? quantity.band() : null;
  }

  private static boolean neverLower(Evidence less, Evidence more, Fact fact) {
    Band before = band(less, fact);
    Band after = band(more, fact);
    if (before == null || after == null) {
      return false;
    }
    assertThat(after.low()).as(fact.name()).isGreaterThanOrEqualTo(rounded(before.low()));
    assertThat(after.likely()).as(fact.name()).isGreaterThanOrEqualTo(rounded(before.likely()));
    assertThat(after.high()).as(fact.name()).isGreaterThanOrEqualTo(rounded(before.high()));
    return true;
  }

  /** A little less than a value, so that rounding is not called a fall. */
  private static double rounded(double value) {
    return value - 1e-9 * Math.abs(value) - 1e-9;
  }

  @Test
  void moreClampingForceNeverLowersSlipLiftOrTipMargins() {
    RandomShop shop = new RandomShop(SEED);
    int compared = 0;
    for (int i = 0; i < SETUPS; i++) {
      Setup setup = shop.next();
      Evidence less = EvidenceGathering.of(gripped(setup, 8e3, 0.15, 1.2));
      Evidence more = EvidenceGathering.of(gripped(setup, 13e3, 0.15, 1.2));
      compared += neverLower(less, more, Vocabulary.SLIP_MARGIN) ? 1 : 0;
      neverLower(less, more, Vocabulary.LIFT_MARGIN);
      if (less.get(Vocabulary.PUSH_FIXED).equals(more.get(Vocabulary.PUSH_FIXED))) {
        neverLower(less, more, Vocabulary.TIP_MARGIN_FIXED);
        neverLower(less, more, Vocabulary.TIP_MARGIN_MOVABLE);
        neverLower(less, more, Vocabulary.HOLDING_MARGIN);
      }
    }
    assertThat(compared).isGreaterThan(SETUPS / 2);
  }

  @Test
  void moreFrictionNeverLowersAMargin() {
    RandomShop shop = new RandomShop(SEED + 1);
    int compared = 0;
    for (int i = 0; i < SETUPS; i++) {
      Setup setup = shop.next();
      Evidence less = EvidenceGathering.of(gripped(setup, 8e3, 0.12, 1.1));
      Evidence more = EvidenceGathering.of(gripped(setup, 8e3, 0.18, 1.1));
      for (Fact margin :
          List.of(Vocabulary.SLIP_MARGIN, Vocabulary.LIFT_MARGIN, Vocabulary.HOLDING_MARGIN)) {
        compared += neverLower(less, more, margin) ? 1 : 0;
      }
    }
    assertThat(compared).isGreaterThan(SETUPS);
  }

  @Test
  void knowingTheFrictionBetterNeverWidensAMargin() {
    RandomShop shop = new RandomShop(SEED + 2);
    int compared = 0;
    for (int i = 0; i < SETUPS; i++) {
      Setup setup = shop.next();
      Band vague =
          band(EvidenceGathering.of(gripped(setup, 8e3, 0.15, 1.5)), Vocabulary.SLIP_MARGIN);
      Band sure =
          band(EvidenceGathering.of(gripped(setup, 8e3, 0.15, 1.1)), Vocabulary.SLIP_MARGIN);
      if (vague != null && sure != null && vague.high() < Vocabulary.GREATEST_MARGIN) {
        compared++;
        assertThat(sure.high() / sure.low()).isLessThanOrEqualTo(1.03 * vague.high() / vague.low());
      }
    }
    assertThat(compared).isGreaterThan(SETUPS / 3);
  }

  @Test
  void harderStockNeverPushesLess() {
    RandomShop shop = new RandomShop(SEED + 3);
    int compared = 0;
    for (int i = 0; i < SETUPS; i++) {
      Setup setup = shop.next();
      if (setup.stock().material().forceLaw() != ForceCoefficients.KIENZLE) {
        continue; // its specific cutting force only says how far off a published set may be
      }
      Evidence soft = EvidenceGathering.of(setup);
      Evidence hard = EvidenceGathering.of(harder(setup));
      for (Fact push :
          List.of(
              Vocabulary.PEAK_TANGENTIAL_FORCE,
              Vocabulary.PUSH_FIXED,
              Vocabulary.PUSH_MOVABLE,
              Vocabulary.PUSH_PLUS_X,
              Vocabulary.PUSH_MINUS_X,
              Vocabulary.LIFT_FORCE)) {
        compared += neverLower(soft, hard, push) ? 1 : 0;
      }
      neverLower(hard, soft, Vocabulary.SLIP_MARGIN);
    }
    assertThat(compared).isGreaterThan(SETUPS);
  }

  private static Setup harder(Setup s) {
    Material m = s.stock().material();
    Material harder =
        MaterialBuilder.builder(m)
            .specificCuttingForcePa(m.specificCuttingForcePa().times(1.3))
            .build();
    Stock t = s.stock();
    Stock stock = StockBuilder.builder(t).material(harder).build();
    return new Setup(s.job(), stock, s.hold(), s.machine(), s.cutter(), s.cut(), s.units());
  }

  /** Seen in a mirror between the jaws: the other spin, the other side, and the jaws exchanged. */
  @Test
  void aMirroredPassPushesTheOtherJawJustAsHard() {
    RandomShop shop = new RandomShop(SEED + 4);
    Map<Fact, Fact> mirror =
        Map.of(
            Vocabulary.PUSH_FIXED, Vocabulary.PUSH_MOVABLE,
            Vocabulary.PUSH_MOVABLE, Vocabulary.PUSH_FIXED,
            Vocabulary.PUSH_PLUS_X, Vocabulary.PUSH_PLUS_X,
            Vocabulary.PUSH_MINUS_X, Vocabulary.PUSH_MINUS_X,
            Vocabulary.LIFT_FORCE, Vocabulary.LIFT_FORCE,
            Vocabulary.PEAK_TANGENTIAL_FORCE, Vocabulary.PEAK_TANGENTIAL_FORCE,
            Vocabulary.TABLE_PULL, Vocabulary.TABLE_PULL,
            Vocabulary.POWER_MARGIN, Vocabulary.POWER_MARGIN,
            Vocabulary.SLIP_MARGIN, Vocabulary.SLIP_MARGIN,
            Vocabulary.LIFT_MARGIN, Vocabulary.LIFT_MARGIN);
    int compared = 0;
    for (int i = 0; i < SETUPS; i++) {
      Setup setup = shop.next();
      Evidence here = EvidenceGathering.of(setup);
      Evidence there = EvidenceGathering.of(mirrored(setup));
      assertThat(there.get(Vocabulary.MODE)).isEqualTo(here.get(Vocabulary.MODE));
      for (Map.Entry<Fact, Fact> pair : mirror.entrySet()) {
        compared += same(band(here, pair.getKey()), band(there, pair.getValue())) ? 1 : 0;
      }
    }
    assertThat(compared).isGreaterThan(5 * SETUPS);
  }

  private static boolean same(@Nullable Band here, @Nullable Band there) {
    if (here == null || there == null) {
      assertThat(here).isEqualTo(there);
      return false;
    }
    double near = 1e-6 * Math.max(1e-3, Math.abs(here.high()));
    assertThat(there.low()).isCloseTo(here.low(), within(near));
    assertThat(there.likely()).isCloseTo(here.likely(), within(near));
    assertThat(there.high()).isCloseTo(here.high(), within(near));
    return true;
  }

  private static Setup mirrored(Setup s) {
    Cutter c = s.cutter();
    Cutter other =
        CutterBuilder.builder(c)
            .spin(c.spin() == Spin.CLOCKWISE ? Spin.COUNTERCLOCKWISE : Spin.CLOCKWISE)
            .build();
    Cut t = s.cut();
    Cut cut = CutBuilder.builder(t).offsetM(-t.offsetM()).build();
    return new Setup(s.job(), s.stock(), s.hold(), s.machine(), other, cut, s.units());
  }
}

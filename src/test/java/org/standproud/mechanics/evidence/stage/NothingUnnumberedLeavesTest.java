package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standproud.ComputationTest;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * Whatever is proposed, the evidence has a finite number, a word or a reason for every fact. 500
 * set-ups in every build; another number with the system property {@code mechanics.setups}.
 */
@ComputationTest
class NothingUnnumberedLeavesTest {

  private static final long SEED = 20261125;

  @Test
  void everyFactOfAnySetUpIsFiniteOrMissingWithAReason() {
    RandomShop shop = new RandomShop(SEED);
    int setups = Integer.getInteger("mechanics.setups", 500);
    int judged = 0;
    for (int i = 0; i < setups; i++) {
      Setup setup = shop.next();
      Evidence evidence = gathered(i, setup);
      assertThat(evidence.values()).hasSameSizeAs(Vocabulary.all());
      evidence.values().forEach(value -> hold(value, setup));
      judged += evidence.get(Vocabulary.HOLDING_MARGIN) instanceof Value.Quantity ? 1 : 0;
    }
    assertThat(judged).as("set-ups whose hold was judged").isGreaterThan(setups / 5);
  }

  private static Evidence gathered(int number, Setup setup) {
    try {
      return EvidenceGathering.of(setup);
    } catch (RuntimeException e) {
      throw new AssertionError("set-up " + number + " was thrown out: " + setup, e);
    }
  }

  private static void hold(EvidenceValue value, Setup setup) {
    if (value.value() instanceof Value.Quantity quantity) {
      Band band = quantity.band();
      assertThat(Double.isFinite(band.low()) && Double.isFinite(band.high()))
          .as("%s of %s", value.fact().name(), setup)
          .isTrue();
      assertThat(band.likely()).isBetween(band.low(), band.high());
    }
    if (value.value() instanceof Value.Missing missing) {
      assertThat(missing.measure()).as(value.fact().name()).isNotBlank();
    }
  }
}

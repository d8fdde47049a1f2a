package org.standproud.advice.workholding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.holding.other.ClampedMargins;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

class HeldJobTest {

  private static Band band(Evidence evidence, Fact fact) {
    return ((Value.Quantity) evidence.get(fact)).band();
  }

  /** Nothing that the vise would hold may stay in the evidence of another hold. */
  @Test
  void theLeastMarginAndItsWayAreThoseOfTheOtherHold() {
    Setup setup = DemoShop.setup("01");
    HeldJob job =
        HeldJob.upright(setup, Straps.of(setup), Way.VISE_SIDE.backingNPerM(), 0.03, 0.015, 0.01);
    Evidence evidence =
        job.with(
            new ClampedMargins(
                Band.exactly(4),
                Band.exactly(1.5),
                new Band(2, 3, 4),
                new Band(1.8, 5, 6),
                new Band(1.9, 2.5, 7)));
    assertThat(band(evidence, Vocabulary.LEAST_HOLD_MARGIN).low()).isEqualTo(1.8);
    assertThat(band(evidence, Vocabulary.LEAST_HOLD_MARGIN).likely()).isEqualTo(2.5);
    assertThat(band(evidence, Vocabulary.LEAST_HOLD_MARGIN).high()).isEqualTo(4);
    assertThat(evidence.get(Vocabulary.WEAKEST_WAY))
        .isEqualTo(new Value.Text("lift out of the jaws"));
  }
}

package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

class StabilityTest {

  private static final ModeBand MODE =
      new ModeBand(new Mode(320, 3e6), new Mode(400, 5e6), new Mode(430, 6e6));

  private static StabilityInput cut(double entryDeg, double exitDeg, double revPerS) {
    return new StabilityInput(
        List.of(MODE),
        StabilityInput.USUAL_DAMPING,
        List.of(),
        List.of(),
        new Band(1.2e9, 1.5e9, 1.8e9),
        0.3,
        4,
        Math.toRadians(entryDeg),
        Math.toRadians(exitDeg),
        0.063,
        revPerS);
  }

  /** 2 pi 4 k zeta (1 + zeta)/(N Kt |ayy|), ayy of a climb half cut = -1.47124 [derived]. */
  @Test
  void theBandRunsFromTheSoftestHoldToTheStiffest() {
    Stability stability = Stability.of(cut(90, 180, 20));
    double low = 8 * Math.PI * 3e6 * 0.01 * 1.01 / (4 * 1.8e9 * 1.47124);
    double likely = 8 * Math.PI * 5e6 * 0.03 * 1.03 / (4 * 1.5e9 * 1.47124);
    double high = 8 * Math.PI * 6e6 * 0.05 * 1.05 / (4 * 1.2e9 * 1.47124);
    assertThat(stability.leastDepthM().low()).isCloseTo(low, Percentage.withPercentage(0.01));
    assertThat(stability.leastDepthM().likely()).isCloseTo(likely, Percentage.withPercentage(0.01));
    assertThat(stability.leastDepthM().high()).isCloseTo(high, Percentage.withPercentage(0.01));
    assertThat(stability.depthAtSpeedM().low()).isEqualTo(stability.leastDepthM().low());
  }

  /**
   * Extra lobes at low immersion: Insperger, Davies [memory]; the tenth is [memory]. Ten waves:
   * common practice, no source.
   */
  @Test
  void aShortArcAndALowSpeedAreReported() {
    assertThat(Stability.of(cut(90, 180, 20)).cautions()).isEmpty();
    assertThat(Stability.of(cut(81, 99, 20)).cautions())
        .extracting(Stability.Caution::doubt)
        .contains(Stability.Doubt.SHORT_ARC);
    assertThat(Stability.of(cut(90, 180, 2)).cautions())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.doubt()).isEqualTo(Stability.Doubt.FLANK_DAMPING);
              assertThat(c.reason()).contains("waves").doesNotContain("NaN");
            });
  }

  @Test
  void aCutThatHardlyRegeneratesHasNoLimitWorthTheName() {
    Stability stability = Stability.of(cut(90, 90.001, 20));
    assertThat(stability.leastDepthM().likely()).isEqualTo(StabilityLobes.CAP_M);
    assertThat(stability.cautions())
        .extracting(Stability.Caution::doubt)
        .contains(Stability.Doubt.HARDLY_REGENERATES);
  }

  @Test
  void anExitBeforeTheEntryIsRefused() {
    assertThatThrownBy(() -> cut(90, 80, 20))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("exit angle");
  }
}

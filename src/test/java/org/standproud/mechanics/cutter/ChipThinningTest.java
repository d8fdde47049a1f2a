package org.standproud.mechanics.cutter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

class ChipThinningTest {

  private static final PublishedTable THINNING =
      new PublishedTable(
          Subject.CUTTER,
          "1/(2 sqrt(r (1 - r))), formula of Altintas 2012 ch. 2 (from memory)",
          SourceTag.DERIVED);

  /** 1 / (2 sqrt(r (1 - r))) [derived], formula of Altintas 2012 ch. 2 [memory]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "a_e/D {0} allows {1} times the feed [derived]")
  @CsvSource({
    ".01, 5.02519",
    ".02, 3.57143",
    ".05, 2.29416",
    ".10, 1.66667",
    ".15, 1.40028",
    ".20, 1.25",
    ".25, 1.15470",
    ".30, 1.09109",
    ".40, 1.02062",
    ".5, 1",
    ".8, 1",
    "1, 1"
  })
  void aLightSideCutAllowsMoreFeedForTheSameChip(double ratio, double multiplier) {
    THINNING
        .row("feed allowed at a_e/D " + ratio)
        .figure("multiplier", "", multiplier, ChipThinning.multiplier(ratio), 5e-6);
  }

  /** D 20, up milling a_e 2, f_z 0.05: h_max 0.030 mm; D 16, a_e 4, f_z .06: .051962 [derived]. */
  @Test
  void theThickestChipOfASideCutComesFromItsRadialDepth() {
    assertThat(ChipThinning.thickestChipM(.05e-3, .1, FastMath.PI / 2))
        .isCloseTo(.030e-3, within(1e-9));
    assertThat(ChipThinning.thickestChipM(.06e-3, .25, FastMath.PI / 2))
        .isCloseTo(.051962e-3, within(1e-9));
  }

  /** sin 42 = .669, so 0.12 mm of feed gives a chip of .08 mm; a technical page [found]. */
  @Test
  void aLeadAngleThinsTheChipBySineOfTheEnteringAngle() {
    assertThat(ChipThinning.thickestChipM(.12e-3, .6, FastMath.toRadians(42)))
        .isCloseTo(.08e-3, within(.5e-6));
  }

  @Property
  void aDeeperCutNeverThinsTheChip(
      @ForAll @Scale(7) @DoubleRange(min = .001, max = 1) double one,
      @ForAll @Scale(7) @DoubleRange(min = .001, max = 1) double other) {
    double light = FastMath.min(one, other);
    double heavy = FastMath.max(one, other);
    assertThat(ChipThinning.multiplier(light))
        .isGreaterThanOrEqualTo(ChipThinning.multiplier(heavy));
    assertThat(ChipThinning.thickestChipM(1e-4, light, 1)).isLessThanOrEqualTo(1e-4);
  }

  @Test
  void aCutWiderThanTheCutterIsRefused() {
    assertThatThrownBy(() -> ChipThinning.multiplier(1.01)).isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> ChipThinning.multiplier(0)).isInstanceOf(OutsideValidity.class);
  }
}

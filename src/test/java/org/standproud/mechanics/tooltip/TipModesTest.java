package org.standproud.mechanics.tooltip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.vibration.ModeSet;

/** The quick modes of a tool against the full ones and against one mass on one spring. */
class TipModesTest {

  private static ToolOnSpindle tool(Well19937c random) {
    double d = .01 + .02 * random.nextDouble();
    return new ToolOnSpindle(
        List.of(
            new RoundPart(.02 + .02 * random.nextDouble(), .8 * d, 600e9, 14500, true),
            new RoundPart(.02 + .03 * random.nextDouble(), d, 600e9, 14500, true),
            new RoundPart(.04 + .05 * random.nextDouble(), .045, 205e9, 7850, false)));
  }

  private static SpindleNose nose(Well19937c random) {
    return new SpindleNose(
        1e7 * Math.pow(10, random.nextDouble()),
        .15 + random.nextDouble(),
        3e5 * Math.pow(10, random.nextDouble()),
        250 * Math.pow(4, random.nextDouble()),
        .01 + .1 * random.nextDouble());
  }

  @Test
  void fourUnknownsGiveTheModesOfSix() {
    Well19937c random = new Well19937c(17);
    for (int i = 0; i < 100; i++) {
      ToolOnSpindle tool = tool(random);
      SpindleNose nose = nose(random);
      double edge = .9 + .2 * random.nextDouble();
      TipModes quick = new TipModes(tool);
      quick.solve(edge, nose);
      ModeSet whole = tool.modes(edge, nose, 3);
      for (int m = 0; m < 2; m++) {
        assertThat(quick.hz(m)).isCloseTo(whole.frequencyHz(m), withinPercentage(2));
        assertThat(1 / quick.stiffnessNPerM(m))
            .isCloseTo(1 / whole.stiffnessNPerM(m), within(.03 * whole.staticMPerN()));
      }
    }
  }

  @Test
  void aShortStiffToolSwingsWithItsSpindle() {
    ToolOnSpindle tool = new ToolOnSpindle(List.of(new RoundPart(.002, .02, 600e9, 1000, true)));
    TipModes quick = new TipModes(tool);
    quick.solve(1, new SpindleNose(2e7, .5, 1e9, 400, .03));
    assertThat(quick.hz(0)).isCloseTo(400, withinPercentage(.5));
    assertThat(quick.stiffnessNPerM(0)).isCloseTo(2e7, withinPercentage(1));
  }

  @Test
  void aSofterSpindleGivesMore() {
    ToolOnSpindle tool = tool(new Well19937c(3));
    TipModes quick = new TipModes(tool);
    double before = Double.POSITIVE_INFINITY;
    for (double k = 1e9; k > 2e6; k /= 2) {
      quick.solve(1, new SpindleNose(k, .3, 1e6, 500, .03));
      double give = 0;
      for (int m = 0; m < TipModes.MODES; m++) {
        give += 1 / quick.stiffnessNPerM(m);
      }
      assertThat(1 / give).isLessThan(before);
      before = 1 / give;
    }
  }
}

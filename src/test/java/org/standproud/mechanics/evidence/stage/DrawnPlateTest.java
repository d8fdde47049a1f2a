package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Setup;

/** Signs of what plate and cutter do together. */
class DrawnPlateTest {

  private static double middle(DrawnPlate plate, IntToDoubleFunction number) {
    double[] all = Arrays.stream(plate.draws()).mapToDouble(number).sorted().toArray();
    return all[all.length / 2];
  }

  private static DrawnPlate plate(Setup setup) {
    return DrawnPlate.of(setup).orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"01", "04", "07", "09", "12"})
  void theSofterMemberIsNamedWithTheLimit(String name) {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup(name));
    assertThat(evidence.get(Vocabulary.STABILITY_MARGIN)).isInstanceOf(Value.Quantity.class);
    assertThat(((Value.Text) evidence.get(Vocabulary.SOFTER_MEMBER)).word())
        .isIn("cutter", "plate");
  }

  @ParameterizedTest
  @ValueSource(strings = {"01", "05", "09", "12"})
  void whatLimitsOverAllSpeedsIsNoMoreThanTheChartOfTheDraw(String name) {
    DrawnPlate plate = plate(DemoShop.setup(name));
    double rev = plate.cut().setup().cut().spindleSpeedRevPerS();
    for (int draw : Arrays.stream(plate.draws()).limit(20).toArray()) {
      // The chart leaves out the damping of the flanks, which only raises the limit.
      assertThat(plate.chatterDepthM(draw, rev))
          .isGreaterThan(0.9 * plate.lobes(draw).leastDepthM());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"03", "12"})
  void aTallThinPlateIsTheSofterMemberAndAStoutBlockIsNot(String name) {
    DrawnPlate plate = plate(DemoShop.setup(name));
    DrawnPlate block = plate(DemoShop.setup("01"));
    double revPlate = plate.cut().setup().cut().spindleSpeedRevPerS();
    double revBlock = block.cut().setup().cut().spindleSpeedRevPerS();
    assertThat(middle(plate, draw -> plate.chatter(draw, revPlate).stockShare()))
        .isGreaterThan(middle(block, draw -> block.chatter(draw, revBlock).stockShare()));
  }
}

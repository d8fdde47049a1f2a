package org.standproud.advice.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.ComputationTest;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Verdict;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;

/** The passes that take off what has to come off. */
@ComputationTest
class PassPlanTest {

  private static final double WHOLE_M = 1.5e-3;

  static List<String> names() {
    return DemoShop.names();
  }

  private static PassPlan plan(String name) {
    return PassPlan.of(DemoShop.setup(name), WHOLE_M, DemoShop.CARDS);
  }

  @ParameterizedTest
  @MethodSource("names")
  void thePassesTogetherTakeOffTheWholeAndTheLastIsTheFinish(String name) {
    PassPlan plan = plan(name);
    if (!plan.passes().isEmpty()) {
      double perUnit = DemoShop.setup(name).units() == UnitSystem.INCH ? 0.0254 : 1e-3;
      double taken =
          plan.passes().stream().mapToDouble(p -> (Double) p.takes().value() * perUnit).sum();
      assertThat(taken).isCloseTo(WHOLE_M, within(1e-8));
      List<String> stages = plan.passes().stream().map(PlannedPass::stage).toList();
      assertThat(stages.subList(0, stages.size() - 1)).allMatch("rough"::equals);
      assertThat(stages.get(stages.size() - 1)).isEqualTo("finish");
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void theFirstAndTheLastRoughingPassMayRunOrThereIsNoPlan(String name) {
    List<PlannedPass> rough =
        plan(name).passes().stream().filter(p -> p.stage().equals("rough")).toList();
    if (!rough.isEmpty()) {
      assertThat(rough.get(0).verdict()).isIn(Verdict.RUN, Verdict.RUN_WITH_CARE);
      assertThat(rough.get(rough.size() - 1).verdict()).isIn(Verdict.RUN, Verdict.RUN_WITH_CARE);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyStepToMeasureOrLookStopsTheSpindleFirst(String name) {
    for (PlannedPass pass : plan(name).passes()) {
      if (!pass.then().isEmpty()) {
        assertThat(pass.then().get(0)).startsWith("stop the spindle");
      }
      assertThat(pass.firstContact()).isNotBlank();
    }
  }

  @Test
  void theStockIsMeasuredAfterTheFirstPassAndDeburredBeforeItIsClampedAgain() {
    List<PlannedPass> passes = plan("01").passes();
    assertThat(passes.size()).isGreaterThan(1);
    assertThat(passes.get(0).then().toString()).contains("measure");
    assertThat(passes.get(passes.size() - 1).then().toString())
        .contains("burr")
        .contains("clamped");
  }

  @Test
  void aWholeNoDeeperThanAFinishIsOneFinishingPass() {
    PassPlan plan = PassPlan.of(DemoShop.setup("01"), 0.2e-3, DemoShop.CARDS);
    assertThat(plan.passes()).hasSize(1);
    assertThat(plan.passes().get(0).stage()).isEqualTo("finish");
  }

  @Test
  void nothingToTakeOffOrMoreThanStandsAboveTheJawsIsRefused() {
    Setup setup = DemoShop.setup("01");
    assertThatThrownBy(() -> PassPlan.of(setup, 0, DemoShop.CARDS))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PassPlan.of(setup, setup.stickOutM(), DemoShop.CARDS))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PassPlan.of(setup, Double.NaN, DemoShop.CARDS))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

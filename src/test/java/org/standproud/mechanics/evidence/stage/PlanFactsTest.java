package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.RequestFields;

/** The facts of the planned passes, computed by hand: [derived] by plain differences. */
class PlanFactsTest {

  private static final Setup TOP = DemoShop.setup("01");

  private static PlannedCut pass(Stage stage, double depthM) {
    return new PlannedCut(stage, depthM, null, null);
  }

  private static Evidence planned(PlannedCut... passes) {
    return EvidenceGathering.of(TOP.with(TOP.cut(), List.of(passes)));
  }

  private static List<Double> list(Evidence evidence, Fact fact) {
    return ((Value.Quantities) evidence.get(fact)).bands().stream().map(Band::likely).toList();
  }

  @Test
  void roughingRisesAreComputedFromTheLeastPassBefore() {
    Evidence plan =
        planned(
            pass(Stage.ROUGH, 0.0020),
            pass(Stage.ROUGH, 0.0010),
            pass(Stage.ROUGH, 0.0015),
            pass(Stage.FINISH, 0.0002));
    assertThat(list(plan, Vocabulary.ROUGHING_DEPTHS)).containsExactly(0.0020, 0.0010, 0.0015);
    List<Double> rises = list(plan, Vocabulary.ROUGHING_RISES);
    assertThat(rises).hasSize(2);
    assertThat(rises.get(0)).isCloseTo(-0.0010, within(1e-12));
    assertThat(rises.get(1)).isCloseTo(0.0005, within(1e-12));
    assertThat(list(plan, Vocabulary.FINISHING_DEPTHS)).containsExactly(0.0002);
    assertThat(list(plan, Vocabulary.EARLIER_DEPTHS)).containsExactly(0.0020, 0.0010, 0.0015);
    assertThat(plan.get(Vocabulary.LAST_PASS_DEPTH))
        .isEqualTo(new Value.Quantity(Band.exactly(0.0002)));
    assertThat(plan.get(Vocabulary.NUMBER_OF_PASSES))
        .isEqualTo(new Value.Quantity(Band.exactly(4)));
  }

  @Test
  void onePassAloneRisesOverNothingAndHasNoneBefore() {
    Evidence plan = planned(pass(Stage.ROUGH, 0.0020));
    assertThat(list(plan, Vocabulary.ROUGHING_RISES)).isEmpty();
    assertThat(list(plan, Vocabulary.EARLIER_DEPTHS)).isEmpty();
    assertThat(list(plan, Vocabulary.FINISHING_DEPTHS)).isEmpty();
  }

  @Test
  void aBroadSideIsTakenOffAcrossTheJaws() {
    Evidence side = EvidenceGathering.of(DemoShop.setup("02"));
    assertThat(list(side, Vocabulary.ROUGHING_DEPTHS)).containsExactly(0.0020, 0.0015);
    assertThat(list(side, Vocabulary.RADIAL_DEPTHS)).containsExactly(0.0020, 0.0015, 0.0003);
    assertThat(list(side, Vocabulary.AXIAL_DEPTHS)).containsExactly(0.010, 0.010, 0.010);
    assertThat(list(side, Vocabulary.FEEDS_OF_PASSES))
        .hasSize(3)
        .allSatisfy(feedM -> assertThat(feedM).isCloseTo(60e-6, within(1e-12)));
  }

  @Test
  void passesNotGivenAreMissingAndNotNone() {
    Evidence alone = planned();
    assertThat(alone.get(Vocabulary.PASSES_TOLD)).isEqualTo(new Value.Truth(false));
    for (Fact fact : Vocabulary.all()) {
      if (fact.type() instanceof Fact.Numbers) {
        assertThat(alone.get(fact)).as(fact.name()).isInstanceOf(Value.Missing.class);
      }
    }
    assertThat(alone.get(Vocabulary.NUMBER_OF_PASSES)).isInstanceOf(Value.Missing.class);
  }

  @Test
  void oneFeedThatIsNotGivenLeavesTheFeedsMissing() {
    PlannedCut given = new PlannedCut(Stage.ROUGH, 0.001, null, Band.exactly(0.0001));
    Evidence plan = planned(given, pass(Stage.FINISH, 0.0002));
    assertThat(plan.get(Vocabulary.FEEDS_OF_PASSES)).isInstanceOf(Value.Missing.class);
    assertThat(plan.get(Vocabulary.AXIAL_DEPTHS)).isInstanceOf(Value.Quantities.class);
  }

  @Test
  void aPlanChangesNothingThatIsComputedOfTheCut() {
    Evidence alone = planned();
    Evidence plan = planned(pass(Stage.ROUGH, 0.0005), pass(Stage.FINISH, 0.0002));
    for (Fact fact : Vocabulary.all()) {
      boolean ofThePlan =
          plan.detail(fact).inputs().contains(FieldPointer.to(RequestFields.PASSES));
      if (!ofThePlan) {
        assertThat(plan.get(fact)).as(fact.name()).isEqualTo(alone.get(fact));
      }
    }
  }
}

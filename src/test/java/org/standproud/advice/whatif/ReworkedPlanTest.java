package org.standproud.advice.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standproud.advice.DemoShop;
import org.standproud.advice.compare.FieldChange;
import org.standproud.advice.compare.SetupFields;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.remedy.Remedy;
import org.standproud.setup.Cutter;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;

/** The planned passes of a set-up change with its remedies. */
class ReworkedPlanTest {

  private static PlannedCut pass(Stage stage, double depthM) {
    return new PlannedCut(stage, depthM, null, null);
  }

  private static Setup planned(PlannedCut... passes) {
    Setup setup = DemoShop.setup("01");
    return setup.with(setup.cut(), List.of(passes));
  }

  private static double takenM(Setup setup) {
    return setup.passes().stream().mapToDouble(PlannedCut::takesM).sum();
  }

  private static final PlannedCut ASKED = pass(Stage.ROUGH, 0.0005);
  private static final PlannedCut FINISH = pass(Stage.FINISH, 0.0002);

  @Test
  void halfTheDepthTakesTwiceThePassesAndTheRestOfThePlanStays() {
    Setup halved = SetupEditor.of(planned(ASKED, FINISH)).depth(0.00025).done();
    PlannedCut half = pass(Stage.ROUGH, 0.00025);
    assertThat(halved.passes()).containsExactly(half, half, FINISH);
  }

  @Test
  void equalPassesAreListedOnceWithTheirNumber() {
    Setup before = planned(ASKED, FINISH);
    Setup after = SetupEditor.of(before).depth(0.000125).done();
    assertThat(SetupFields.changes(before, after))
        .extracting(FieldChange::words)
        .contains(
            "planned passes rough 0.5 mm and finish 0.2 mm to 4 times rough 0.125 mm and finish"
                + " 0.2 mm");
  }

  @Test
  void theWholeStillComesOffAtADepthThatDoesNotDivideIt() {
    Setup third = SetupEditor.of(planned(ASKED, FINISH)).depth(0.0002).done();
    assertThat(third.passes()).hasSize(4);
    assertThat(takenM(third)).isGreaterThanOrEqualTo(takenM(planned(ASKED, FINISH)));
  }

  @Test
  void whatIsNotTheDepthOfTheCutLeavesThePlanAsItWas() {
    Setup setup = planned(ASKED, FINISH);
    Setup other =
        SetupEditor.of(setup).speed(5).reversed().grip(0.03).stop(setup.hold().stop()).done();
    assertThat(other.passes()).isEqualTo(setup.passes());
  }

  @Test
  void anotherCutterAtTheSameDepthLeavesThePlanOfABroadSideAsItWas() {
    Setup side = DemoShop.setup("02");
    for (Cutter cutter : DemoShop.CATALOGUE.cutters().values()) {
      Setup swapped = CutterSwap.with(side, cutter);
      List<PlannedCut> before = side.passes();
      List<PlannedCut> after = swapped.passes();
      assertThat(after).as(cutter.name()).hasSameSizeAs(before);
      for (int i = 0; i < before.size(); i++) {
        assertThat(after.get(i).takesM()).isCloseTo(before.get(i).takesM(), within(1e-12));
      }
    }
  }

  @Test
  void aPlanNeverGrowsBeyondTheAllowedNumberOfPasses() {
    Setup fine = SetupEditor.of(planned(ASKED, FINISH)).depth(0.000001).done();
    assertThat(fine.passes()).hasSize(PlannedCut.MOST);
  }

  @Test
  void everyRemedyOfAPlannedCutIsItselfOneOfThePassesOfItsPlan() {
    Setup setup = DemoShop.setup("03");
    PlannedCut asked = setup.asked();
    Setup planned = setup.with(setup.cut(), List.of(asked, pass(Stage.FINISH, 0.0002)));
    Remedies remedies = Remedies.of(planned, DemoShop.CARDS, DemoShop.CATALOGUE);
    List<Setup> advised =
        Stream.concat(remedies.ways().stream(), remedies.nearest().stream())
            .map(Remedy::changed)
            .toList();
    assertThat(advised).isNotEmpty();
    for (Setup then : advised) {
      assertThat(then.passes()).anyMatch(pass -> pass.fits(then.asked()));
    }
  }

  @Test
  void aPlanThatIsWorkedOutIsOneThatTheCardsOnPlansHaveNothingAgainst() {
    Setup plan = planned(ASKED, ASKED, FINISH);
    assertThat(DemoShop.trials().of(plan).ids()).doesNotContainAnyElementsOf(ON_PLANS);
    Setup heavy = planned(ASKED, pass(Stage.FINISH, 0.0008));
    assertThat(DemoShop.trials().of(heavy).ids()).contains("FIN-019", "FIN-020");
  }

  private static final Set<String> ON_PLANS = Set.of("FIN-019", "FIN-020", "VIB-013");
}

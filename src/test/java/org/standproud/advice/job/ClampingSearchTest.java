package org.standproud.advice.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standproud.ComputationTest;
import org.standproud.advice.DemoShop;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Stage;
import org.standproud.setup.Vise;
import org.standproud.setup.request.JobReader;
import org.standproud.setup.request.JobReading;
import org.standproud.setup.request.RequestText;

/** One face of the demonstration job in one vise; the rules of choice are common practice. */
@ComputationTest
class ClampingSearchTest {

  private static final double DEEPEST_ROUGHING_M = 3e-3;
  private static final double OVER_THE_JAWS_M = 3e-3;
  private static final FaceCut SIDE = new FaceCut(Face.SIDE_A, 1.5e-3, 0.3e-3);
  private static final int BUDGET = 60;

  private static MillingJob job;
  private static Piece piece;
  private static Vise vise;

  @BeforeAll
  static void read() throws Exception {
    String request = Files.readString(Path.of("seeds/jobs/01-loom-side-from-blank.json"));
    JobReading reading = new JobReader(DemoShop.CATALOGUE).read(RequestText.json(request));
    job = ((JobReading.Accepted) reading).job();
    piece = Piece.of(job.blank());
    vise =
        job.shelf().vises().stream()
            .max(Comparator.comparingDouble(Vise::greatestOpeningM))
            .orElseThrow();
  }

  private static ClampingSearch.Found found(FaceCut cut, int budget) {
    return new ClampingSearch(job, new PassTrials(DemoShop.CARDS, budget)).found(piece, cut, vise);
  }

  @Test
  void theBestOfAllWaysStandsFirst() {
    ClampingSearch.Found found = found(SIDE, BUDGET);
    assertThat(found.ways()).isNotEmpty().isSortedAccordingTo(ClampingPlan.BEST_FIRST);
    assertThat(found.best()).isSameAs(found.ways().get(0));
  }

  @Test
  void thePassesTakeWhatComesOffNeverDeeperThanAMachinistWouldRough() {
    for (ClampingPlan plan : found(SIDE, BUDGET).ways()) {
      List<PassDraft> first = plan.passes().stream().filter(p -> p.part() == 1).toList();
      assertThat(first.stream().mapToDouble(PassDraft::takesM).sum())
          .isCloseTo(SIDE.wholeM(), within(1e-9));
      assertThat(first)
          .filteredOn(p -> p.stage() == Stage.ROUGH)
          .allMatch(p -> p.takesM() <= DEEPEST_ROUGHING_M + 1e-9);
      assertThat(first.get(first.size() - 1).stage()).isEqualTo(Stage.FINISH);
    }
  }

  @Test
  void theCutStaysClearOfTheJaws() {
    for (ClampingPlan plan : found(SIDE, BUDGET).ways()) {
      double tallM = PassBuilder.tallM(piece, plan.clamping().holding());
      double axialM = PassBuilder.axialM(piece, SIDE, plan.clamping().holding());
      assertThat(plan.clamping().gripM() + axialM + OVER_THE_JAWS_M)
          .isLessThanOrEqualTo(tallM + 1e-9);
    }
  }

  @Test
  void aFaceThatLeavesNothingToGripIsNotPlanned() {
    FaceCut almostAll = new FaceCut(Face.EDGE_A, piece.heightM() - 4e-3, 0);
    assertThat(found(almostAll, BUDGET).best()).isNull();
    assertThat(found(almostAll, BUDGET).ways()).isEmpty();
  }

  @Test
  void withoutABudgetTheFirstChoiceIsStillJudged() {
    ClampingPlan plan = found(SIDE, 0).best();
    assertThat(plan).isNotNull();
    assertThat(plan.passes()).isNotEmpty().allMatch(p -> p.pass().evidence() != null);
  }
}

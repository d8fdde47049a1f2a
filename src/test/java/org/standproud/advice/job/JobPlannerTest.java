package org.standproud.advice.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.ComputationTest;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.request.JobReader;
import org.standproud.setup.request.JobReading;
import org.standproud.setup.request.RequestText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Whole jobs, from the blank to the finished plate. */
@ComputationTest
class JobPlannerTest {

  private static final MillingJob DEMO = job(seed());
  private static final JobPlan PLAN = plan(DEMO, JobPlanner.USUAL_BUDGET);

  private static ObjectNode seed() {
    try {
      return (ObjectNode)
          RequestText.json(Files.readString(Path.of("seeds/jobs/01-loom-side-from-blank.json")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (RequestText.Malformed e) {
      throw new IllegalStateException(e);
    }
  }

  private static MillingJob job(JsonNode request) {
    JobReading reading = new JobReader(DemoShop.CATALOGUE).read(request);
    assertThat(reading).as(String.valueOf(reading)).isInstanceOf(JobReading.Accepted.class);
    return ((JobReading.Accepted) reading).job();
  }

  private static JobPlan plan(MillingJob job, int budget) {
    return JobPlanner.plan(job, DemoShop.CARDS, DemoShop.CATALOGUE, budget);
  }

  private static double mm(Quantity quantity) {
    return (Double) quantity.value();
  }

  /** Plates of a hand's breadth with up to a few millimetres to come off. */
  private static MillingJob random(long seed) {
    Random random = new Random(seed);
    ObjectNode request = seed();
    ObjectNode blank = (ObjectNode) request.get("blank");
    ObjectNode finished = (ObjectNode) request.get("finished");
    double length = 60 + 80 * random.nextDouble();
    double thickness = 12 + 18 * random.nextDouble();
    double height = 40 + 50 * random.nextDouble();
    blank.put("length", length).put("thickness", thickness).put("height", height);
    blank.put("material", List.of("6061-T6", "1020 hot rolled").get(random.nextInt(2)));
    blank.put("edges", List.of("sawn", "rolled", "machined").get(random.nextInt(3)));
    finished.put("length", length - (random.nextBoolean() ? 0 : 0.2 + random.nextDouble()));
    finished.put(
        "thickness", thickness - (random.nextBoolean() ? 0 : 0.2 + 2 * random.nextDouble()));
    finished.put("height", height - 0.2 - 3 * random.nextDouble());
    return job(request);
  }

  @Test
  void whatThePassesTakeAddsUpToTheBlankLessTheFinishedPlateOnEachFace() {
    checkRemoval(DEMO, PLAN);
  }

  private static void checkRemoval(MillingJob job, JobPlan plan) {
    for (Face face : Face.values()) {
      double wantedM =
          switch (face) {
            case SIDE_A, SIDE_B -> job.blank().thicknessM() - job.finished().thicknessM();
            case EDGE_A, EDGE_B -> job.blank().heightM() - job.finished().heightM();
            case END_A, END_B -> job.blank().lengthM() - job.finished().lengthM();
          };
      double taken =
          plan.allPasses().stream()
              .filter(pass -> pass.face().equals(face.words()) && pass.part() == 1)
              .mapToDouble(pass -> mm(pass.takes()))
              .sum();
      assertThat(taken).as(face.words()).isCloseTo(500 * wantedM, within(1e-4));
    }
    PieceSize last = plan.allPasses().get(plan.allPasses().size() - 1).after();
    assertThat(mm(last.length())).isCloseTo(1e3 * job.finished().lengthM(), within(1e-3));
    assertThat(mm(last.thickness())).isCloseTo(1e3 * job.finished().thicknessM(), within(1e-3));
    assertThat(mm(last.height())).isCloseTo(1e3 * job.finished().heightM(), within(1e-3));
  }

  @Test
  void theStockOfEveryPassIsThatOfThePassBeforeLessItsCut() {
    checkStock(PLAN);
  }

  private static void checkStock(JobPlan plan) {
    for (RouteSetUp setUp : plan.setUps()) {
      double goneM = 0;
      Setup first = setUp.passes().get(0).held();
      for (RoutePass pass : setUp.passes()) {
        Setup held = pass.held();
        boolean side = held.cut().operation() == Operation.BROAD_SIDE;
        double nowM = side ? held.stock().thicknessM() : held.stock().heightM();
        double thenM = side ? first.stock().thicknessM() : first.stock().heightM();
        assertThat(nowM).as("pass " + pass.number()).isCloseTo(thenM - goneM, within(1e-8));
        double cutsM = side ? held.sideDepthM() : held.cut().axialDepthM();
        assertThat(1e3 * cutsM).isCloseTo(mm(pass.takes()), within(1e-4));
        goneM += side || pass.part() == pass.parts() ? cutsM : 0;
      }
    }
    List<RoutePass> all = plan.allPasses();
    for (int i = 1; i < all.size(); i++) {
      if (all.get(i).parts() == 1 || !all.get(i).face().equals(all.get(i - 1).face())) {
        assertThat(all.get(i).before()).isEqualTo(all.get(i - 1).after());
      }
    }
  }

  @Test
  void theVerdictOfTheJobIsThatOfItsRiskiestPass() {
    checkRisk(PLAN);
  }

  private static void checkRisk(JobPlan plan) {
    Verdict worst =
        plan.allPasses().stream()
            .map(RoutePass::verdict)
            .max(Comparator.naturalOrder())
            .orElseThrow();
    assertThat(plan.verdict()).isEqualTo(worst);
    RoutePass riskiest = plan.allPasses().get(plan.riskiest().pass() - 1);
    assertThat(riskiest.number()).isEqualTo(plan.riskiest().pass());
    assertThat(riskiest.verdict()).isEqualTo(worst);
    for (RoutePass pass : plan.allPasses()) {
      if (pass.verdict() == worst && pass.chance() != null && riskiest.chance() != null) {
        assertThat(riskiest.chance()).isLessThanOrEqualTo(pass.chance());
      }
    }
    assertThat(plan.riskiest().text()).startsWith("Riskiest: pass " + riskiest.number());
    boolean runs = worst == Verdict.RUN || worst == Verdict.RUN_WITH_CARE;
    assertThat(plan.otherHolds().isEmpty()).isEqualTo(runs);
    assertThat(plan.summary())
        .startsWith(
            switch (worst) {
              case RUN -> "OK to run";
              case RUN_WITH_CARE -> "Run with care";
              case NOT_JUDGED -> "Can't tell yet, so don't run";
              case DO_NOT_RUN -> "Do not run";
            });
    assertThat(plan.cautions()).isNotEmpty();
  }

  /**
   * Broad sides before edges or edges before broad sides, ends last, opposite faces one after the
   * other: common practice, no source.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void everySequenceMillsEndsLastAndNoFaceTwiceInARow(int index) {
    Sequence sequence = Sequence.values()[index];
    List<FaceCut> cuts = sequence.cuts(new Removal(1e-3, 1.5e-3, 0.8e-3, 0.25e-3));
    List<Face> faces = cuts.stream().map(FaceCut::face).toList();
    assertThat(faces.subList(faces.size() - 2, faces.size()))
        .containsExactly(Face.END_A, Face.END_B);
    for (int i = 1; i < faces.size(); i++) {
      assertThat(faces.get(i)).isNotEqualTo(faces.get(i - 1));
    }
    assertThat(new HashSet<>(faces)).containsExactlyInAnyOrder(Face.values());
    assertThat(faces.indexOf(Face.EDGE_B)).isEqualTo(faces.indexOf(Face.EDGE_A) + 1);
    for (Face face : Face.values()) {
      List<FaceCut> own = cuts.stream().filter(cut -> cut.face() == face).toList();
      assertThat(own.get(own.size() - 1).finishM()).as(face.words()).isPositive();
    }
  }

  @Test
  void theFirstBroadSideIsFinishedAfterTheSecondWasOpened() {
    List<FaceCut> cuts = Sequence.ALTERNATE_SIDES.cuts(new Removal(1e-3, 0, 0, 0.25e-3));
    assertThat(cuts)
        .containsExactly(
            new FaceCut(Face.SIDE_A, 0.75e-3, 0),
            new FaceCut(Face.SIDE_B, 0.75e-3, 0.25e-3),
            new FaceCut(Face.SIDE_A, 0, 0.25e-3));
  }

  @Test
  void packingIsOutOnceTheGrippedFacesAreMilled() {
    Set<String> milled = new HashSet<>();
    for (RouteSetUp setUp : PLAN.setUps()) {
      boolean flat = setUp.holding().equals(Holding.FLAT.words());
      List<Face> gripped =
          flat ? List.of(Face.EDGE_A, Face.EDGE_B) : List.of(Face.SIDE_A, Face.SIDE_B);
      if (gripped.stream().allMatch(face -> milled.contains(face.words()))) {
        assertThat(setUp.packing()).as("set-up " + setUp.number()).isNull();
      }
      milled.add(setUp.face());
    }
  }

  /** The ranges of the catalogue are the published ones; a machine may be too slow for them. */
  @Test
  void speedsAndFeedsLieInThePublishedRangeAsFarAsTheMachineHasThem() {
    for (RoutePass pass : PLAN.allPasses()) {
      Setup held = pass.held();
      CuttingRange range = held.stock().material().rangeFor(held.cutter().toolMaterial());
      double speedMPerS = Math.PI * held.cutter().diameterM() * held.cut().spindleSpeedRevPerS();
      double fastest = held.machine().greatestSpeedRevPerS();
      assertThat(
              speedMPerS <= range.greatestSpeedMPerS() * 1.01
                  && (speedMPerS >= range.leastSpeedMPerS() * 0.99
                      || held.cut().spindleSpeedRevPerS() >= fastest * 0.99))
          .as("pass " + pass.number())
          .isTrue();
      assertThat(held.cut().feedPerToothM().likely())
          .isLessThanOrEqualTo(range.greatestFeedPerToothM() * 1.000001);
    }
  }

  @Test
  void theTimeIsThatOfTheStepsAndThePasses() {
    double minutes = PLAN.setUps().stream().mapToDouble(RouteSetUp::minutes).sum();
    assertThat(PLAN.minutes().likely()).isCloseTo(minutes, within(1e-9));
    assertThat(PLAN.cutMinutes()).isPositive().isLessThan(PLAN.minutes().likely());
    assertThat(PLAN.minutes().low()).isLessThan(PLAN.minutes().likely());
  }

  /** Each pass has something to hear, see and feel, and never sends a hand to the cutter. */
  @Test
  void everyPassSaysWhatTheFirstCentimetreIsLike() {
    for (RoutePass pass : PLAN.allPasses()) {
      FirstCentimetre first = pass.firstCentimetre();
      assertThat(first.hear()).isNotEmpty();
      assertThat(first.see()).isNotEmpty();
      assertThat(first.stop()).anyMatch(line -> line.startsWith("Stop if the sound"));
      String feel = String.join(" ", first.feel());
      assertThat(feel).contains("spindle stopped");
      String beat = String.valueOf(first.hear().get(0));
      double hz = pass.held().cut().spindleSpeedRevPerS() * pass.held().cutter().teeth();
      assertThat(beat).contains(String.valueOf(Math.round(hz)).substring(0, 2));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 23, 37, 58})
  void whatHoldsForTheDemonstrationHoldsForAnyBlank(long seed) {
    MillingJob job = random(seed);
    JobPlan plan = plan(job, 40);
    checkRemoval(job, plan);
    checkStock(plan);
    checkRisk(plan);
  }

  @Test
  void aPlateThatNothingHoldsIsNeverSafeAndSaysWhatElseWasTried() {
    ObjectNode request = seed();
    ((ObjectNode) request.get("blank")).put("thickness", 3).put("height", 140);
    ((ObjectNode) request.get("finished")).put("thickness", 3).put("height", 137);
    ((ObjectNode) request.get("finished")).put("length", 122);
    ((ObjectNode) request.get("shelf")).putArray("vises").add("old shop vise 100");
    JobPlan plan = plan(job(request), 100);
    checkRisk(plan);
    assertThat(plan.verdict()).isIn(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);
    assertThat(plan.summary()).contains("pass " + plan.riskiest().pass());
    assertThat(plan.otherHolds()).hasSize(3);
    List<String> ways = new ArrayList<>();
    plan.otherHolds().forEach(hold -> ways.add(hold.way()));
    assertThat(ways).anyMatch(way -> way.contains("flat on the table"));
  }
}

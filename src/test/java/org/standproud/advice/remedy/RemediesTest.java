package org.standproud.advice.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.ComputationTest;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.Severity;
import org.standproud.setup.Backing;
import org.standproud.setup.JawSide;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;

/** What is listed to put a set-up right does put it right. */
@ComputationTest
@Execution(ExecutionMode.CONCURRENT)
class RemediesTest {

  /** Set-ups judged for a bad set-up at most: each is a full run of the mechanics. */
  private static final int MOST_JUDGED = 140;

  static List<String> names() {
    return DemoShop.names();
  }

  /** Searches are long: one for each demonstration set-up serves all tests. */
  private static final Map<String, RemedySearch> SEARCHES = new ConcurrentHashMap<>();

  private static RemedySearch search(Setup setup, Trials trials) {
    return new RemedySearch(setup, trials, DemoShop.CATALOGUE);
  }

  private static RemedySearch search(String name) {
    return SEARCHES.computeIfAbsent(name, each -> search(DemoShop.setup(each), DemoShop.trials()));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyWayOfADemonstrationSetUpIsRightWhenItIsJudgedAfresh(String name) {
    assertRight(search(name));
  }

  @net.jqwik.api.Tag("computation")
  @Property(tries = 8)
  void everyWayOfAnySetUpIsRightWhenItIsJudgedAfresh(@ForAll @LongRange(max = 99_999) long seed) {
    assertRight(search(DemoShop.perturbed(seed), DemoShop.trials()));
  }

  /**
   * Ways clear every stop, cost no score, add no stop and cannot do without one of their changes.
   */
  private static void assertRight(RemedySearch search) {
    Judged base = search.base();
    for (ProvenChange way : search.ways()) {
      Judged afresh = DemoShop.trials().of(way.setup());
      assertThat(afresh.stops()).as(way.steps().toString()).isEmpty();
      assertThat(afresh.verdict()).isIn(Verdict.RUN, Verdict.RUN_WITH_CARE);
      assertNoWorse(way, base);
      assertNoPartWorks(way, search);
    }
    search
        .singles()
        .forEach(
            (finding, remedies) ->
                assertThat(remedies)
                    .allSatisfy(
                        r -> {
                          assertThat(r.steps()).hasSize(1);
                          assertThat(r.judged().ids()).doesNotContain(finding.id());
                          assertNoWorse(r, base);
                        }));
  }

  private static void assertNoWorse(ProvenChange way, Judged base) {
    assertThat(way.judged().score()).isGreaterThanOrEqualTo(base.score());
    assertThat(base.stops()).containsAll(way.judged().stops());
  }

  private static void assertNoPartWorks(ProvenChange way, RemedySearch search) {
    int changes = way.steps().size();
    assertThat(changes).isBetween(1, 3);
    for (int subset = 0; subset < (1 << changes) - 1; subset++) {
      int chosen = subset;
      List<Step> part =
          IntStream.range(0, changes)
              .filter(i -> (chosen >> i & 1) == 1)
              .mapToObj(way.steps()::get)
              .toList();
      assertThat(search.works(search.prove(part)))
          .as("without a part of %s", way.steps())
          .isFalse();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void aSmallerStepOfASingleChangeDoesNotDoWhereMoreHelpsMore(String name) {
    RemedySearch search = search(name);
    for (ProvenChange way : search.ways()) {
      Step step = way.steps().get(0);
      if (way.steps().size() == 1 && step.rung() > 0) {
        ProvenChange less = search.prove(List.of(step.ladder().at(step.rung() - 1)));
        assertThat(search.works(less)).isFalse();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void theSearchJudgesAFewHundredSetUpsAtMostAndIsTheSameEveryTime(String name) {
    Remedies once = DemoShop.remedies(name);
    assertThat(once.judged()).isLessThanOrEqualTo(MOST_JUDGED);
    assertThat(Remedies.of(DemoShop.setup(name), DemoShop.CARDS, DemoShop.CATALOGUE))
        .isEqualTo(once);
  }

  @Test
  void everyStopAndEveryCautionIsLookedAtAndNoNote() {
    RemedySearch search = search(DemoShop.setup("03"), DemoShop.trials());
    assertThat(search.singles().keySet())
        .hasSize(search.base().stops().size() + search.base().cautions().size())
        .noneMatch(finding -> finding.severity() == Severity.NOTE);
  }

  @Test
  void theGripIsNeverMadeDeeperThanTheJawNorTheStickOutLessThanTheCut() {
    for (String name : DemoShop.names()) {
      Setup setup = DemoShop.setup(name);
      for (Ladder ladder : search(name).ladders()) {
        for (int rung = 0; rung < ladder.size(); rung++) {
          if (ladder.kind() == ChangeKind.GRIP) {
            Setup deeper = Step.all(List.of(ladder.at(rung)), setup);
            assertThat(deeper.hold().gripDepthM())
                .isGreaterThan(setup.hold().gripDepthM())
                .isLessThanOrEqualTo(setup.hold().vise().jawHeightM() + 1e-9);
            assertThat(deeper.stickOutM()).isGreaterThan(setup.cut().axialDepthM());
          }
        }
      }
    }
  }

  @Test
  void packingPutInLiesWhollyInsideTheGripAndOnTheMovableJaw() {
    for (String name : DemoShop.names()) {
      Setup setup = DemoShop.setup(name);
      search(name).ladders().stream()
          .filter(ladder -> ladder.kind() == ChangeKind.PACKING)
          .map(ladder -> Step.all(List.of(ladder.at(0)), setup))
          .flatMap(changed -> changed.hold().packing().stream())
          .forEach(
              piece ->
                  assertThat(piece.depthM())
                      .isBetween(0.0, setup.hold().gripDepthM() - piece.sizeM() / 2 + 1e-9));
    }
  }

  @Test
  void aStopIsOfferedFirstAtTheEndThatTheCutPushesToward() {
    Setup none = SetupEditor.of(DemoShop.setup("03")).stop(Stop.NONE).done();
    Setup reversed = SetupEditor.of(none).reversed().done();
    assertThat(firstStop(none)).isNotEqualTo(Stop.BOTH);
    assertThat(firstStop(reversed)).isNotEqualTo(Stop.BOTH).isNotEqualTo(firstStop(none));
  }

  private static Stop firstStop(Setup setup) {
    return search(setup, DemoShop.trials()).ladders().stream()
        .filter(ladder -> ladder.kind() == ChangeKind.STOP)
        .map(ladder -> Step.all(List.of(ladder.at(0)), setup).hold().stop())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void climbAndConventionalAreOfferedOnASideOnlyAndTheOffsetOnATopEdgeOnly() {
    for (String name : DemoShop.names()) {
      Setup setup = DemoShop.setup(name);
      boolean side = setup.cut().operation() == Operation.BROAD_SIDE;
      List<ChangeKind> kinds = search(name).ladders().stream().map(Ladder::kind).toList();
      assertThat(kinds.contains(ChangeKind.MODE)).isEqualTo(side);
      assertThat(kinds.contains(ChangeKind.DIRECTION)).isEqualTo(!side);
      assertThat(kinds.contains(ChangeKind.SIDE_DEPTH)).isEqualTo(side);
    }
  }

  @Test
  void onlySpeedsTheGearedHeadHasAreOffered() {
    Setup setup = DemoShop.setup("03");
    search(setup, DemoShop.trials()).ladders().stream()
        .filter(ladder -> ladder.kind() == ChangeKind.SPEED)
        .flatMap(
            ladder ->
                IntStream.range(0, ladder.size())
                    .mapToObj(rung -> Step.all(List.of(ladder.at(rung)), setup)))
        .forEach(
            s ->
                assertThat(setup.machine().speedsRevPerS())
                    .contains(s.cut().spindleSpeedRevPerS()));
  }

  @Test
  void morePassesCostTheTimeOfEachAndASetUpTimeIsStatedAsABandWithoutSource() {
    Setup setup = DemoShop.setup("03");
    RemedySearch search = search(setup, DemoShop.trials());
    Ladder depth =
        search.ladders().stream()
            .filter(ladder -> ladder.kind() == ChangeKind.DEPTH)
            .findFirst()
            .orElseThrow();
    Cost cost =
        new RemedyWriter(setup, search.base(), DemoShop.CARDS)
            .cost(search.prove(List.of(depth.at(0))));
    assertThat(cost.passes()).isEqualTo(2);
    assertThat(cost.cutAfter()).isGreaterThan(2 * cost.cutBefore());
    assertThat(cost.added())
        .isCloseTo(cost.setUpLikely() + cost.cutAfter() - cost.cutBefore(), within(0.011));
    assertThat(cost.setUpLeast()).isLessThan(cost.setUpGreatest());
    assertThat(cost.source()).contains("common practice, no source");
  }

  @ParameterizedTest
  @MethodSource("names")
  void noWayIsOneThatAToolmakerWouldNotTake(String name) {
    Setup setup = DemoShop.setup(name);
    RemedySearch search = search(name);
    for (ProvenChange way : search.ways()) {
      Setup after = way.setup();
      int levels = setup.cut().operation() == Operation.TOP_EDGE ? 6 : 36;
      assertThat(Passes.of(setup, after)).isLessThanOrEqualTo(levels);
      if (setup.cut().stage() == Stage.ROUGH && Passes.of(setup, after) > 1) {
        assertThat(after.cut().axialDepthM()).isGreaterThanOrEqualTo(0.2e-3 - 1e-9);
      }
      boolean full = after.hold().gripDepthM() >= after.hold().vise().jawHeightM() - 1e-9;
      assertThat(full || after.stickOutM() <= 5 * after.hold().gripDepthM() + 1e-9)
          .as("stands %s on %s", after.stickOutM(), after.hold().gripDepthM())
          .isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void waysComeInTheOrderInWhichAToolmakerTriesThemAndTheConclusionAgrees(String name) {
    Remedies remedies = DemoShop.remedies(name);
    List<Remedy> ways = remedies.ways();
    for (int i = 1; i < ways.size(); i++) {
      if (ways.get(i).verdict().equals(ways.get(i - 1).verdict())) {
        assertThat(turn(ways.get(i))).isGreaterThanOrEqualTo(turn(ways.get(i - 1)));
      }
    }
    if (remedies.conclusion().contains("no single change tried does so alone")) {
      assertThat(ways).allSatisfy(way -> assertThat(way.kinds().size()).isGreaterThan(1));
    }
  }

  private static int turn(Remedy way) {
    return way.kinds().stream()
        .mapToInt(
            words ->
                Stream.of(ChangeKind.values())
                    .filter(kind -> kind.words().equals(words))
                    .findFirst()
                    .orElseThrow()
                    .turn())
        .max()
        .orElse(0);
  }

  @Test
  void aWayOutIsNeitherALedgeOfAGripNorACutterAtACrawl() {
    Setup setup = DemoShop.setup("03");
    assertThat(setup.stickOutM()).isGreaterThan(5 * setup.hold().gripDepthM());
    assertThat(ShopPractice.standsLow(SetupEditor.of(setup).depth(0.2e-3).done())).isFalse();
    Setup deep = SetupEditor.of(setup).grip(0.03).done();
    assertThat(ShopPractice.standsLow(deep)).isTrue();
    double crawl = 18.0 / 60 / (Math.PI * setup.cutter().diameterM());
    assertThat(ShopPractice.runsUpToSpeed(setup, SetupEditor.of(deep).speed(crawl).done()))
        .isFalse();
  }

  @Test
  void whereNothingWorksTheAnswerSaysSoAndListsTheNearest() {
    Remedies hopeless = DemoShop.remedies(DemoShop.name("11"));
    if (hopeless.ways().isEmpty()) {
      assertThat(hopeless.conclusion()).contains("hold it another way");
      assertThat(hopeless.nearest()).isNotEmpty();
      assertThat(hopeless.nearest().get(0).stopsLeft()).isNotEmpty();
    } else {
      assertThat(hopeless.ways().get(0).stopsLeft()).isEmpty();
    }
  }

  @Test
  void aChangeHasItsOldAndItsNewValueInTheCallersUnits() {
    Remedies inch = DemoShop.remedies(DemoShop.name("09"));
    List<Remedy> listed = new ArrayList<>(inch.ways());
    listed.addAll(inch.nearest());
    inch.byCard().forEach(card -> listed.addAll(card.remedies()));
    assertThat(listed).isNotEmpty();
    assertThat(listed)
        .flatExtracting(Remedy::changes)
        .isNotEmpty()
        .allSatisfy(change -> assertThat(change.words()).contains(" to ").doesNotContain(" mm"));
  }

  private static Stream<ProvenChange> rungs(RemedySearch search, ChangeKind kind) {
    return search.ladders().stream()
        .filter(ladder -> ladder.kind() == kind)
        .flatMap(
            ladder ->
                IntStream.range(0, ladder.size())
                    .mapToObj(rung -> search.prove(List.of(ladder.at(rung)))));
  }

  /** Common practice, no source: behind the plate where the cut pushes to, below the cutter. */
  @Test
  void aBackingStandsWhereTheCutPushesToAndClearOfTheCutter() {
    for (String name : List.of("03", "04", "12")) {
      Setup setup = DemoShop.setup(name);
      RemedySearch search = search(DemoShop.name(name));
      double towardN = high(search.base(), Vocabulary.PUSH_FIXED);
      double awayN = high(search.base(), Vocabulary.PUSH_MOVABLE);
      assertThat(rungs(search, ChangeKind.BACKING))
          .isNotEmpty()
          .allSatisfy(
              change -> {
                Backing behind = change.setup().hold().backing().get(0);
                assertThat(behind.side())
                    .isEqualTo(towardN >= awayN ? JawSide.FIXED : JawSide.MOVABLE);
                assertThat(behind.heightM())
                    .isLessThanOrEqualTo(
                        setup.stickOutM() - setup.cut().axialDepthM() - 3e-3 + 1e-9);
                assertThat(change.judged().ids()).doesNotContain("REACH-011");
              });
    }
  }

  private static double high(Judged judged, Fact fact) {
    return ((Value.Quantity) judged.evidence().get(fact)).band().high();
  }

  /** A post of twice the height is eight times as soft at its top: 3 E I/h^3. */
  @Test
  void higherJawsGripDeeperAndBendMore() {
    Setup setup = DemoShop.setup("08");
    double stiff = setup.hold().vise().fixedJawStiffnessNPerM().likely();
    double highM = setup.hold().vise().jawHeightM();
    List<ProvenChange> higher =
        rungs(search(DemoShop.name("08")), ChangeKind.JAWS)
            .filter(change -> change.setup().hold().vise().jawHeightM() > highM)
            .toList();
    assertThat(higher).isNotEmpty();
    for (ProvenChange change : higher) {
      Vise vise = change.setup().hold().vise();
      double times = vise.jawHeightM() / highM;
      assertThat(change.setup().hold().gripDepthM()).isEqualTo(vise.jawHeightM());
      assertThat(vise.fixedJawStiffnessNPerM().likely() * times * times * times)
          .isCloseTo(stiff, within(1e-6 * stiff));
      assertThat(change.setup().stickOutM()).isGreaterThanOrEqualTo(setup.cut().axialDepthM());
    }
  }

  @Test
  void theFirstLineNamesTheOneThingToDo() {
    for (String name : DemoShop.names()) {
      Remedies remedies = DemoShop.remedies(name);
      if (!remedies.ways().isEmpty()) {
        String first = remedies.ways().get(0).argument().split("[.] ")[0];
        assertThat(remedies.conclusion()).startsWith(first);
      }
    }
  }

  /** Levels and strips together are among what is tried, in no more passes than are usual. */
  @Test
  void aBroadSideIsSteppedDownItsHeightTogetherWithItsDepth() {
    Setup setup = DemoShop.setup("05");
    RemedySearch search = search(DemoShop.name("05"));
    ProvenChange levels = rungs(search, ChangeKind.DEPTH).findFirst().orElseThrow();
    ProvenChange strips = rungs(search, ChangeKind.SIDE_DEPTH).findFirst().orElseThrow();
    ProvenChange both =
        search.prove(Stream.concat(levels.steps().stream(), strips.steps().stream()).toList());
    assertThat(Passes.of(setup, both.setup())).isEqualTo(4);
    assertThat(both.judged().score()).isGreaterThanOrEqualTo(levels.judged().score());
  }
}

package org.standproud.advice.workholding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.ComputationTest;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.rules.card.Severity;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;

/** The other ways to hold the same job. */
@ComputationTest
class OtherHoldsTest {

  static List<String> names() {
    return DemoShop.names();
  }

  /** Worked out once for all tests. */
  private static final Map<String, OtherHolds> WHERE_THE_VISE_CANNOT = new ConcurrentHashMap<>();

  private static OtherHolds whereTheViseCannot(String name) {
    return WHERE_THE_VISE_CANNOT.computeIfAbsent(name, each -> of(DemoShop.setup(each), false));
  }

  private static OtherHolds of(Setup setup, boolean viseCan) {
    return OtherHolds.of(setup, viseCan, DemoShop.CARDS, DemoShop.CATALOGUE);
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyJobIsComputedThreeOtherWaysEachWithATimeBandOrAReasonWhyNot(String name) {
    OtherHolds holds = whereTheViseCannot(name);
    assertThat(holds.holds()).hasSize(3).extracting(OtherHold::way).doesNotHaveDuplicates();
    for (OtherHold hold : holds.holds()) {
      assertThat(hold.setUpLeast()).isLessThan(hold.setUpLikely());
      assertThat(hold.setUpLikely()).isLessThan(hold.setUpGreatest());
      assertThat(hold.cannot() == null).isEqualTo(hold.verdict() != null);
      if (hold.cannot() == null) {
        assertThat(hold.margins()).hasSize(5);
        assertThat(hold.items()).isNotEmpty();
        assertThat(hold.cutMinutes()).isPositive();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void theCardsThatLimitTheHoldOfAViseStandAgainstAHoldBelowTheirLimits(String name) {
    for (OtherHold hold : whereTheViseCannot(name).holds()) {
      if (hold.cannot() == null && low(hold.margins().get(4)) < 1) {
        assertThat(hold.verdict()).as(hold.way()).isNotEqualTo(Verdict.RUN);
        assertThat(hold.against()).isNotEmpty();
      }
    }
  }

  private static double low(Quantity margin) {
    return margin.low() != null ? margin.low() : (Double) margin.value();
  }

  @Test
  void noCardOfJawsOrPackingIsAskedAboutAHoldWithoutThem() {
    HoldingCards cards = new HoldingCards(DemoShop.CARDS);
    assertThat(cards.asked()).isNotEmpty();
    assertThat(cards.asked())
        .allSatisfy(
            id ->
                assertThat(
                        DemoShop.CARDS.cards().stream()
                            .filter(c -> c.id().equals(id))
                            .findFirst()
                            .orElseThrow()
                            .facts())
                    .doesNotContain(
                        Vocabulary.JAW_SURFACE,
                        Vocabulary.MOVABLE_JAW_PACKING,
                        Vocabulary.FIXED_JAW_PACKING));
  }

  @Test
  void anotherWayIsPreferredOnlyWhereTheViseCannotBeMadeRightAndItHolds() {
    for (String name : DemoShop.names()) {
      Setup setup = DemoShop.setup(name);
      assertThat(of(setup, true).recommended()).isFalse();
      OtherHolds holds = whereTheViseCannot(name);
      boolean runs =
          Set.of(Verdict.RUN, Verdict.RUN_WITH_CARE).contains(holds.holds().get(0).verdict());
      assertThat(holds.recommended()).isEqualTo(runs);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void aHoldWithAStopThatCouldNotBeJudgedIsNeverShownAsSafe(String name) {
    for (OtherHold hold : whereTheViseCannot(name).holds()) {
      if (hold.open().stream().anyMatch(open -> open.severity() == Severity.STOP)) {
        assertThat(hold.verdict()).isIn(Verdict.NOT_JUDGED, Verdict.DO_NOT_RUN);
      }
    }
  }

  /** What the mechanics computes is judged; nothing about springing is waved through unjudged. */
  @ParameterizedTest
  @MethodSource("names")
  void springAndVibrationAreJudgedInEveryHoldThatIsComputed(String name) {
    for (OtherHold hold : whereTheViseCannot(name).holds()) {
      if (hold.cannot() == null && hold.verdict() != Verdict.DO_NOT_RUN) {
        assertThat(hold.open())
            .as(hold.way())
            .extracting(HeldFinding::card)
            .doesNotContain("VIB-001", "VIB-002", "VIB-012");
        assertThat(hold.remarks()).anyMatch(remark -> remark.contains("give and vibration"));
      }
    }
  }

  @Test
  void aTallPlateFreeAboveTheBackingIsNotAssumedRigid() {
    OtherHold side =
        whereTheViseCannot(DemoShop.name("11")).holds().stream()
            .filter(h -> h.way().contains("side of the vise"))
            .findFirst()
            .orElseThrow();
    assertThat(Stream.concat(side.against().stream(), side.open().stream()))
        .extracting(HeldFinding::card)
        .contains("VIB-012");
  }

  @Test
  void aCutterThatWillNotGoInUprightGoesInOverAPlateThatLies() {
    OtherHolds holds = whereTheViseCannot(DemoShop.name("11"));
    assertThat(holds.recommended()).isTrue();
    assertThat(holds.holds().get(0).way()).contains("flat on the table");
    assertThat(holds.holds().get(0).against())
        .extracting(HeldFinding::card)
        .doesNotContain("REACH-001");
  }

  @Test
  void aSupportOnTheOtherSideTakesThePushesTheOtherWayRound() {
    Setup setup = DemoShop.setup("05");
    Evidence evidence = EvidenceGathering.of(setup);
    HoldingLoad as = CutLoad.of(evidence, setup, false, 0.01).orElseThrow();
    HoldingLoad mirrored = CutLoad.of(evidence, setup, true, 0.01).orElseThrow();
    assertThat(mirrored.likely().towardFixedN()).isEqualTo(as.likely().awayN());
    assertThat(mirrored.likely().awayN()).isEqualTo(as.likely().towardFixedN());
    assertThat(mirrored.likely().plusXN()).isEqualTo(as.likely().plusXN());
  }

  @Test
  void aPlateLaidFlatKeepsItsSizesAndWhatComesOff() {
    for (String name : DemoShop.names()) {
      Setup standing = DemoShop.setup(name);
      LaidFlat.of(standing, DemoShop.CATALOGUE)
          .ifPresent(
              laid -> {
                Setup flat = laid.setup();
                assertThat(flat.stock().heightM()).isEqualTo(standing.stock().thicknessM());
                assertThat(flat.stock().thicknessM()).isEqualTo(standing.stock().heightM());
                if (standing.cut().operation() == Operation.TOP_EDGE) {
                  assertThat(flat.cut().operation()).isEqualTo(Operation.BROAD_SIDE);
                  assertThat(flat.sideDepthM())
                      .isCloseTo(standing.cut().axialDepthM(), within(1e-12));
                  assertThat(flat.cut().axialDepthM()).isEqualTo(standing.stock().thicknessM());
                } else {
                  assertThat(flat.cut().axialDepthM()).isEqualTo(standing.sideDepthM());
                  assertThat(laid.strips()).isPositive();
                }
              });
    }
  }

  @Test
  void aLighterCutIsHeldNoWorseOnTheAnglePlate() {
    Setup setup = DemoShop.setup("03");
    Setup lighter = SetupEditor.of(setup).depth(setup.cut().axialDepthM() / 10).done();
    assertThat(passes(of(lighter, false))).isLessThanOrEqualTo(passes(of(setup, false)));
  }

  private static int passes(OtherHolds holds) {
    return holds.holds().stream()
        .filter(h -> h.way().contains("angle plate"))
        .mapToInt(OtherHold::passes)
        .findFirst()
        .orElseThrow();
  }
}

package org.standproud.mechanics.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.mechanics.evidence.stage.RandomShop;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Setup;
import org.standproud.setup.Spin;

class ForceHistoryTest {

  private static final Setup ANY = new RandomShop(1).next();

  private static Optional<ForceHistory> history(PassFixture pass) {
    return ForceHistory.of(
        new Setup(
            ANY.job(),
            pass.stock(),
            ANY.hold(),
            ANY.machine(),
            pass.cutter(),
            pass.cut(),
            ANY.units()));
  }

  @Test
  void theForceComesInWithTheCutterStaysLevelAndGoesOutWithIt() {
    PathCurve path = history(PassFixture.pass(63, 5, 10, 0, 0.12)).orElseThrow().path();
    List<Band> across = path.y().leastN();
    assertThat(path.stretches()).isSorted();
    assertThat(path.axisXM()).isSorted();
    // D 63: the cutter touches where its circle reaches the end, 31.5 mm before the stock of 200
    assertThat(path.axisXM().get(0)).isCloseTo(-0.1315, within(1e-9));
    assertThat(across.get(0).low()).as("before the touch").isCloseTo(0, within(1e-6));
    assertThat(across.get(across.size() - 1).low()).as("gone").isCloseTo(0, within(1e-6));
    int first = path.stretches().indexOf(PassStretch.STEADY);
    int last = path.stretches().lastIndexOf(PassStretch.STEADY);
    assertThat(last).isGreaterThan(first);
    assertThat(across.subList(first, last + 1)).containsOnly(across.get(first));
  }

  @Test
  void reversingTheFeedOfACentredCutDrawsTheSamePathFromTheOtherEnd() {
    PassFixture pass = PassFixture.pass(63, 5, 40, 0, 0.12);
    PathCurve there = history(pass).orElseThrow().path();
    PathCurve back =
        history(pass.turning(Spin.CLOCKWISE, FeedDirection.MINUS_X)).orElseThrow().path();
    for (int k = 0; k < there.axisXM().size(); k++) {
      assertThat(back.axisXM().get(k)).isCloseTo(-there.axisXM().get(k), within(1e-9));
      double turned = -there.x().leastN().get(k).likely();
      assertThat(back.x().greatestN().get(k).likely()).isCloseTo(turned, within(1e-6));
    }
  }

  @Test
  void theRevolutionShownIsTheWorstOfThePass() {
    ForceHistory history = history(PassFixture.pass(63, 5, 10, 0, 0.12)).orElseThrow();
    PathCurve path = history.path();
    double worst = path.y().leastN().stream().mapToDouble(Band::low).min().orElseThrow();
    double drawn = Collections.min(history.heaviest().yN());
    // the peak stands between two of the drawn degrees, and its band adds 2 % for what lies between
    // the inputs tried
    assertThat(drawn).isBetween(worst, worst / 1.022);
    assertThat(Collections.min(history.likely().yN())).isGreaterThan(drawn);
    assertThat(history.likely().turnRad()).hasSize(360).isSorted().startsWith(0.0);
  }

  /** What a revolution shows adds up to its mean, whatever the law: trapezoids over the turn. */
  @Test
  void theCurveOfARevolutionHasTheMeanOfItsPlace() {
    PassFixture pass = PassFixture.conventional(20, 4, 8, 0.05).shaped(90, 10, 30, 0);
    ForceHistory history = history(pass).orElseThrow();
    int place = history.path().axisXM().indexOf(history.likely().axisXM());
    double mean = history.likely().xN().stream().mapToDouble(n -> n).average().orElseThrow();
    double expected = history.path().x().meanN().get(place).likely();
    assertThat(mean).isCloseTo(expected, within(1e-2 * Math.abs(expected)));
  }

  @Test
  void theCutFillsFromNothing() {
    FillingCurve filling = history(PassFixture.pass(80, 8, 70, 3, 0.1)).orElseThrow().filling();
    assertThat(filling.travelM()).startsWith(0.0).isSorted();
    assertThat(filling.greatestInPlaneN().get(0).high()).isCloseTo(0, within(1e-6));
    // from the touch straight ahead to the corner at 35 + 3 mm from the axis: 40 - sqrt(40^2 -
    // 38^2)
    double last = filling.travelM().get(filling.travelM().size() - 1);
    assertThat(last).isCloseTo(0.04 - Math.sqrt(0.04 * 0.04 - 0.038 * 0.038), within(1e-6));
  }

  @Test
  void aCutterBesideTheStockHasNoHistory() {
    assertThat(history(PassFixture.pass(50, 4, 10, 42, 0.1))).isEmpty();
  }

  @Property(tries = 100)
  void everyCurveIsFiniteAndAllItsListsAreOfOneLength(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    try {
      ForceHistory.of(new RandomShop(seed).next()).ifPresent(ForceHistoryTest::assertWhole);
    } catch (OutsideValidity refused) {
      assertThat(refused).hasMessageContaining("must lie between");
    }
  }

  private static void assertWhole(ForceHistory history) {
    for (RevolutionCurve curve : List.of(history.likely(), history.heaviest())) {
      for (List<Double> force : List.of(curve.xN(), curve.yN(), curve.zN())) {
        assertThat(force).hasSameSizeAs(curve.turnRad()).allMatch(Double::isFinite);
      }
    }
    PathCurve path = history.path();
    for (AxisCurve axis : List.of(path.x(), path.y(), path.z())) {
      assertThat(axis.greatestN()).hasSameSizeAs(path.travelM());
      assertThat(axis.leastN()).hasSameSizeAs(path.axisXM());
      assertThat(axis.meanN()).hasSameSizeAs(path.stretches());
    }
    assertThat(history.filling().travelM()).hasSameSizeAs(history.filling().greatestInPlaneN());
  }
}

package org.standproud.mechanics.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.ToolMaterial;

class SurfaceFinishTest {

  private static Cutter faceMill(
      double cornerM, double wiperM, @Nullable EdgeCondition edge, List<Integer> missing) {
    Cutter c = SmallShop.faceMill();
    return CutterBuilder.builder(c)
        .cornerRadiusM(cornerM)
        .wiperM(wiperM)
        .edge(edge)
        .chippedTeeth(List.of())
        .missingTeeth(missing)
        .build();
  }

  private static SurfaceFinish topEdge(Cutter cutter, double offsetM, double feedPerToothM) {
    Setup setup =
        SmallShop.plate(
            cutter, SmallShop.pass(Operation.TOP_EDGE, .001, offsetM, FeedDirection.PLUS_X));
    return SurfaceFinish.of(setup, Band.exactly(feedPerToothM), null);
  }

  /** f .1 r .8: Rt 1.5640 um [derived]. */
  @Test
  void marksLieAToothApartAtBestAndATurnApartWithOneToothProud() {
    SurfaceFinish finish = topEdge(faceMill(.8e-3, 0, EdgeCondition.FRESH, List.of()), 0, .1e-3);

    assertThat(finish.marks().spacingM().low()).isCloseTo(.1e-3, within(1e-12));
    assertThat(finish.marks().spacingM().likely()).isCloseTo(.5e-3, within(1e-12));
    assertThat(finish.marks().rtM().low()).isCloseTo(1.5640e-6, within(6e-11));
    assertThat(finish.marks().rtM().likely())
        .isCloseTo(CornerMark.rtM(.5e-3, .8e-3), within(1e-12));
    assertThat(finish.raM().low()).isEqualTo(finish.marks().raM().low());
  }

  /** Four teeth, f_z .1, D 20: .125 um level, 2.0 um with one tooth proud [derived]. */
  @Test
  void theBroadSideTakesTheScallopsOfThePeriphery() {
    Cutter mill = SmallShop.endMill(ToolMaterial.CARBIDE, .02, .02, .03, .05);
    Setup setup =
        SmallShop.plate(
            mill, SmallShop.pass(Operation.BROAD_SIDE, .02, -.014, FeedDirection.PLUS_X));
    SurfaceFinish finish = SurfaceFinish.of(setup, Band.exactly(.1e-3), null);

    assertThat(finish.marks().rtM().low()).isCloseTo(.125e-6, within(1e-12));
    assertThat(finish.marks().rtM().likely()).isCloseTo(2.0e-6, within(1e-12));
    assertThat(finish.hollowM()).isNull();
    assertThat(finish.reachOverRadius()).isNull();
  }

  /** A flat longer than the feed per turn: no marks in theory [memory]. */
  @Test
  void aWiperFlatMayLeaveNothingButIsNotCountedOn() {
    SurfaceFinish plain = topEdge(faceMill(.8e-3, 0, EdgeCondition.FRESH, List.of()), 0, .1e-3);
    SurfaceFinish wiped = topEdge(faceMill(.8e-3, 1e-3, EdgeCondition.FRESH, List.of()), 0, .1e-3);
    SurfaceFinish outrun =
        topEdge(faceMill(.8e-3, .4e-3, EdgeCondition.FRESH, List.of()), 0, .1e-3);

    assertThat(wiped.raM().low()).isZero();
    assertThat(wiped.raM().likely()).isCloseTo(plain.raM().likely() / 4, within(1e-12));
    assertThat(wiped.raM().high()).isEqualTo(plain.raM().high());
    assertThat(outrun.raM()).isEqualTo(plain.raM());
  }

  @Test
  void worseEdgesNeverMakeAFinerSurfaceAndAnUnknownEdgeSpansThemAll() {
    Band before = Band.exactly(0);
    Band unknown = EdgeRoughening.factor(null);
    for (EdgeCondition edge : EdgeCondition.values()) {
      Band factor = EdgeRoughening.factor(edge);
      assertThat(factor.low()).isGreaterThanOrEqualTo(before.low());
      assertThat(factor.likely()).isGreaterThan(before.likely());
      assertThat(factor.high()).isGreaterThan(before.high());
      assertThat(factor.low()).isGreaterThanOrEqualTo(unknown.low());
      assertThat(factor.high()).isLessThanOrEqualTo(unknown.high());
      before = factor;
    }
  }

  @Test
  void aMissingToothWidensTheBestMarks() {
    SurfaceFinish gap = topEdge(faceMill(.8e-3, 0, EdgeCondition.FRESH, List.of(2)), 0, .1e-3);
    assertThat(gap.marks().spacingM().low()).isCloseTo(.2e-3, within(1e-12));
  }

  @Property
  void moreFeedNeverMakesAFinerSurface(
      @ForAll @Scale(5) @DoubleRange(min = .00001, max = .001) double feedM,
      @ForAll @Scale(5) @DoubleRange(min = 0, max = .0016) double cornerM) {
    Cutter cutter = faceMill(cornerM, 0, null, List.of());
    SurfaceFinish less = topEdge(cutter, 0, feedM);
    SurfaceFinish more = topEdge(cutter, 0, feedM * 1.2);
    assertThat(more.raM().low()).isGreaterThanOrEqualTo(less.raM().low());
    assertThat(more.raM().likely()).isGreaterThanOrEqualTo(less.raM().likely());
    assertThat(more.raM().high()).isGreaterThanOrEqualTo(less.raM().high());
  }

  @Property
  void theSideOfTheOffsetDoesNotMatterToTheHollow(
      @ForAll @Scale(4) @DoubleRange(min = 0, max = .03) double offsetM) {
    Cutter cutter = faceMill(.8e-3, 0, null, List.of());
    assertThat(topEdge(cutter, offsetM, .1e-3).hollowM())
        .isEqualTo(topEdge(cutter, -offsetM, .1e-3).hollowM());
  }

  @Test
  void aCutterWhoseEdgeMeetsTheFarSideIsTangent() {
    SurfaceFinish tangent = topEdge(faceMill(.8e-3, 0, null, List.of()), .0265, .1e-3);
    assertThat(tangent.reachOverRadius()).isCloseTo(1, within(1e-12));
    assertThat(tangent.assumptions()).contains(TramError.ASSUMPTION);
  }

  @Test
  void aSurfaceRougherThanN12HasNoGradeButStaysANumber() {
    SurfaceFinish rough = topEdge(faceMill(0, 0, EdgeCondition.CHIPPED, List.of()), 0, .4e-3);
    assertThat(rough.worstGrade()).isNull();
    assertThat(rough.raM().high()).isGreaterThan(50e-6).isFinite();
  }

  @Test
  void aSideThatBendsMoreAtItsTopIsOutOfSquareByTheDifference() {
    SurfaceError error =
        SurfaceError.of(new Band(40e-6, 50e-6, 70e-6), new Band(5e-6, 10e-6, 20e-6));
    assertThat(error.squarenessM().low()).isCloseTo(20e-6, within(1e-12));
    assertThat(error.squarenessM().likely()).isCloseTo(40e-6, within(1e-12));
    assertThat(error.squarenessM().high()).isCloseTo(65e-6, within(1e-12));
    assertThat(error.sizeM().high()).isEqualTo(70e-6);
  }

  @Test
  void turningTheErrorRoundKeepsTheSquarenessAndTurnsTheSize() {
    SurfaceError left = SurfaceError.of(Band.exactly(50e-6), Band.exactly(-10e-6));
    SurfaceError right = SurfaceError.of(Band.exactly(-50e-6), Band.exactly(10e-6));
    assertThat(left.squarenessM()).isEqualTo(right.squarenessM());
    assertThat(left.sizeM().likely()).isEqualTo(-right.sizeM().likely());
    assertThat(left.sizeM().low()).isEqualTo(-right.sizeM().high());
    assertThatThrownBy(() -> SurfaceError.of(Band.exactly(1), Band.exactly(0)))
        .isInstanceOf(OutsideValidity.class);
  }
}

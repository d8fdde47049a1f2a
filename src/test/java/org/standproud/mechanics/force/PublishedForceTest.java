package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Stock;

/** Published coefficients chosen for a stock they belong to, and for one they do not. */
class PublishedForceTest {

  private static ForceInput input(PassFixture pass, MaterialGroup group, ForceCoefficients law) {
    Stock stock = pass.stock();
    Material m = stock.material();
    Material named =
        new Material(
            m.name(),
            group,
            m.specificCuttingForcePa(),
            m.chipExponent(),
            m.youngsModulusPa(),
            m.poissonsRatio(),
            m.densityKgPerM3(),
            m.yieldPa(),
            m.hardnessBrinell(),
            m.hss(),
            m.carbide(),
            m.source(),
            law);
    Stock cut =
        new Stock(stock.lengthM(), stock.thicknessM(), stock.heightM(), named, null, null, null);
    return ForceInput.of(cut, pass.cutter(), pass.cut());
  }

  private static PassForces forces(PassFixture pass, MaterialGroup group, ForceCoefficients law) {
    return PassForces.of(input(pass, group, law)).orElseThrow();
  }

  /**
   * By hand, the tooth of {@code PassForcesTest.oneToothWorkedByHand} with the set of cited paper
   * 190 (found): h = 0.091652, b = 2. F_t = 2 (767.01 x 0.091652 + 27.7) = 195.99 N, F_r = 2 (168.8
   * x 0.091652 + 26.6) = 84.14 N; x = 0.4 F_t + 0.91652 F_r = 155.51 N, y = -0.91652 F_t + 0.4 F_r
   * = -145.98 N.
   */
  @Test
  void oneToothOfAPublishedSetWorkedByHand() {
    PassFixture pass = PassFixture.pass(50, 1, 10, -15, 0.1);
    PassForces forces = forces(pass, MaterialGroup.N, ForceCoefficients.AL_7075_T6_CARBIDE_190);
    VectorBand blow = forces.oneToothAt(forces.steadyArc().exitRad());
    assertThat(blow.xN().likely()).isCloseTo(155.51, within(0.01));
    assertThat(blow.yN().likely()).isCloseTo(-145.98, within(0.01));
    assertThat(forces.assumptions())
        .extracting("input")
        .containsOnly("stock.material.forceCoefficients");
  }

  /** The four published sets for 7075 at a chip of 0.1 mm, over their middle; see SCATTER. */
  @Test
  void theScatterTakenHoldsThePublishedSetsForOneStock() {
    List<PublishedCoefficients> sets =
        List.of(
            PublishedCoefficients.AL_7075_T6_CARBIDE_160,
            PublishedCoefficients.AL_7075_T6_CARBIDE_190,
            PublishedCoefficients.AL_7075_HSS_156,
            PublishedCoefficients.AL_7075_CARBIDE_47);
    double[] sorted =
        sets.stream()
            .map(PublishedCoefficients::coefficients)
            .mapToDouble(c -> c.tangentialChipPa() * 0.1e-3 + c.tangentialEdgeNPerM())
            .sorted()
            .toArray();
    double middle = (sorted[1] + sorted[2]) / 2;
    assertThat(sorted[0] / middle).isCloseTo(0.74, within(0.005));
    assertThat(sorted[3] / middle).isCloseTo(1.44, within(0.005));
    assertThat(PublishedForce.SCATTER.low()).isLessThan(sorted[0] / middle);
    assertThat(PublishedForce.SCATTER.high()).isGreaterThan(sorted[3] / middle);
  }

  @ParameterizedTest
  @EnumSource(ForceCoefficients.class)
  void everyChoiceNamesALaw(ForceCoefficients choice) {
    assertThat(PublishedCoefficients.of(choice).isEmpty())
        .isEqualTo(choice == ForceCoefficients.KIENZLE);
    PassFixture pass = PassFixture.climb(20, 4, 5, 0.05).shaped(90, 10, 30, 0);
    PassForces forces = forces(pass, MaterialGroup.N, choice);
    assertThat(forces.steady().greatestInPlaneN().low()).isPositive();
    assertThat(forces.steady().z().greatestN().low()).as("a helix lifts").isPositive();
    PassForces left = forces(pass.shaped(90, 10, -30, 0), MaterialGroup.N, choice);
    assertThat(left.steady().z().leastN().high()).as("the other hand presses down").isNegative();
  }

  @Test
  void aStraightToothMayLiftAsMuchAsPrintedButLikelyNotAtAll() {
    PassFixture pass = PassFixture.climb(20, 4, 5, 0.05).shaped(90, 10, 0, 0);
    AxisForce up =
        forces(pass, MaterialGroup.N, ForceCoefficients.AL_7075_T6_CARBIDE_190).steady().z();
    assertThat(up.greatestN().likely()).isZero();
    assertThat(up.greatestN().high()).isPositive();
  }

  @Test
  void aCutterOfAnotherMaterialThanTheSetWasMeasuredWithWidensTheBand() {
    PassFixture carbide = PassFixture.pass(63, 5, 10, 0, 0.12);
    PassForces belongs = forces(carbide, MaterialGroup.N, ForceCoefficients.AL_7075_CARBIDE_47);
    PassForces other = forces(carbide, MaterialGroup.N, ForceCoefficients.AL_7075_HSS_156);
    assertThat(other.assumptions()).anyMatch(a -> a.statement().contains("measured with hss"));
    assertThat(spread(other)).isGreaterThan(1.2 * spread(belongs));
  }

  private static double spread(PassForces forces) {
    Band force = forces.steady().greatestInPlaneN();
    return force.high() / force.low();
  }

  /** In steel the band of an aluminium set must hold what Kienzle's law gives for the steel. */
  @Property(tries = 100)
  void aSetFromAnotherStockIsSaidToBeSoAndHoldsKienzlesForcesToo(
      @ForAll @DoubleRange(min = 3, max = 40) double width,
      @ForAll @DoubleRange(min = 0.05, max = 0.25) double feed) {
    PassFixture pass =
        PassFixture.pass(63, 5, width, 0, feed)
            .edges(EdgeCondition.USED, List.of(), List.of(), 0.0);
    ForceCoefficients law = ForceCoefficients.AL_6061_T6_CARBIDE_160;
    PassForces foreign = forces(pass, MaterialGroup.P, law);
    PassForces kienzle = forces(pass, MaterialGroup.P, ForceCoefficients.KIENZLE);
    assertThat(foreign.assumptions())
        .anyMatch(a -> a.statement().contains("the stock is of group P"));
    assertHolds(foreign.steady().greatestTangentialN(), kienzle.steady().greatestTangentialN());
    assertHolds(foreign.steady().greatestInPlaneN(), kienzle.steady().greatestInPlaneN());
    assertThat(foreign.steady().greatestTangentialN().likely())
        .as("the likely force stays that of the set")
        .isCloseTo(
            forces(pass, MaterialGroup.N, law).steady().greatestTangentialN().likely(),
            within(1e-9));
  }

  private static void assertHolds(Band wide, Band inner) {
    assertThat(wide.low()).isLessThanOrEqualTo(inner.low());
    assertThat(wide.high()).isGreaterThanOrEqualTo(inner.high());
  }
}

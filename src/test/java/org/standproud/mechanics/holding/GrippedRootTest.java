package org.standproud.mechanics.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.plate.RootStiffness;
import org.standproud.setup.Setup;

/** The root with a foot that bends, against the rigid foot it starts from. */
class GrippedRootTest {

  private static final double TURNING = 4e5;
  private static final double TRANSLATION = 3e8;

  private static GrippedRoot.Compliance root(Setup setup, double modulusPa, double turning) {
    return GrippedRoot.of(setup)
        .at(new GrippedRoot.Draw(20e3, 1, .5, modulusPa, 2e8, 1e8), turning, TRANSLATION);
  }

  private static double lengthM(Setup setup) {
    return Math.min(setup.stock().lengthM(), setup.hold().vise().jawWidthM());
  }

  private static double gripM(Setup setup) {
    return Math.min(setup.hold().gripDepthM(), setup.hold().vise().jawHeightM());
  }

  @ParameterizedTest
  @ValueSource(strings = {"01", "02", "03", "08", "09", "12"})
  void aFootThatDoesNotBendLeavesTheHoldAsItIs(String name) {
    Setup setup = DemoShop.setup(name);
    GrippedRoot.Compliance rigid = root(setup, 1e18, TURNING);
    assertThat(rigid.turn()).isCloseTo(lengthM(setup) / TURNING, withinPercentage(.1));
    assertThat(rigid.shift()).isCloseTo(lengthM(setup) / TRANSLATION, withinPercentage(.1));
    assertThat(rigid.depthM()).isCloseTo(gripM(setup) / 2, withinPercentage(.1));
    RootStiffness top = rigid.stiffness();
    assertThat(1 / top.turnCompliance()).isCloseTo(TURNING / lengthM(setup), withinPercentage(.1));
    assertThat(top.turningDepthM()).isPositive();
  }

  @ParameterizedTest
  @ValueSource(strings = {"01", "02", "03", "08", "09", "12"})
  void aSofterStockGivesMoreInEveryWay(String name) {
    Setup setup = DemoShop.setup(name);
    double turn = 0;
    double atTop = 0;
    for (double modulus = 1e13; modulus > 3e10; modulus /= 3) {
      GrippedRoot.Compliance root = root(setup, modulus, TURNING);
      RootStiffness top = root.stiffness();
      assertThat(top.turnCompliance()).isGreaterThanOrEqualTo(turn);
      assertThat(top.shiftCompliance()).isGreaterThanOrEqualTo(atTop);
      assertThat(root.depthM()).isBetween(0.0, gripM(setup));
      turn = top.turnCompliance();
      atTop = top.shiftCompliance();
    }
  }

  /** A hold that hardly resists turning lets the foot bend free over its grip and no more. */
  @ParameterizedTest
  @ValueSource(strings = {"01", "03", "12"})
  void aLooseHoldBendsItNoMoreThanFree(String name) {
    Setup setup = DemoShop.setup(name);
    double h = setup.stock().thicknessM();
    double poisson = setup.stock().material().poissonsRatio();
    double bendingNM = 2e11 * h * h * h / (12 * (1 - poisson * poisson));
    GrippedRoot.Compliance loose = root(setup, 2e11, 1);
    assertThat(loose.turn() - lengthM(setup)).isBetween(0.0, 1.001 * gripM(setup) / bendingNM);
  }
}

package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;

/** Interpolated shapes against the whole reckoning at single values inside the bands. */
class ForceShapesTest {

  private static PassFixture pass(Well19937c random) {
    return PassFixture.pass(
            20 + 60 * random.nextDouble(),
            2 + random.nextInt(5),
            5 + 40 * random.nextDouble(),
            16 * (random.nextDouble() - 0.5),
            0.1)
        .shaped(random.nextBoolean() ? 45 : 90, 2, random.nextBoolean() ? 0 : 30, 0)
        .edges(EdgeCondition.USED, List.of(), List.of(), 0.01);
  }

  private static ForceInput input(PassFixture pass, Band feedMm, ForceModel model) {
    PassFixture fed = pass.fed(feedMm, 10);
    return ForceInput.of(fed.stock(), fed.cutter(), fed.cut()).with(model);
  }

  @Test
  void thePeaksAtSingleValuesAreThoseOfTheWholeReckoning() {
    Well19937c random = new Well19937c(20261125);
    Band exponent = new Band(0.15, 0.22, 0.3);
    Band ratio = new Band(0.2, 0.4, 0.8);
    for (int i = 0; i < 60; i++) {
      PassFixture pass = pass(random);
      ForceShapes shapes =
          ForceShapes.of(
                  input(
                      pass,
                      new Band(0.05, 0.1, 0.2),
                      new ForceModel.Kienzle(
                          Band.exactly(1500e6), exponent, Band.exactly(1), ratio, Band.exactly(0))))
              .orElseThrow();
      double mc = exponent.low() + random.nextDouble() * exponent.width();
      double r = ratio.low() + random.nextDouble() * ratio.width();
      double feed = 0.05 + 0.15 * random.nextDouble();
      ForceInput single =
          input(
              pass,
              Band.exactly(feed),
              new ForceModel.Kienzle(
                  Band.exactly(1500e6),
                  Band.exactly(mc),
                  Band.exactly(1),
                  Band.exactly(r),
                  Band.exactly(0.1)));
      PathForces whole = PassForces.of(single).orElseThrow().path();
      PathPeaks quick = shapes.at(new ForceDraw(1500e6, mc, feed / 1e3, 0.01e-3, r, 0.1));
      double near = 0.05 * whole.greatestInPlaneN().likely();
      assertThat(quick.greatestXN()).isCloseTo(whole.x().greatestN().likely(), within(near));
      assertThat(quick.leastXN()).isCloseTo(whole.x().leastN().likely(), within(near));
      assertThat(quick.greatestYN()).isCloseTo(whole.y().greatestN().likely(), within(near));
      assertThat(quick.leastYN()).isCloseTo(whole.y().leastN().likely(), within(near));
      assertThat(quick.leastZN()).isCloseTo(whole.z().leastN().likely(), within(near));
      assertThat(quick.greatestZN()).isCloseTo(whole.z().greatestN().likely(), within(near));
    }
  }

  /** By hand: forces go with the factor, and the factor along the edge only moves the upright. */
  @Test
  void thePeaksOfPublishedCoefficientsAreThoseOfTheWholeReckoning() {
    Well19937c random = new Well19937c(20261126);
    CuttingCoefficients set = PublishedCoefficients.AL_7075_T6_CARBIDE_190.coefficients();
    Band along = new Band(-0.2, 0.6, 1);
    for (int i = 0; i < 60; i++) {
      PassFixture pass = pass(random);
      Band feeds = new Band(0.05, 0.1, 0.2);
      ForceShapes shapes =
          ForceShapes.of(
                  input(pass, feeds, new ForceModel.LinearEdge(set, new Band(0.7, 1, 1.45), along)))
              .orElseThrow();
      double factor = 0.7 + 0.75 * random.nextDouble();
      double share = along.low() + random.nextDouble() * along.width();
      double feed = feeds.low() + feeds.width() * random.nextDouble();
      PathForces whole =
          PassForces.of(
                  input(
                      pass,
                      Band.exactly(feed),
                      new ForceModel.LinearEdge(set, Band.exactly(factor), Band.exactly(share))))
              .orElseThrow()
              .path();
      PathPeaks quick = shapes.at(new ForceDraw(factor, 0, feed / 1e3, 0.01e-3, 1, share));
      double near = 0.05 * whole.greatestInPlaneN().likely();
      assertThat(quick.greatestXN()).isCloseTo(whole.x().greatestN().likely(), within(near));
      assertThat(quick.leastYN()).isCloseTo(whole.y().leastN().likely(), within(near));
      assertThat(quick.leastZN()).isCloseTo(whole.z().leastN().likely(), within(near));
      assertThat(quick.greatestZN()).isCloseTo(whole.z().greatestN().likely(), within(near));
    }
  }
}

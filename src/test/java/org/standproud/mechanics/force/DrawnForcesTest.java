package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;

/** The interpolated forces of many draws against the whole sweep at the same single values. */
class DrawnForcesTest {

  private static final Band EXPONENT = new Band(0.15, 0.22, 0.3);
  private static final Band RATIO = new Band(0.2, 0.4, 0.8);
  private static final Band FEED_M = new Band(0.05e-3, 0.1e-3, 0.2e-3);
  private static final Band RUN_OUT_M = new Band(0, 0.02e-3, 0.05e-3);

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

  private static double in(Band band, Well19937c random) {
    return band.low() + band.width() * random.nextDouble();
  }

  private static void compare(DrawnPass quick, DrawnPass whole, double share) {
    double near = share * whole.inPlaneN();
    PathPeaks one = quick.peaks();
    PathPeaks other = whole.peaks();
    assertThat(one.leastXN()).isCloseTo(other.leastXN(), within(near));
    assertThat(one.greatestXN()).isCloseTo(other.greatestXN(), within(near));
    assertThat(one.leastYN()).isCloseTo(other.leastYN(), within(near));
    assertThat(one.greatestYN()).isCloseTo(other.greatestYN(), within(near));
    assertThat(one.leastZN()).isCloseTo(other.leastZN(), within(near));
    assertThat(one.greatestZN()).isCloseTo(other.greatestZN(), within(near));
    assertThat(quick.inPlaneN()).isCloseTo(whole.inPlaneN(), within(near));
    assertThat(quick.tangentialN()).isCloseTo(whole.tangentialN(), within(near));
    assertThat(quick.meanTangentialN()).isCloseTo(whole.meanTangentialN(), within(near));
    assertThat(quick.meanXN()).isCloseTo(whole.meanXN(), within(near));
    assertThat(quick.fillingInPlaneN()).isCloseTo(whole.fillingInPlaneN(), within(near));
    assertThat(quick.blow().yN()).isCloseTo(whole.blow().yN(), within(near));
  }

  @Test
  void theForcesOfManyDrawsAreThoseOfTheWholeSweepAtEach() {
    Well19937c random = new Well19937c(20261125);
    for (int i = 0; i < 40; i++) {
      PassFixture pass = pass(random);
      DrawnForces forces =
          DrawnForces.of(
                  ForceInput.of(pass.stock(), pass.cutter(), pass.cut())
                      .with(
                          new ForceModel.Kienzle(
                              Band.exactly(1500e6),
                              EXPONENT,
                              Band.exactly(1),
                              RATIO,
                              Band.exactly(0.1))))
              .orElseThrow();
      Function<ForceDraw, DrawnPass> shaped =
          forces.over(
              new DrawnForces.Ranges(EXPONENT, FEED_M, RUN_OUT_M, RATIO, new Band(0, 0.1, 0.3)));
      for (int k = 0; k < 5; k++) {
        ForceDraw draw =
            new ForceDraw(
                1500e6,
                in(EXPONENT, random),
                in(FEED_M, random),
                in(RUN_OUT_M, random),
                in(RATIO, random),
                0.3 * random.nextDouble());
        compare(shaped.apply(draw), forces.at(draw), 0.06);
      }
    }
  }

  /** By hand: forces go with the factor, and the factor along the edge only moves the upright. */
  @Test
  void soAreThoseOfPublishedCoefficients() {
    Well19937c random = new Well19937c(20261126);
    CuttingCoefficients set = PublishedCoefficients.AL_7075_T6_CARBIDE_190.coefficients();
    Band along = new Band(-0.2, 0.6, 1);
    for (int i = 0; i < 20; i++) {
      PassFixture pass = pass(random);
      DrawnForces forces =
          DrawnForces.of(
                  ForceInput.of(pass.stock(), pass.cutter(), pass.cut())
                      .with(new ForceModel.LinearEdge(set, new Band(0.7, 1, 1.45), along)))
              .orElseThrow();
      Band one = Band.exactly(1);
      Function<ForceDraw, DrawnPass> shaped =
          forces.over(new DrawnForces.Ranges(Band.exactly(0), FEED_M, RUN_OUT_M, one, along));
      ForceDraw draw =
          new ForceDraw(1.2, 0, in(FEED_M, random), in(RUN_OUT_M, random), 1, in(along, random));
      compare(shaped.apply(draw), forces.at(draw), 0.06);
      DrawnPass twice =
          shaped.apply(new ForceDraw(2.4, 0, draw.feedM(), draw.runOutM(), 1, draw.liftRatio()));
      assertThat(twice.inPlaneN()).isCloseTo(2 * shaped.apply(draw).inPlaneN(), within(1e-6));
    }
  }
}

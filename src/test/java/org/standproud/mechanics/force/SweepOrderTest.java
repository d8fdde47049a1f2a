package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.setup.EdgeCondition;

/** What is left out by sampling the turn and the ends of a pass coarsely. */
class SweepOrderTest {

  private static final long SEED = 20261125;
  private static final double MISSED = 0.025;

  private static ForceInput randomPass(Well19937c random) {
    double kappa = random.nextBoolean() ? 45 : 90;
    double helix = random.nextBoolean() ? 0 : 40 * random.nextDouble();
    PassFixture pass =
        PassFixture.pass(
                10 + 70 * random.nextDouble(),
                1 + random.nextInt(7),
                2 + 60 * random.nextDouble(),
                80 * (random.nextDouble() - 0.5),
                0.03 + 0.1 * random.nextDouble())
            .shaped(kappa, 1 + 8 * random.nextDouble(), helix, 0)
            .ofLength(20 + 200 * random.nextDouble())
            .edges(
                EdgeCondition.USED,
                List.of(),
                List.of(),
                random.nextBoolean() ? null : 0.02 * random.nextDouble());
    return ForceInput.of(pass.stock(), pass.cutter(), pass.cut());
  }

  @Test
  void aCoarseSweepFindsThePeaksOfAFineOne() {
    Well19937c random = new Well19937c(SEED);
    int cuts = 0;
    for (int i = 0; i < 120; i++) {
      ForceInput input = randomPass(random);
      Optional<PassForces> fine = PassForces.of(input, SweepOrder.FINE);
      if (fine.isPresent()) {
        cuts++;
        PathForces found = PassForces.of(input).orElseThrow().path();
        peaksAreFound(found, fine.get().path(), input);
      }
    }
    assertThat(cuts).isGreaterThan(60);
  }

  private static void peaksAreFound(PathForces found, PathForces fine, ForceInput input) {
    double size = fine.greatestInPlaneN().high();
    List<Function<PathForces, AxisForce>> axes =
        List.of(PathForces::x, PathForces::y, PathForces::z);
    for (Function<PathForces, AxisForce> axis : axes) {
      AxisForce got = axis.apply(found);
      AxisForce sought = axis.apply(fine);
      assertThat(got.greatestN().high())
          .as("%s", input)
          .isGreaterThan(sought.greatestN().high() - MISSED * size);
      assertThat(got.greatestN().likely())
          .isGreaterThan(sought.greatestN().likely() - MISSED * size);
      assertThat(got.leastN().low()).isLessThan(sought.leastN().low() + MISSED * size);
      assertThat(got.leastN().likely()).isLessThan(sought.leastN().likely() + MISSED * size);
    }
  }
}

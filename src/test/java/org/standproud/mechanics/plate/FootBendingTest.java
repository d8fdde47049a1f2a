package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

/** The bending of the foot against Hetenyi's beam and against the whole clamped foot. */
class FootBendingTest {

  private static final PublishedTable HETENYI =
      new PublishedTable(
          Subject.PLATE,
          "Hetenyi, Beams on Elastic Foundation, 1946: end of a half-endless beam, by the quick foot",
          SourceTag.MEMORY);

  private static final double YOUNG_PA = 205e9;
  private static final double POISSON = .3;

  private static double bending(double h) {
    return YOUNG_PA * h * h * h / (12 * (1 - POISSON * POISSON));
  }

  private static double shear(double h) {
    return 5.0 / 6 * YOUNG_PA / (2 * (1 + POISSON)) * h;
  }

  @Test
  @Tag(PublishedTable.TESTS)
  void aDeepSlenderFootGivesAsHetenyisEndlessBeam() {
    double k = 1e12;
    double g = .4;
    double d = bending(.01);
    double beta = Math.pow(k / (4 * d), .25);
    FootBending foot = FootBending.of(d, 1e18, g, k);
    double shift = foot.shift() + 4 / (k * g);
    double cross = foot.cross() + 6 / (k * g * g);
    double turn = foot.turn() + 12 / (k * g * g * g);
    HETENYI
        .row("plate 10 mm, layers 1 N/um per mm2, grip 400 mm, bending with rigid part")
        .percent("shift per force", "um per N/mm", 2 * beta / k * 1e9, shift * 1e9, 2)
        .percent("turn per force", "1e-9/N m", 2 * beta * beta / k * 1e9, cross * 1e9, 2)
        .percent("turn per moment", "1e-9/N", 4 * Math.pow(beta, 3) / k * 1e9, turn * 1e9, 2);
  }

  @Test
  void aStiffFootDoesNotBend() {
    double g = .02;
    double k = 1e11;
    FootBending foot = FootBending.of(bending(.2), shear(.2), g, k);
    assertThat(foot.turn()).isLessThan(1e-4 * 12 / (k * g * g * g));
    assertThat(foot.shift()).isLessThan(1e-3 * 4 / (k * g));
  }

  /** The rigid foot with this bending is the clamped foot of {@link GrippedFoot} held at rest. */
  @Test
  void withTheRigidFootItIsTheClampedFoot() {
    Well19937c random = new Well19937c(11);
    for (int i = 0; i < 60; i++) {
      double h = .003 + .02 * random.nextDouble();
      double g = h * (.8 + 2.5 * random.nextDouble());
      double fixed = Math.pow(10, 11 + 2 * random.nextDouble());
      double movable = Math.pow(10, 11 + 2 * random.nextDouble());
      FootBending foot = FootBending.of(bending(h), shear(h), g, fixed + movable);
      double turn = 12 / ((fixed + movable) * g * g * g);
      RootStiffness whole =
          GrippedFoot.betweenFaces(YOUNG_PA, POISSON, h, g, fixed, movable, 0, 0, 1e6, 0)
              .clamped()
              .flatMap(ClampedFoot::held)
              .orElseThrow();
      assertThat(turn + foot.turn()).isCloseTo(whole.turnCompliance(), withinPercentage(1));
      assertThat(turn * g / 2 + foot.cross())
          .isCloseTo(whole.crossCompliance(), withinPercentage(1));
      assertThat(1 / (fixed * g) + turn * g * g / 4 + foot.shift())
          .isCloseTo(whole.shiftCompliance(), withinPercentage(1));
    }
  }

  @Test
  void softerLayersLetItBendMoreButNeverMoreThanFree() {
    double g = .03;
    double d = bending(.006);
    double before = 0;
    for (double k = 1e14; k > 1e9; k /= 3) {
      FootBending foot = FootBending.of(d, shear(.006), g, k);
      assertThat(foot.turn()).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(g / d);
      before = foot.turn();
    }
    FootBending foot = FootBending.of(d, shear(.006), g, 1e13);
    assertThat(foot.loosened(1e6, g / d).turn()).isCloseTo(g / d, within(1e-12));
    assertThat(foot.loosened(.5, g / d)).isEqualTo(foot);
  }
}

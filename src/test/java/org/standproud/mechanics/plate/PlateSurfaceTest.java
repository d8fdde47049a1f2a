package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;

/** The interpolated plate against the whole solution at the same root and modulus. */
class PlateSurfaceTest {

  private static PlateInput input(double youngPa, double shift, double tilt) {
    return new PlateInput(
        .06,
        .15,
        .008,
        Band.exactly(youngPa),
        .3,
        7850,
        Band.exactly(shift),
        Band.exactly(tilt),
        .12,
        new PlatePoint(.075, .06));
  }

  @Test
  void betweenItsNodesItIsTheWholeSolutionToThreeHundredths() {
    Well19937c random = new Well19937c(3);
    PlateSurface surface = new PlateSurface(input(205e9, 1, 1));
    double[] corner = new double[1 + 2 * PlateSurface.MODES];
    for (int i = 0; i < 40; i++) {
      double young = 180e9 + 40e9 * random.nextDouble();
      double shift = Math.pow(10, 8 + 2.5 * random.nextDouble());
      double tilt = Math.pow(10, 3 + 3.5 * random.nextDouble());
      surface.at(young, shift, tilt, corner);
      PlateResponse whole = PlateResponse.of(input(young, shift, tilt));
      assertThat(corner[0])
          .isCloseTo(whole.flexibilityAtCornerMPerN().likely(), withinPercentage(3));
      double first = Double.POSITIVE_INFINITY;
      for (int m = 1; m <= PlateSurface.MODES; m++) {
        first = Math.min(first, corner[m]);
      }
      assertThat(first).isCloseTo(whole.frequenciesHz().get(0).likely(), withinPercentage(3));
    }
  }
}

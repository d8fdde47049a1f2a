package org.standproud.mechanics.engagement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;

/** Own geometry, worked by hand. */
class EdgeInCutTest {

  /**
   * KAPR 45 deg and RE 1 mm: the arc is 1 - cos 45 = 0.29289 mm high. At 0.2 mm b = acos(0.8) =
   * 0.64350; at 1 mm b = pi/4 + 0.70711/0.70711 = 1.78540 mm.
   */
  @Test
  void aSlantedEdgeWithACornerIsAnArcAtItsFootAndStraightAbove() {
    assertThat(EdgeInCut.of(0.2e-3, Math.PI / 4, 1e-3).lengthM())
        .isCloseTo(0.64350e-3, within(1e-8));
    EdgeInCut deep = EdgeInCut.of(1e-3, Math.PI / 4, 1e-3);
    assertThat(deep.lengthM()).isCloseTo(1.78540e-3, within(1e-8));
    assertThat(deep.sine()).isCloseTo(0.56010, within(1e-5));
  }

  @Test
  void whereTheArcGoesOverIntoTheStraightEdgeNothingJumps() {
    double arcHeightM = 1e-3 * (1 - Math.cos(Math.PI / 3));
    double below = EdgeInCut.of(arcHeightM * (1 - 1e-9), Math.PI / 3, 1e-3).lengthM();
    double above = EdgeInCut.of(arcHeightM * (1 + 1e-9), Math.PI / 3, 1e-3).lengthM();
    assertThat(above - below).isBetween(0.0, 1e-11);
    assertThat(above).isCloseTo(1e-3 * Math.PI / 3, within(1e-11));
  }

  @ParameterizedTest(name = "entering angle {0} deg: cosine {1}")
  @CsvSource({"90,0", "60,0.5", "45,0.7071068", "30,0.8660254"})
  void theCosineIsThatOfTheEnteringAngle(double degrees, double cosine) {
    assertThat(EdgeInCut.of(2e-3, Math.toRadians(degrees), 0).cosine())
        .isCloseTo(cosine, within(1e-7));
  }

  @Test
  void anEdgeThatNoCutterHasIsRefusedByName() {
    assertThatThrownBy(() -> EdgeInCut.of(0, 1, 0))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("axial depth");
    assertThatThrownBy(() -> EdgeInCut.of(1e-3, 0.05, 0)).hasMessageContaining("entering angle");
    assertThatThrownBy(() -> EdgeInCut.of(1e-3, 1, -1e-3)).hasMessageContaining("corner radius");
  }
}

package org.standproud.mechanics.holding.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

class LineContactTest {

  private static final PublishedTable JOHNSON =
      new PublishedTable(
          Subject.CONTACT,
          "Johnson, Contact Mechanics, 1985 (b and p_max read, compression from memory)",
          SourceTag.DERIVED);

  private static final PublishedTable JOINT =
      new PublishedTable(
          Subject.CONTACT,
          "delta = c p^0.5, Levina and Reshetov (law from memory)",
          SourceTag.DERIVED);

  private static final double STEEL_PA = 205e9;

  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: Johnson 1985, numbers derived from the formulas")
  @CsvSource({
    "steel rod 10 mm,    205, .30, 205, .30, 5, 200,     112637, .106320, 1197.6, .005355",
    "aluminium rod 6 mm,  69, .33, 205, .30, 3, 100,      57625, .081416,  781.9, .007388",
    "copper rod 5 mm,    117, .34, 205, .30, 2.5, 150,    83347, .075688, 1261.7, .006329",
    "brass rod 8 mm,     100, .34, 205, .30, 4, 133.3333, 75284, .094974,  893.7, .006947",
    "carbide on bearing steel, 550, .30, 200, .30, 1, 100, 161172, .028107, 2265, .000939"
  })
  void aRodPressedOnAFlatMakesThisStripAndThisPressure(
      String rod,
      double youngsGpa,
      double poisson,
      double otherGpa,
      double otherPoisson,
      double radiusMm,
      double newtonPerMm,
      double modulusMpa,
      double halfWidthMm,
      double peakMpa,
      double compressionMm) {
    double modulus =
        LineContact.contactModulusPa(youngsGpa * 1e9, poisson, otherGpa * 1e9, otherPoisson);
    LineContact contact = new LineContact(newtonPerMm * 1e3, radiusMm * 1e-3, modulus);
    double compression = contact.diametralCompressionM(youngsGpa * 1e9, poisson);
    JOHNSON
        .row(rod + ", " + newtonPerMm + " N/mm")
        .percent("E*", "MPa", modulusMpa, modulus / 1e6, 0.01)
        .percent("b", "mm", halfWidthMm, contact.halfWidthM() * 1e3, 0.02)
        .percent("p_max", "MPa", peakMpa, contact.peakPressurePa() / 1e6, 0.02)
        .percent("compression", "mm", compressionMm, compression * 1e3, 0.1);
    assertThat(contact.peakPressurePa())
        .isCloseTo(
            2 * newtonPerMm * 1e3 / (Math.PI * contact.halfWidthM()),
            Percentage.withPercentage(1e-9));
  }

  @Test
  @DisplayName("Yield begins at 1.79 times the yield stress (Johnson 1985, from memory)")
  void aSoftCopperWireFlowsInAViseAndASpringSteelRodDoesNot() {
    double modulus = LineContact.contactModulusPa(117e9, 0.34, STEEL_PA, 0.3);
    LineContact copper = new LineContact(150e3, 2.5e-3, modulus);
    assertThat(copper.yieldRatio(69e6)).isGreaterThan(5);
    LineContact steel =
        new LineContact(150e3, 2.5e-3, LineContact.contactModulusPa(STEEL_PA, 0.3, STEEL_PA, 0.3));
    assertThat(steel.yieldRatio(1200e6)).isLessThan(1);
    assertThat(copper.yieldRatio(copper.peakPressurePa() / 1.79)).isCloseTo(1, within(1e-12));
  }

  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "c {0}: Levina and Reshetov (law from memory), numbers derived")
  @CsvSource({"0.6,1.92,1.044", "0.3,.958,2.087", "1.0,3.19,.626"})
  void twoFacesUnderOneMegapascalApproachByThis(
      double coefficient, double approachUm, double stiffnessMpaPerUm) {
    double stiffness = JointStiffness.stiffnessPaPerM(coefficient, 1e6) / 1e12;
    JOINT
        .row("c " + coefficient + " at 1 MPa")
        .figure(
            "approach", "um", approachUm, JointStiffness.approachM(coefficient, 1e6) * 1e6, 5e-3)
        .figure("stiffness", "MPa/um", stiffnessMpaPerUm, stiffness, 1e-3);
  }

  @Test
  void aRodWithoutARadiusIsRefused() {
    assertThatThrownBy(() -> new LineContact(1e5, 0, 1e11)).isInstanceOf(OutsideValidity.class);
  }
}

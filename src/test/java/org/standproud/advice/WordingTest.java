package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/** Answers come back in the caller's units. */
class WordingTest {

  private static final Wording METRIC = new Wording(UnitSystem.METRIC);
  private static final Wording INCH = new Wording(UnitSystem.INCH);

  @Test
  @DisplayName("[memory] an inch is 25.4 mm exactly: International Yard and Pound Agreement, 1959")
  void anInchIsWrittenAsAnInchAndAsItsMillimetres() {
    assertThat(INCH.words(QuantityKind.LENGTH, 0.0254)).isEqualTo("1 in");
    assertThat(METRIC.words(QuantityKind.LENGTH, 0.0254)).isEqualTo("25.4 mm");
  }

  @Test
  @DisplayName(
      "[memory] a pound-force is 4.4482216152605 N: 0.45359237 kg (1959) and 9.80665 m/s2 (1901)")
  void aPoundForceIsWrittenAsOneAndAsItsNewtons() {
    assertThat(INCH.words(QuantityKind.FORCE, 4.4482216152605)).isEqualTo("1 lbf");
    assertThat(METRIC.words(QuantityKind.FORCE, 4.4482216152605)).isEqualTo("4.45 N");
  }

  @Test
  void aNumberIsGivenWithWhatItCouldBeTowardItsBadSide() {
    Band band = new Band(0.0002, 0.0006, 0.0014);
    assertThat(METRIC.words(QuantityKind.LENGTH, band, Side.HIGH))
        .isEqualTo("likely 0.6 mm, could be 1.4");
    assertThat(METRIC.words(QuantityKind.LENGTH, band, Side.LOW))
        .isEqualTo("likely 0.6 mm, could be 0.2");
    assertThat(METRIC.words(QuantityKind.LENGTH, band))
        .isEqualTo("likely 0.6 mm, could be 0.2 to 1.4");
    // What a reader cannot tell apart is given once.
    assertThat(METRIC.words(QuantityKind.LENGTH, new Band(0.0002, 0.0006, 0.0006001), Side.HIGH))
        .isEqualTo("0.6 mm");
  }

  /** The cap of a margin stands for any larger number, and is no number a shop could use. */
  @Test
  void aCapIsNeverGivenAsANumber() {
    Fact margin = Vocabulary.HOLDING_MARGIN;
    double cap = Vocabulary.GREATEST_MARGIN;
    Value capped = new Value.Quantity(new Band(2, 30, cap));
    assertThat(METRIC.words(margin, capped, Side.LOW)).isEqualTo("likely 30, could be 2");
    assertThat(METRIC.words(margin, capped, Side.BOTH)).isEqualTo("likely 30, could be very large");
    assertThat(METRIC.words(margin, new Value.Quantity(Band.exactly(cap)))).isEqualTo("very large");
  }

  @Test
  void whereItLetsGoInSomeDrawsThatIsAdded() {
    Value some = new Value.Quantity(Sample.of(new double[] {1e-4, 1e-4, Double.NaN, 1e-4, 1e-4}));
    assertThat(METRIC.words(Vocabulary.EDGE_DEFLECTION, some, Side.HIGH))
        .isEqualTo("0.1 mm, or it lets go");
  }

  @Test
  @DisplayName("[memory] ISO 4287 roughness is in um; US drawings write uin: ASME B46.1")
  void roughnessIsInMicrometresOrMicroinchesAndNeverInThousandths() {
    Value ra = new Value.Quantity(Band.exactly(1.6e-6));
    assertThat(METRIC.words(Vocabulary.ROUGHNESS, ra)).isEqualTo("1.6 um");
    assertThat(INCH.words(Vocabulary.ROUGHNESS, ra)).isEqualTo("63 uin");
  }

  @Test
  void aKnownValueIsOneNumber() {
    assertThat(METRIC.words(QuantityKind.LENGTH, Band.exactly(0.002))).isEqualTo("2 mm");
    assertThat(METRIC.words(QuantityKind.NUMBER, Band.exactly(1.25))).isEqualTo("1.25");
  }

  @Test
  void aQuantityCarriesItsUnitInEitherSystemAndNoEndsIfItIsKnown() {
    Value grip = new Value.Quantity(Band.exactly(0.0508));
    Quantity inch = INCH.quantity(Vocabulary.GRIP_DEPTH, grip);
    assertThat(inch.value()).isEqualTo(2.0);
    assertThat(inch.unit()).isEqualTo("in");
    assertThat(inch.low()).isNull();
    Quantity metric = METRIC.quantity(Vocabulary.GRIP_DEPTH, grip);
    assertThat(metric.value()).isEqualTo(50.8);
    assertThat(metric.unit()).isEqualTo("mm");
  }

  @Test
  void whatIsNotKnownIsShownAsNotKnownWithWhatToMeasure() {
    Value missing = new Value.Missing("the high spot, with feelers");
    assertThat(METRIC.words(Vocabulary.HIGH_SPOT, missing)).isEqualTo("not known");
    assertThat(METRIC.quantity(Vocabulary.HIGH_SPOT, missing).measure())
        .isEqualTo("the high spot, with feelers");
    assertThat(METRIC.quantity(Vocabulary.HIGH_SPOT, missing).value()).isNull();
  }

  @Test
  void wordsAndTruthsAreShownAsTheyAre() {
    assertThat(METRIC.words(Vocabulary.STAGE, new Value.Text("rough"))).isEqualTo("rough");
    assertThat(METRIC.words(Vocabulary.DEBURRED, new Value.Truth(true))).isEqualTo("yes");
  }
}

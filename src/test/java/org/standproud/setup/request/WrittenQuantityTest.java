package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.UnitCode;
import org.standproud.setup.units.UnitSpelling;

/** Numbers as people write them: common practice of shops, no source. */
class WrittenQuantityTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "40; 40; 1",
        "+40; 40; 1",
        "-2.5; -2.5; 1",
        "−2.5; -2.5; 1",
        ".625; 0.625; 1",
        "5.; 5; 1",
        "2,5; 2.5; 1",
        ",625; 0.625; 1",
        "0,125; 0.125; 1",
        "1,2000; 1.2; 1",
        "1,200.5; 1200.5; 1",
        "1.200,5; 1200.5; 1",
        "1,200,000; 1200000; 1",
        "1.200; 1.2; 1",
        "5/8; 0.625; 1",
        "5/8\"; 0.625; in",
        "5/8”; 0.625; in",
        "⅝″; 0.625; in",
        "1 1/2\"; 1.5; in",
        "1-1/2 in; 1.5; in",
        "1½ in; 1.5; in",
        "-3/4 in; -0.75; in",
        "2.5in; 2.5; in",
        "2.5 IN; 2.5; in",
        "3 thou; 3; thou",
        "3 mil; 3; thou",
        "25 µm; 25; um",
        "25 μm; 25; um",
        "40 MM; 40; mm",
        "0.1 mm/tooth; 0.1; mm",
      })
  void aLengthIsRead(String text, String value, String unit) throws Exception {
    reads(text, value, unit, Dimension.LENGTH);
  }

  @ParameterizedTest
  @CsvSource({
    "60 N·m, 60, N.m, TORQUE",
    "60 Nm, 60, N.m, TORQUE",
    "60 N m, 60, N.m, TORQUE",
    "60 N-m, 60, N.m, TORQUE",
    "60 N.m, 60, N.m, TORQUE",
    "45 ft-lb, 45, lbf.ft, TORQUE",
    "45 ft·lbf, 45, lbf.ft, TORQUE",
    "45 ft lbs, 45, lbf.ft, TORQUE",
    "45 lb-ft, 45, lbf.ft, TORQUE",
    "120 in-lb, 120, lbf.in, TORQUE",
    "500 rev/min, 500, rpm, FREQUENCY",
    "500 rpm, 500, rpm, FREQUENCY",
    "500 RPM, 500, rpm, FREQUENCY",
    "500 1/min, 500, 1/min, FREQUENCY",
    "500 min-1, 500, rpm, FREQUENCY",
    "500 min⁻¹, 500, 1/min, FREQUENCY",
    "12 ipm, 12, in/min, SPEED",
    "12 in / min, 12, in/min, SPEED",
    "300 sfm, 300, ft/min, SPEED",
    "300 SFM, 300, ft/min, SPEED",
    "90 m/min, 90, m/min, SPEED",
    "4000 lb, 4000, lbf, FORCE",
    "4000 lbs, 4000, lbf, FORCE",
    "4000 lb, 4000, lb, MASS",
    "700 N/mm², 700, N/mm2, STRESS",
    "20 %, 20, %, NUMBER",
  })
  void aUnitIsReadAsShopsWriteIt(String text, String value, String unit, Dimension dimension)
      throws Exception {
    reads(text, value, unit, dimension);
  }

  private static void reads(String text, String value, String unit, Dimension dimension)
      throws Exception {
    WrittenQuantity read = WrittenQuantity.of(text);
    assertThat(read.low()).isEqualByComparingTo(value);
    assertThat(read.high()).isNull();
    String code =
        read.unit() == null
            ? "1"
            : UnitSpelling.of(read.unit(), dimension).map(UnitCode::code).orElse("none");
    assertThat(code).isEqualTo(unit);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "15-22 kN",
        "15–22 kN",
        "15—22kN",
        "15 - 22 kN",
        "15 to 22 kN",
        "15 kN to 22 kN",
        "15..22 kN",
        "15,0-22,0 kN"
      })
  void aRangeIsRead(String text) throws Exception {
    WrittenQuantity read = WrittenQuantity.of(text);
    assertThat(read.low()).isEqualByComparingTo("15");
    assertThat(read.high()).isEqualByComparingTo("22");
    assertThat(read.likely()).isNull();
    assertThat(read.unit()).isEqualTo("kN");
  }

  @ParameterizedTest
  @ValueSource(strings = {"15 to 22 kN, likely 18", "15 to 22, likely 18 kN", "15-22 likely 18 kN"})
  void aRangeMayHaveALikelyValue(String text) throws Exception {
    assertThat(WrittenQuantity.of(text))
        .isEqualTo(
            new WrittenQuantity(
                new BigDecimal("15"), new BigDecimal("18"), new BigDecimal("22"), "kN"));
  }

  @Test
  void aRangeOfFractionsIsNoMixedNumber() throws Exception {
    WrittenQuantity read = WrittenQuantity.of("1/2-3/4\"");
    assertThat(read.low()).isEqualByComparingTo("0.5");
    assertThat(read.high()).isEqualByComparingTo("0.75");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1,200; 1200 or 1.200",
        "12,500 N; 12500 or 12.500",
        "1 200; without blanks",
        "1.2.3; one decimal point",
        "5/0; no fraction",
        "1 9/8; no fraction",
        "15 kN to 22 N; one unit",
        "about 5; enter a number",
        "forty; enter a number",
        "1e3 mm!; without blanks",
      })
  void whatCouldMeanTwoThingsIsRefusedWithWhatToWrite(String text, String says) {
    assertThatThrownBy(() -> WrittenQuantity.of(text))
        .isInstanceOf(WrittenQuantity.Unclear.class)
        .hasMessageContaining(says);
  }

  @Test
  void lettersThatAShiftKeyTurnsIntoAnotherUnitAreNotGuessedAt() {
    assertThat(UnitSpelling.of("nm", Dimension.TORQUE)).isEmpty();
    assertThat(UnitSpelling.of("mpa", Dimension.STRESS)).isEmpty();
    assertThat(UnitSpelling.of("furlong", Dimension.LENGTH)).isEmpty();
    assertThat(UnitSpelling.of("kN", Dimension.LENGTH)).contains(UnitCode.KN);
  }

  @Test
  void everyUnitIsReadByItsOwnCode() throws Exception {
    for (UnitCode unit : UnitCode.values()) {
      if (unit != UnitCode.ONE) {
        String written = WrittenQuantity.of("7 " + unit.code()).unit();
        assertThat(UnitSpelling.of(String.valueOf(written), unit.dimension())).contains(unit);
      }
    }
  }

  /** The decimal of a fraction by the arithmetic of the Java language. */
  @Test
  void aFractionIsItsDecimal() throws Exception {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      int below = 2 + random.nextInt(126);
      int above = 1 + random.nextInt(below - 1);
      int whole = random.nextInt(20);
      String text = String.format(Locale.ROOT, "%d %d/%d in", whole, above, below);
      assertThat(WrittenQuantity.of(text).low().doubleValue())
          .isCloseTo(whole + (double) above / below, within(1e-12));
    }
  }

  @Test
  void anythingIsAnsweredWithoutAnError() {
    Random random = new Random(11);
    String signs = "0123456789.,-–/ \"'toNmklyi½°%E";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int k = random.nextInt(14); k >= 0; k--) {
        text.append(signs.charAt(random.nextInt(signs.length())));
      }
      try {
        assertThat(WrittenQuantity.of(text.toString()).low()).isNotNull();
      } catch (WrittenQuantity.Unclear unclear) {
        assertThat(unclear.getMessage()).isNotBlank();
      }
    }
  }
}

package org.standproud.setup.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.setup.UnitSystem;

class UnitCodeTest {

  /** Exact by definition of inch, pound and standard gravity; digits [derived] from those. */
  @ParameterizedTest(name = "one {0} is {1} in SI units")
  @CsvSource({
    "1, 1",
    "%, 0.01",
    "m, 1",
    "cm, 0.01",
    "mm, 0.001",
    "um, 1e-6",
    "in, 0.0254",
    "ft, 0.3048",
    "thou, 0.0000254",
    "uin, 2.54e-8",
    "N, 1",
    "kN, 1000",
    "lbf, 4.4482216152605",
    "kgf, 9.80665",
    "N.m, 1",
    "lbf.ft, 1.3558179483314",
    "lbf.in, 0.11298482902761668",
    "Pa, 1",
    "kPa, 1000",
    "MPa, 1e6",
    "GPa, 1e9",
    "N/mm2, 1e6",
    "psi, 6894.757293168361",
    "ksi, 6894757.293168361",
    "W, 1",
    "kW, 1000",
    "hp, 745.6998715822702",
    "m/s, 1",
    "mm/s, 0.001",
    "mm/min, 1.6666666666666667e-5",
    "m/min, 0.016666666666666666",
    "in/min, 4.233333333333333e-4",
    "ft/min, 0.00508",
    "rpm, 0.016666666666666666",
    "1/min, 0.016666666666666666",
    "Hz, 1",
    "1/s, 1",
    "deg, 0.017453292519943295",
    "rad, 1",
    "kg, 1",
    "lb, 0.45359237",
    "kg/m3, 1",
    "g/cm3, 1000",
    "lb/in3, 27679.904710203125",
    "N/m, 1",
    "N/mm, 1000",
    "N/um, 1e6",
    "lbf/in, 175.12683524647636",
    "s, 1",
    "min, 60"
  })
  void factorsAreThoseOfTheDefinitions(String code, double si) {
    assertThat(UnitCode.of(code).orElseThrow().toSi(1))
        .isCloseTo(si, Percentage.withPercentage(1e-12));
  }

  @Test
  void everyUnitOnTheListIsChecked() {
    assertThat(UnitCode.values()).hasSize(50);
  }

  @Test
  void millimetresAndInchesOfTheSameLengthAreTheSameDouble() {
    assertThat(UnitCode.IN.toSi(0.5)).isEqualTo(UnitCode.MM.toSi(12.7)).isEqualTo(0.0127);
  }

  @Property
  void thereAndBackChangesNothing(
      @ForAll UnitCode unit, @ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
    assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(1e-12 * Math.abs(value)));
  }

  @Test
  void aCodeInTheWrongCaseIsNotAUnit() {
    assertThat(UnitCode.of("MM")).isEmpty();
    assertThat(UnitCode.of("n")).isEmpty();
    assertThat(UnitCode.of("")).isEmpty();
  }

  @Property
  void everyKindIsShownInUnitsOfItsOwnDimension(
      @ForAll QuantityKind kind, @ForAll UnitSystem system) {
    assertThat(kind.show(1, system).unit().dimension()).isEqualTo(kind.dimension());
    assertThat(QuantityKind.of(kind.dimension()).dimension()).isEqualTo(kind.dimension());
  }
}

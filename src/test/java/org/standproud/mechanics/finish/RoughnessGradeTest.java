package org.standproud.mechanics.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.ResultKind;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

class RoughnessGradeTest {

  private static final PublishedTable ISO =
      new PublishedTable(Subject.FINISH, "ISO 1302, N grades", SourceTag.FOUND, ResultKind.STORED);

  /** ISO 1302, N grades in um and uin [found]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0} allows Ra {1} um, {2} uin")
  @CsvSource({
    "N1, .025, 1",
    "N2, .05, 2",
    "N3, .1, 4",
    "N4, .2, 8",
    "N5, .4, 16",
    "N6, .8, 32",
    "N7, 1.6, 63",
    "N8, 3.2, 125",
    "N9, 6.3, 250",
    "N10, 12.5, 500",
    "N11, 25, 1000",
    "N12, 50, 2000"
  })
  void aGradeIsNamedForTheGreatestRoughnessItAllows(
      RoughnessGrade grade, double raUm, double raMicroinch) {
    ISO.row(grade.name())
        .figure("R_a", "um", raUm, grade.greatestRaM() * 1e6, 1e-9)
        .percent("R_a", "uin", raMicroinch, grade.greatestRaM() / 25.4e-9, 2);
    assertThat(RoughnessGrade.of(grade.greatestRaM())).isEqualTo(grade);
  }

  /** A value qualifies only for a grade whose limit it does not exceed [found]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void sevenPointFourMicrometresIsN10NotN9() {
    ISO.row("R_a 7.4 um").figure("N grade", "", 10, RoughnessGrade.of(7.4e-6).ordinal() + 1, 1e-9);
    assertThat(RoughnessGrade.of(6.3e-6)).isEqualTo(RoughnessGrade.N9);
    assertThat(RoughnessGrade.of(6.31e-6)).isEqualTo(RoughnessGrade.N10);
  }

  @Property
  void noGradeIsGivenToASurfaceThatExceedsIt(
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 50) double raUm) {
    assertThat(raUm / 1e6).isLessThanOrEqualTo(RoughnessGrade.of(raUm / 1e6).greatestRaM());
  }

  @Test
  void aSurfaceRougherThanN12HasNoGrade() {
    assertThatThrownBy(() -> RoughnessGrade.of(51e-6)).isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> RoughnessGrade.of(Double.NaN)).isInstanceOf(OutsideValidity.class);
  }
}

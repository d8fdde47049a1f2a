package org.standproud.mechanics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.units.Dimension;

class EvidenceTest {

  private static final FieldPointer GIVEN_AT = FieldPointer.to(RequestFields.HOLD);

  private static final Fact.Origin GIVEN = new Fact.Stated(GIVEN_AT, null);

  private static EvidenceValue value(Fact fact, double number) {
    return new EvidenceValue(
        fact, new Value.Quantity(Band.exactly(number)), List.of(GIVEN_AT), List.of());
  }

  private static final Evidence EVIDENCE =
      new Evidence(List.of(value(Vocabulary.GRIP_DEPTH, .008), value(Vocabulary.PASS_TIME, 60)));

  @Test
  void whatIsGivenIsFoundAndWhatIsNotIsMissingByItsName() {
    assertThat(EVIDENCE.get(Vocabulary.PASS_TIME)).isEqualTo(new Value.Quantity(Band.exactly(60)));
    assertThat(EVIDENCE.detail(Vocabulary.PASS_TIME).inputs()).containsExactly(GIVEN_AT);
    Fact missing = Vocabulary.all().get(Vocabulary.all().size() / 2);
    Evidence none = new Evidence(List.of());
    assertThat(none.get(missing)).isEqualTo(new Value.Missing(missing.name()));
    assertThat(none.detail(missing).value()).isEqualTo(new Value.Missing(missing.name()));
  }

  @Test
  void oneFactHasOneValue() {
    assertThatThrownBy(
            () ->
                new Evidence(
                    List.of(value(Vocabulary.PASS_TIME, 60), value(Vocabulary.PASS_TIME, 61))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(Vocabulary.PASS_TIME.name());
  }

  @Test
  void aValuePutInPlaceOfAnotherKeepsItsPlaceInTheOrder() {
    Evidence changed = EVIDENCE.with(List.of(value(Vocabulary.GRIP_DEPTH, .020)));
    assertThat(changed.values())
        .containsExactly(value(Vocabulary.GRIP_DEPTH, .020), value(Vocabulary.PASS_TIME, 60));
    assertThat(EVIDENCE.values()).contains(value(Vocabulary.GRIP_DEPTH, .008));
  }

  @Test
  void aListOfNumbersIsReadOutInItsOrder() {
    Value.Quantities passes = new Value.Quantities(List.of(Band.exactly(3), Band.exactly(1)));
    assertThat(passes.words(band -> (int) band.likely() + " mm")).isEqualTo("3 mm then 1 mm");
    assertThat(new Value.Quantities(List.of()).words(Band::toString)).isEqualTo("none");
  }

  @Test
  void aNumberAndAListOfNumbersHaveADimensionAndAWordHasNone() {
    Fact.Number length = new Fact.Number(Dimension.LENGTH, 0, 1);
    assertThat(new Fact("a", length, "", GIVEN).number()).isEqualTo(length);
    assertThat(new Fact("b", new Fact.Numbers(length), "", GIVEN).number()).isEqualTo(length);
    assertThat(new Fact("c", new Fact.Word(List.of("yes")), "", GIVEN).number()).isNull();
    assertThat(new Fact("d", new Fact.YesNo(), "", GIVEN).number()).isNull();
  }

  @Test
  void theVocabularyNamesEveryFactOnce() {
    assertThat(Vocabulary.all())
        .contains(Vocabulary.GRIP_DEPTH, Vocabulary.PASS_TIME)
        .extracting(Fact::name)
        .doesNotHaveDuplicates();
  }
}

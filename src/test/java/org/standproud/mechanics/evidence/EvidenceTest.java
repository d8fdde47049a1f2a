package org.standproud.mechanics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;
import org.standproud.setup.units.Dimension;

class EvidenceTest {

  private static EvidenceValue value(Fact fact, double number) {
    return new EvidenceValue(
        fact, new Value.Quantity(Band.exactly(number)), List.of("given"), List.of());
  }

  private static final Evidence GIVEN =
      new Evidence(List.of(value(Vocabulary.GRIP_DEPTH, .008), value(Vocabulary.PASS_TIME, 60)));

  @Test
  void whatIsGivenIsFoundAndWhatIsNotIsMissingByItsName() {
    assertThat(GIVEN.get(Vocabulary.PASS_TIME)).isEqualTo(new Value.Quantity(Band.exactly(60)));
    assertThat(GIVEN.detail(Vocabulary.PASS_TIME).inputs()).containsExactly("given");
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
    Evidence changed = GIVEN.with(List.of(value(Vocabulary.GRIP_DEPTH, .020)));
    assertThat(changed.values())
        .containsExactly(value(Vocabulary.GRIP_DEPTH, .020), value(Vocabulary.PASS_TIME, 60));
    assertThat(GIVEN.values()).contains(value(Vocabulary.GRIP_DEPTH, .008));
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
    assertThat(new Fact("a", length, "", "").number()).isEqualTo(length);
    assertThat(new Fact("b", new Fact.Numbers(length), "", "").number()).isEqualTo(length);
    assertThat(new Fact("c", new Fact.Word(List.of("yes")), "", "").number()).isNull();
    assertThat(new Fact("d", new Fact.YesNo(), "", "").number()).isNull();
  }

  @Test
  void theVocabularyNamesEveryFactOnceAndOnlyANumberOfTheRequestIsStated() {
    assertThat(Vocabulary.all())
        .contains(Vocabulary.GRIP_DEPTH, Vocabulary.PASS_TIME)
        .extracting(Fact::name)
        .doesNotHaveDuplicates();
    assertThat(Vocabulary.isStated(Vocabulary.GRIP_DEPTH)).isTrue();
    assertThat(Vocabulary.isStated(Vocabulary.PASS_TIME)).as("it is computed").isFalse();
    Fact word = new Fact("e", new Fact.Word(List.of("yes")), "", Vocabulary.GRIP_DEPTH.formula());
    assertThat(Vocabulary.isStated(word)).as("a word is no number").isFalse();
  }
}

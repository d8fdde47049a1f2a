package org.standproud.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.standproud.advice.DemoShop;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.Problem;
import org.standproud.web.words.PageWords;

/** The form as it is written from the fields of a request. */
class FormWriterTest {

  private static FormWriter writer(
      UnitSystem units, Map<String, String> values, List<Problem> problems) {
    ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
    messages.setBasename("messages");
    messages.setDefaultEncoding("UTF-8");
    return new FormWriter(
        Shelves.of(DemoShop.CATALOGUE, units), new PageWords(messages), values, problems);
  }

  private static List<FormField> fields(List<FormSection> sections) {
    List<FormField> all = new ArrayList<>();
    for (FormSection section : sections) {
      all.addAll(section.fields());
      all.addAll(fields(section.inner()));
    }
    return all;
  }

  @Test
  void everyFieldIsWrittenOnceWithItsLabel() {
    for (UnitSystem units : UnitSystem.values()) {
      FormWriter writer = writer(units, Map.of(), List.of());
      List<FormField> shown = fields(writer.sections(units));
      assertThat(shown).extracting(FormField::path).doesNotHaveDuplicates();
      assertThat(shown).allSatisfy(field -> assertThat(field.label()).isNotBlank());
      assertThat(writer.fields()).hasSameElementsAs(shown);
      assertThat(writer.wrong()).isEmpty();
    }
  }

  @Test
  void aStepOfTheFormIsASectionInTheOrderOfASetUp() {
    List<FormSection> sections =
        writer(UnitSystem.METRIC, Map.of(), List.of()).sections(UnitSystem.METRIC);
    assertThat(sections).hasSizeGreaterThan(FieldGuide.Step.values().length);
    assertThat(sections.get(0).fields())
        .extracting(FormField::path)
        .contains("/stock/height", "/stock/thickness");
  }

  @Test
  void whatWasTypedStaysAndItsErrorStandsBesideIt() {
    Problem tooTall =
        new Problem("/stock/height", "9000", "this is too large", "1..500", "mm", null);
    FormWriter writer =
        writer(UnitSystem.METRIC, Map.of("/stock/height", "9000"), List.of(tooTall));
    writer.sections(UnitSystem.METRIC);
    assertThat(writer.wrong())
        .singleElement()
        .satisfies(field -> assertThat(field.path()).isEqualTo("/stock/height"))
        .satisfies(field -> assertThat(field.value()).isEqualTo("9000"))
        .satisfies(
            field ->
                assertThat(field.error())
                    .containsIgnoringCase("this is too large")
                    .contains("1..500 mm"));
    assertThat(writer.elsewhere(List.of(tooTall))).isEmpty();
  }

  @Test
  void anErrorOfNoFieldIsReportedElsewhere() {
    Problem whole = new Problem("/colour", "red", "there is no such field", null, null, null);
    FormWriter writer = writer(UnitSystem.METRIC, Map.of(), List.of(whole));
    writer.sections(UnitSystem.METRIC);
    assertThat(writer.wrong()).isEmpty();
    assertThat(writer.elsewhere(List.of(whole)))
        .singleElement()
        .satisfies(sentence -> assertThat(sentence).containsIgnoringCase("there is no such field"));
  }
}

package org.standproud.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.MapConfigurationPropertySource;
import org.standproud.access.AccessMode;
import org.standproud.rules.publishing.Publishing;
import org.standproud.shop.RulesProperties.TwoPersons;

/** Who has to publish, by the mode of access and the property. */
class RuleConfigurationTest {

  @ParameterizedTest
  @CsvSource({
    ", OPEN, ONE_PERSON",
    ", KEYS, TWO_FOR_STOPS",
    "STOPS, OPEN, TWO_FOR_STOPS",
    "TRUE, OPEN, TWO_PERSONS",
    "FALSE, KEYS, ONE_PERSON"
  })
  void thePropertyDecidesElseTheModeOfAccess(
      TwoPersons property, AccessMode access, Publishing publishing) {
    assertThat(RuleConfiguration.publishing(property, access)).isEqualTo(publishing);
  }

  /** YAML reads the words true and false as truth values. */
  @Test
  void aTruthValueIsReadAsItsWord() {
    Binder binder =
        new Binder(
            new MapConfigurationPropertySource(
                Map.of("yaml", true, "text", "false", "stops", "stops", "empty", "")));
    assertThat(binder.bind("yaml", TwoPersons.class).get()).isEqualTo(TwoPersons.TRUE);
    assertThat(binder.bind("text", TwoPersons.class).get()).isEqualTo(TwoPersons.FALSE);
    assertThat(binder.bind("stops", TwoPersons.class).get()).isEqualTo(TwoPersons.STOPS);
    assertThat(binder.bind("empty", TwoPersons.class).isBound()).isFalse();
  }
}

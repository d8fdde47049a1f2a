package org.standproud.rules.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Unicode UTS 39: words that mix scripts, and words of one script that pose as another's. */
class MixedScriptsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A pl\u0430te that stands tall", // Cyrillic a
        "\u0410 plate that stands tall", // Cyrillic A alone
        "Th\u03bf jaws let go", // Greek omicron
        "Set a st\u043ep"
      })
  void aLetterThatLooksLikeAnotherIsFound(String title) {
    assertThat(MixedScripts.lookAlike(title)).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A plate that stands tall on a shallow grip rocks",
        "Die Spannkraft genügt nicht für 5 \u03bcm",
        "Entr\u00e9e d'un outil \u00e0 90\u00b0, \u0394x of 3 mm",
        "\u0422\u043e\u043d\u043a\u0430\u044f \u043f\u043b\u0430\u0441\u0442\u0438\u043d\u0430 \u0434\u0440\u043e\u0436\u0438\u0442", // Russian throughout
        "\u8584\u677f\u4f1a\u632f\u52a8"
      })
  void titlesOfOneLanguagePass(String title) {
    assertThat(MixedScripts.lookAlike(title)).isNull();
  }
}

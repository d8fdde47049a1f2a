package org.standproud.api.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decoding by the WHATWG URL standard, section 5.1, apart from what that standard lets pass. */
class FormParametersTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x=%ff",
        "x=%c3",
        "%ff=1",
        "x=%",
        "x=%4",
        "x=%zz",
        "x=%c0%80",
        "x=%ed%a0%80",
        "=x",
        "%00=x",
        "a%0ab=x"
      })
  void brokenEscapesAndWhatIsNotUtf8AreRefused(String query) {
    assertThatThrownBy(() -> FormParameters.of(query, null))
        .isInstanceOf(FormParameters.Malformed.class);
    assertThatThrownBy(() -> FormParameters.of(null, query))
        .isInstanceOf(FormParameters.Malformed.class);
  }

  /** The JDK's encoder is the other side. */
  @Property(tries = 300)
  void whatAnEncoderWritesIsReadBack(
      @ForAll @AlphaChars @StringLength(min = 1, max = 20) String name, @ForAll String value)
      throws FormParameters.Malformed {
    String pair =
        URLEncoder.encode(name, StandardCharsets.UTF_8)
            + "="
            + URLEncoder.encode(value, StandardCharsets.UTF_8);
    Map<String, String[]> read = FormParameters.of(pair, "a=b&a=c+d&&e");
    String sent = new String(value.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    assertThat(read.get(name)[0]).isEqualTo(sent);
    assertThat(read.get("a")).endsWith("b", "c d");
    assertThat(read.get("e")).endsWith("");
  }

  @Test
  void moreParametersThanAnyFormHasAreRefused() {
    assertThatThrownBy(() -> FormParameters.of(null, "a&".repeat(FormParameters.MOST + 1)))
        .isInstanceOf(FormParameters.Malformed.class)
        .hasMessageContaining("1000");
  }
}

package org.standproud.api.sarif;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** CommonMark 0.31, section 2.4: a backslash before ASCII punctuation makes it plain. */
class PlainMarkdownTest {

  @Test
  void nothingInTheWordsOfACardIsALinkAnImageOrHtml() {
    assertThat(PlainMarkdown.of("[press](http://x) <img src=x> ![a](b) **now** `c`"))
        .isEqualTo(
            "\\[press\\]\\(http\\:\\/\\/x\\) \\<img src\\=x\\> \\!\\[a\\]\\(b\\) \\*\\*now\\*\\* \\`c\\`");
  }

  @Test
  void noLineBeginsAListOrAHeading() {
    assertThat(PlainMarkdown.of("1. first\n# second\n- third"))
        .isEqualTo("1\\. first \\# second \\- third");
  }

  @Test
  void aSentenceStaysASentence() {
    assertThat(PlainMarkdown.of("Grip deeper, or set a stop."))
        .isEqualTo("Grip deeper, or set a stop.");
  }
}

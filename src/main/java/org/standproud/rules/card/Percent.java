package org.standproud.rules.card;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Shares of the draws as cards write them: "5 %", "2.5%". */
final class Percent {

  /** The expected format, for the error. */
  static final String WANTED = "a percentage from 0 to 99, such as 10 %";

  private static final double MOST = 99;
  private static final Pattern TEXT = Pattern.compile("(\\d{1,2}(?:\\.\\d{1,3})?) ?%");

  private Percent() {}

  /** The share, 0 to 1, or null if the text is not a percentage in the range. */
  static @Nullable Double share(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      return null;
    }
    double percent = Double.parseDouble(matcher.group(1));
    return percent <= MOST ? (Double) (percent / 100) : null;
  }
}

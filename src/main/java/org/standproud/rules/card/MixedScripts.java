package org.standproud.rules.card;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds words with look-alike letters of another script, such as a Cyrillic o in a Latin word
 * (Unicode UTS 39, section 5.1, mixed-script detection). Greek letters without a Latin look-alike,
 * as in units and formulas, are allowed.
 */
final class MixedScripts {

  /** Greek and Cyrillic letters with a Latin look-alike; from the tables of UTS 39. */
  private static final String LIKE_LATIN =
      "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧαγιοκνρυχ" + "АВЕЅІЈКМНОРСТУХаеѕіјорсухԁһӏԛԝвкмнтг";

  /** Greek letters of formulas and units. */
  private static final String GREEK_ALONE = "βδεζηθλμξπστφψωΓΔΘΛΞΠΣΦΨΩ";

  private MixedScripts() {}

  /**
   * The first word with mixed scripts.
   *
   * @return the word, or null if there is none
   */
  static @Nullable String lookAlike(String text) {
    boolean latin = text.codePoints().anyMatch(c -> script(c) == UnicodeScript.LATIN);
    for (String word : text.split("[^\\p{L}\\p{M}]+")) {
      Set<UnicodeScript> scripts = EnumSet.noneOf(UnicodeScript.class);
      word.codePoints()
          .filter(c -> GREEK_ALONE.indexOf(c) < 0)
          .mapToObj(MixedScripts::script)
          .filter(s -> s != UnicodeScript.COMMON && s != UnicodeScript.INHERITED)
          .forEach(scripts::add);
      boolean poses =
          !word.isEmpty() && latin && word.codePoints().allMatch(c -> LIKE_LATIN.indexOf(c) >= 0);
      if (poses || scripts.size() > 1) {
        return word;
      }
    }
    return null;
  }

  private static UnicodeScript script(int codePoint) {
    return UnicodeScript.of(codePoint);
  }
}

package org.standproud.rules.card;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds words that look like others because letters of another script stand among them, such as a
 * Cyrillic o in a Latin word (Unicode UTS 39, section 5.1, mixed-script detection). Greek letters
 * that no Latin letter looks like, as in units and formulas, are let through.
 */
final class MixedScripts {

  /** Letters of Greek and Cyrillic that a Latin letter looks like; from the tables of UTS 39. */
  private static final String LIKE_LATIN =
      "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧαγιοκνρυχ" + "АВЕЅІЈКМНОРСТУХаеѕіјорсухԁһӏԛԝвкмнтг";

  /** Greek letters of formulas and units. */
  private static final String GREEK_ALONE = "βδεζηθλμξπστφψωΓΔΘΛΞΠΣΦΨΩ";

  private MixedScripts() {}

  /**
   * The first word of a text that looks like another.
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

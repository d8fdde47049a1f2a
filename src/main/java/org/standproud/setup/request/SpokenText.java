package org.standproud.setup.request;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.jspecify.annotations.Nullable;

/** Words of a shop made comparable, and the size that stands among them. */
final class SpokenText {

  private static final double METRES_PER_INCH = 0.0254;
  private static final int MOST_NEAREST = 3;

  /** Below this likeness a name would puzzle more than it helps; chosen by trial. */
  private static final double LEAST_LIKENESS = 0.72;

  private static final Map<String, String> NUMBERS =
      Map.ofEntries(
          Map.entry("half", "1/2"),
          Map.entry("quarter", "1/4"),
          Map.entry("one", "1"),
          Map.entry("two", "2"),
          Map.entry("three", "3"),
          Map.entry("four", "4"),
          Map.entry("five", "5"),
          Map.entry("six", "6"),
          Map.entry("eight", "8"));

  private static final Pattern SIZE =
      Pattern.compile(
          "(?<![\\d./])(?:(\\d{1,2})[ -])?(?:(\\d{1,2})/(\\d{1,3})|(\\d{1,4}(?:\\.\\d{1,4})?))"
              + " ?-?(mm|millimetres?|millimeters?|inch(?:es)?|in)\\b");

  private SpokenText() {}

  /**
   * A size with the words around it.
   *
   * @param metres the size in m
   * @param rest the words without it
   */
  record Sized(double metres, String rest) {}

  /** Lower case, one space between words, inch marks and spelt numbers as they are read. */
  static String tidy(String text) {
    String plain =
        withoutEnding(text, SpokenItems.TYPICAL)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[\"\u201d\u2033]|''", " inch ")
            .replace(", ", " ")
            .replace("aluminum", "aluminium")
            .replaceAll("\\s+", " ")
            .strip();
    StringBuilder words = new StringBuilder();
    for (String word : plain.split(" ")) {
      words.append(words.isEmpty() ? "" : " ").append(NUMBERS.getOrDefault(word, word));
    }
    return words.toString();
  }

  /** The size among tidy words; null if there is none, or one that is no number. */
  static @Nullable Sized sized(String tidy) {
    Matcher found = SIZE.matcher(tidy);
    if (!found.find()) {
      return null;
    }
    double number;
    if (found.group(2) == null) {
      number = Double.parseDouble(found.group(4));
      if (found.group(1) != null) {
        return null;
      }
    } else {
      double whole = found.group(1) == null ? 0 : Double.parseDouble(found.group(1));
      number = whole + Double.parseDouble(found.group(2)) / Double.parseDouble(found.group(3));
    }
    double metres = found.group(5).startsWith("m") ? number / 1000 : number * METRES_PER_INCH;
    String rest = tidy.substring(0, found.start()) + " " + tidy.substring(found.end());
    return Double.isFinite(metres) ? new Sized(metres, rest.replaceAll(" +", " ").strip()) : null;
  }

  static String withoutEnding(String text, String ending) {
    return text.endsWith(ending) ? text.substring(0, text.length() - ending.length()) : text;
  }

  /** Up to three names that come near what was written, the nearest first. */
  static List<String> nearest(String written, Collection<String> names) {
    String word = tidy(MessageText.shortened(written));
    JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();
    record Near(String name, double likeness) {}
    return names.stream()
        .map(name -> new Near(name, likeness.apply(word, tidy(name))))
        .filter(near -> near.likeness() >= LEAST_LIKENESS)
        .sorted(Comparator.comparingDouble(Near::likeness).reversed())
        .limit(MOST_NEAREST)
        .map(Near::name)
        .toList();
  }
}

package org.standproud.setup.request;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** How values from outside are put into a message: short, printable, and with a guess at a typo. */
final class MessageText {

  private static final int LONGEST = 64;

  private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cntrl}\\p{Cs}]");

  /** Below this likeness a guess would puzzle more than it helps; chosen by trial. */
  private static final double LEAST_LIKENESS = 0.8;

  private static final int MOST_LISTED = 60;

  private MessageText() {}

  /** What a node holds, on one line. */
  static String of(JsonNode node) {
    if (node.isObject()) {
      return "an object";
    }
    if (node.isArray()) {
      return "a list of " + node.size();
    }
    return shortened(node.isString() ? node.stringValue() : node.toString());
  }

  /** A text cut short, with control characters made visible. */
  static String shortened(String text) {
    String head = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    return UNPRINTABLE.matcher(head).replaceAll("?");
  }

  /** A name of a request as words: handleTorque is handle torque. */
  static String spoken(String name) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      words.append(Character.isUpperCase(c) ? " " + Character.toLowerCase(c) : c);
    }
    return words.toString();
  }

  /** A number with as many digits as a person reads. */
  static String of(double number) {
    BigDecimal rounded = new BigDecimal(number).round(new MathContext(6)).stripTrailingZeros();
    return Math.abs(rounded.scale()) > 9 ? rounded.toString() : rounded.toPlainString();
  }

  /** Names set in one line. */
  static String list(Collection<String> names) {
    String head = String.join(", ", names.stream().limit(MOST_LISTED).toList());
    return names.size() > MOST_LISTED ? head + ", …" : head;
  }

  /** The name nearest to what was written, if one comes near. */
  static @Nullable String nearest(String written, Collection<String> names) {
    String word = shortened(written).toLowerCase(Locale.ROOT);
    JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();
    String best = null;
    double most = LEAST_LIKENESS;
    for (String name : names) {
      double here = likeness.apply(word, name.toLowerCase(Locale.ROOT));
      if (here >= most) {
        most = here;
        best = name;
      }
    }
    return best;
  }
}

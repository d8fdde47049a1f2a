package org.standproud.assessment.acceptance;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;

/** Compares two trace lines of a card. */
public final class RecordedFindingComparison {

  /** Rounding of unit conversions is no change. */
  private static final MathContext COMPARED = new MathContext(6);

  private RecordedFindingComparison() {}

  /**
   * Lists the differences between the result of a card then and now: its severity, its kind, its
   * conditions, its limit and every number it read, to six figures.
   *
   * @param then its line then
   * @param now its line now
   * @return one phrase for each difference, empty if the results are the same
   */
  public static List<String> changes(CanonicalJson then, CanonicalJson now) {
    JsonNode was = then.tree();
    JsonNode is = now.tree();
    List<String> changes = new ArrayList<>();
    differ("severity", was.path("severity"), is.path("severity"), changes);
    differ("kind", was.path("kind"), is.path("kind"), changes);
    differ("truth", was.path("truth"), is.path("truth"), changes);
    if (!conditions(was).equals(conditions(is))) {
      changes.add("the card was rewritten");
    }
    differ("limit", was.at("/margin/threshold"), is.at("/margin/threshold"), changes);
    Map<String, JsonNode> facts = facts(is);
    Map<String, JsonNode> before = facts(was);
    before.forEach(
        (name, value) -> {
          JsonNode other = facts.get(name);
          if (other != null) {
            differ(name, value, other, changes);
          }
        });
    return changes;
  }

  private static void differ(String what, JsonNode was, JsonNode is, List<String> changes) {
    String then = text(was);
    String now = text(is);
    if (!then.equals(now)) {
      changes.add(what + " was " + then + ", is " + now);
    }
  }

  private static List<String> conditions(JsonNode line) {
    List<String> written = new ArrayList<>();
    for (String part : List.of("scope", "conditions")) {
      line.path(part).forEach(c -> written.add(c.path("written").asString("")));
    }
    return written;
  }

  private static Map<String, JsonNode> facts(JsonNode line) {
    Map<String, JsonNode> facts = new TreeMap<>();
    for (String part : List.of("scope", "conditions")) {
      for (JsonNode condition : line.path(part)) {
        condition.path("facts").forEach(f -> facts.put(f.path("fact").asString(""), f));
      }
    }
    return facts;
  }

  private static String text(JsonNode value) {
    if (value.has("band")) {
      JsonNode band = value.path("band");
      String low = text(band.path("low"));
      String high = text(band.path("high"));
      String number = low.equals(high) ? low : low + " to " + high;
      return (number + ", likely " + text(band.path("likely")) + " " + unit(value)).strip();
    } else if (value.isNumber()) {
      return BigDecimal.valueOf(value.asDouble()).round(COMPARED).stripTrailingZeros().toString();
    }
    for (String part : List.of("word", "yes")) {
      if (value.has(part)) {
        return value.path(part).asString();
      }
    }
    return value.isString() ? value.asString() : "not known";
  }

  private static String unit(JsonNode value) {
    return value.path("unit").asString("");
  }
}

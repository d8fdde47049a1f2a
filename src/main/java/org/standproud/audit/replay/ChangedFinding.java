package org.standproud.audit.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;

/**
 * A finding that differs with another rule base.
 *
 * @param card the card
 * @param change appears, vanishes or changes
 * @param recorded the finding in the record; absent if there is none
 * @param now the finding now; absent if there is none
 */
public record ChangedFinding(
    String card, String change, @Nullable FindingInBrief recorded, @Nullable FindingInBrief now) {

  /**
   * A finding in brief.
   *
   * @param kind its kind
   * @param severity its severity
   * @param message its message
   */
  public record FindingInBrief(String kind, String severity, String message) {}

  static List<ChangedFinding> between(CanonicalJson recorded, CanonicalJson now) {
    Map<String, FindingInBrief> was = findings(recorded);
    Map<String, FindingInBrief> is = findings(now);
    TreeSet<String> cards = new TreeSet<>(was.keySet());
    cards.addAll(is.keySet());
    List<ChangedFinding> changes = new ArrayList<>();
    for (String card : cards) {
      FindingInBrief then = was.get(card);
      FindingInBrief today = is.get(card);
      if (then == null) {
        changes.add(new ChangedFinding(card, "appears", null, today));
      } else if (!then.equals(today)) {
        changes.add(new ChangedFinding(card, today == null ? "vanishes" : "changes", then, today));
      }
    }
    return changes;
  }

  private static Map<String, FindingInBrief> findings(CanonicalJson answer) {
    Map<String, FindingInBrief> findings = new LinkedHashMap<>();
    for (JsonNode finding : answer.tree().path("findings")) {
      findings.put(
          finding.path("card").asString(""),
          new FindingInBrief(
              finding.path("kind").asString(""),
              finding.path("severity").asString(""),
              finding.path("message").asString("")));
    }
    return findings;
  }
}

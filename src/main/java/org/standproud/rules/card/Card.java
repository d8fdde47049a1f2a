package org.standproud.rules.card;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One rule card as written. It flags a set-up, unless it derives a judgement or changes the
 * severity of another card's finding.
 *
 * @param file the file it was read from
 * @param id stable identity, never reused
 * @param title the claim
 * @param protects what it protects
 * @param severity severity of its finding
 * @param confidence confidence in its source
 * @param source its source
 * @param since date it came into force, ISO 8601
 * @param revised date of its last change, ISO 8601, or empty
 * @param owner its owner
 * @param appliesTo the words each fact may have for the card to apply
 * @param limits the named limits
 * @param when the conditions; all must hold
 * @param derives the judgement it derives, or null
 * @param change its effect on another card's finding, or null
 * @param speaksAbove the share of draws above which it fires, or null for that of its severity
 * @param silencedBy ids of cards whose more severe finding means the same
 * @param message message for the machinist, with placeholders in braces
 * @param remedy how to fix it
 * @param why the mechanism
 * @param examples its examples
 */
public record Card(
    String file,
    Written id,
    String title,
    Protects protects,
    Severity severity,
    Confidence confidence,
    Source source,
    String since,
    String revised,
    String owner,
    Map<String, List<Written>> appliesTo,
    Map<String, Written> limits,
    List<Written> when,
    @Nullable Written derives,
    @Nullable SeverityChange change,
    @Nullable Double speaksAbove,
    List<Written> silencedBy,
    Written message,
    String remedy,
    String why,
    List<Example> examples) {

  /** Copies the collections, keeping their order. */
  public Card {
    appliesTo = Collections.unmodifiableMap(new LinkedHashMap<>(appliesTo));
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    when = List.copyOf(when);
    silencedBy = List.copyOf(silencedBy);
    examples = List.copyOf(examples);
  }

  /** Whether the card yields a finding of its own. */
  public boolean flags() {
    return derives == null && change == null;
  }
}

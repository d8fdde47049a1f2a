package org.standproud.advice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Source;
import org.standproud.rules.trace.Kind;

/**
 * The finding of one card.
 *
 * @param card id of the card
 * @param title its claim
 * @param kind fail, or open if a fact is missing (SARIF 2.1.0)
 * @param severity stop, caution or note, after all changes
 * @param share share of the draws in which it happens, 0 to 1; 0 if not known
 * @param protects what the card protects
 * @param message message for the machinist, in the caller's units
 * @param values the facts the card read
 * @param distance how far it is from the limit and what would clear it; absent if no number decides
 * @param changes why its severity differs from the card's; empty if it does not
 * @param measure what to measure or state to settle it; empty if it is certain
 * @param confidence how reliable it is
 * @param remedy how to fix it
 * @param why the mechanism
 * @param source the source of the card
 */
public record Finding(
    String card,
    String title,
    Kind kind,
    Severity severity,
    double share,
    String protects,
    String message,
    List<Quantity> values,
    @Nullable String distance,
    List<String> changes,
    List<String> measure,
    Confidence confidence,
    String remedy,
    String why,
    Source source) {

  /** Copies the lists. */
  public Finding {
    values = List.copyOf(values);
    changes = List.copyOf(changes);
    measure = List.copyOf(measure);
  }
}

package org.standproud.advice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Source;
import org.standproud.rules.trace.Kind;

/**
 * What one card has to say of a set-up.
 *
 * @param card id of the card
 * @param title its claim
 * @param kind {@code fail} or {@code open} (SARIF 2.1.0 kinds)
 * @param severity {@code stop}, {@code caution} or {@code note}, after every change
 * @param share the share of the draws in which it happens, 0 to 1; 0 where that is not known
 * @param protects what the card protects
 * @param message what to tell the machinist, in the caller's units
 * @param values the facts the card read
 * @param distance how far it is from the limit and what would clear it; null if no number decides
 * @param changes why its severity is not that of the card; empty if it is
 * @param measure what the shop could measure or say to settle it; empty if it is sure
 * @param confidence how far it can be relied on
 * @param remedy what would put it right
 * @param why the mechanism
 * @param source what the card stands on
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

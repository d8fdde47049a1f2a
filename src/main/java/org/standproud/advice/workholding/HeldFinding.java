package org.standproud.advice.workholding;

import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardTrace;

/**
 * A card's finding for the job in another hold.
 *
 * @param card id of the card
 * @param title its claim
 * @param severity stop, caution or note
 */
public record HeldFinding(String card, String title, Severity severity) {

  static HeldFinding of(CardTrace trace) {
    return new HeldFinding(trace.id(), trace.card().title(), trace.severity());
  }
}

package org.standproud.web.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.EvidenceDocument;
import org.standproud.assessment.RecordDetails;
import org.standproud.assessment.TraceDocument;
import org.standproud.audit.AuditRecord;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldPointer;
import org.standproud.web.recorded.CardLine;
import org.standproud.web.recorded.CardLine.Outcome;
import org.standproud.web.recorded.FactWords;
import org.standproud.web.recorded.RecordedAnswer;

/**
 * A record as an auditor sees it.
 *
 * @param cards every card by its outcome
 * @param facts every fact with its formula
 * @param shortened what is left out and why; null if it is whole
 */
record OpenRecord(
    Map<Outcome, List<CardLine>> cards, List<FactLine> facts, @Nullable String shortened) {

  /**
   * A fact.
   *
   * @param text its name with its value
   * @param formula its formula
   * @param inputs the inputs of the formula
   * @param assumptions the assumptions made
   */
  public record FactLine(
      String text, String formula, List<String> inputs, List<String> assumptions) {}

  static OpenRecord of(AuditRecord record, RecordDetails.Details details) {
    UnitSystem units = RecordedAnswer.of(record.account()).answer().units();
    Map<Outcome, List<CardLine>> cards = new LinkedHashMap<>();
    List<CardLine> all =
        details.trace().cards().stream()
            .map((TraceDocument.CardResult card) -> CardLine.of(card, units))
            .toList();
    for (Outcome outcome : Outcome.values()) {
      List<CardLine> these = all.stream().filter(c -> c.outcome() == outcome).toList();
      if (!these.isEmpty()) {
        cards.put(outcome, these);
      }
    }
    return new OpenRecord(
        cards,
        details.evidence().facts().stream().map(line -> fact(line, units)).toList(),
        details.trace().shortened());
  }

  private static FactLine fact(EvidenceDocument.FactLine line, UnitSystem units) {
    return new FactLine(
        FactWords.of(line.value(), units),
        line.formula(),
        line.inputs().stream().map(FieldPointer::text).toList(),
        line.assumptions().stream().map(Assumption::statement).toList());
  }
}

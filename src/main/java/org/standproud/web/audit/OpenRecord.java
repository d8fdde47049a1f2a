package org.standproud.web.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standproud.assessment.EvidenceDocument;
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
 * A record as an auditor sees it; nothing is computed again.
 *
 * @param cards every card by its outcome
 * @param facts every fact with its formula
 */
record OpenRecord(Map<Outcome, List<CardLine>> cards, List<FactLine> facts) {

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

  static OpenRecord of(AuditRecord record) {
    RecordedAnswer recorded = RecordedAnswer.of(record.account());
    UnitSystem units = recorded.answer().units();
    Map<Outcome, List<CardLine>> cards = new LinkedHashMap<>();
    List<CardLine> all =
        RecordedAnswer.trace(record.account()).cards().stream()
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
        RecordedAnswer.numbers(record.account()).facts().stream()
            .map(line -> fact(line, units))
            .toList());
  }

  private static FactLine fact(EvidenceDocument.FactLine line, UnitSystem units) {
    return new FactLine(
        FactWords.of(line.value(), units),
        line.formula(),
        line.inputs().stream().map(FieldPointer::text).toList(),
        line.assumptions().stream().map(Assumption::statement).toList());
  }
}

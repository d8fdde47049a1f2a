package org.standproud.shop.trial;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.standproud.advice.Advice;
import org.standproud.advice.Adviser;
import org.standproud.advice.Verdict;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.SetupRejectedException;
import org.standproud.assessment.TraceDocument;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.records.Records;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Severity;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.publishing.CardEdit;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.rules.publishing.Trial;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.CanonicalText;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.shop.ShopCatalogue;
import tools.jackson.databind.JsonNode;

/** Tries cards that are being written on a set-up, beside those in service. Nothing is kept. */
@Component
public final class CardTrials {

  private final RuleBasePublisher desk;
  private final ShopCatalogue shop;
  private final Records records;

  CardTrials(RuleBasePublisher desk, ShopCatalogue shop, Records records) {
    this.desk = desk;
    this.shop = shop;
    this.records = records;
  }

  /**
   * What came of trying cards.
   *
   * @param draft what they come to; null if they cannot be built
   * @param inService what the cards in service come to; null if none are
   * @param cards the result of each card of the change and why; empty if they cannot be built
   * @param errors what the gate would refuse
   * @param warnings what is odd all the same
   */
  public record TrialAnswer(
      @Nullable Side draft,
      @Nullable Side inService,
      List<TraceDocument.CardResult> cards,
      List<CardError> errors,
      List<CardWarning> warnings) {}

  /**
   * What some cards come to.
   *
   * @param verdict the verdict
   * @param summary it in one sentence
   * @param score 0 to 100
   * @param findings what the cards have to say, gravest first
   */
  @Schema(name = "TrialSide")
  public record Side(Verdict verdict, String summary, int score, List<TrialFinding> findings) {}

  /**
   * What one card has to say.
   *
   * @param card its id
   * @param title its claim
   * @param severity its severity after every change
   * @param kind fail or open
   * @param message its message
   */
  public record TrialFinding(
      String card, String title, Severity severity, Kind kind, String message) {}

  /**
   * Tries cards on a set-up.
   *
   * @param edit what changes of the cards
   * @param setup the set-up, as a request for an assessment describes it
   * @throws SetupRejectedException if it does not describe a set-up
   * @throws NotReadyException if there is no catalogue
   */
  public TrialAnswer onSetup(CardEdit edit, JsonNode setup) {
    Reading reading =
        new SetupReader(shop.get().orElseThrow(() -> new NotReadyException(shop.fault())))
            .read(setup);
    if (!(reading instanceof Reading.Accepted accepted)) {
      throw new SetupRejectedException(((Reading.Refused) reading).problems());
    }
    Setup read = accepted.setup();
    return trial(edit, EvidenceGathering.of(read), read.units());
  }

  /**
   * Tries cards on the set-up of an assessment on record.
   *
   * @param edit what changes of the cards
   * @param id id of the assessment
   * @throws NotFoundException if there is none, or its numbers are withheld
   */
  public TrialAnswer onRecord(CardEdit edit, UUID id) {
    AuditRecord record =
        records
            .find(id)
            .filter(stored -> !stored.gone())
            .orElseThrow(
                () -> new NotFoundException("No assessment that can be read has the id " + id))
            .record();
    Setup setup = CanonicalText.setup(record.account().setup().text());
    return trial(edit, EvidenceGathering.of(setup), setup.units());
  }

  private TrialAnswer trial(CardEdit edit, Evidence evidence, UnitSystem units) {
    Trial trial = desk.tryOn(edit, evidence);
    return new TrialAnswer(
        side(trial.trace(), evidence, units),
        side(trial.inService(), evidence, units),
        trial.trace() == null ? List.of() : cards(trial.trace(), edit.written().keySet()),
        trial.errors(),
        trial.warnings());
  }

  private static List<TraceDocument.CardResult> cards(RuleTrace trace, Set<String> files) {
    Set<String> ids =
        trace.cards().stream()
            .filter(card -> files.contains(card.card().file()))
            .map(CardTrace::id)
            .collect(Collectors.toSet());
    return TraceDocument.of(trace).cards().stream().filter(c -> ids.contains(c.card())).toList();
  }

  private static @Nullable Side side(
      @Nullable RuleTrace trace, Evidence evidence, UnitSystem units) {
    if (trace == null) {
      return null;
    }
    Advice advice = Adviser.advise(evidence, trace, units);
    return new Side(
        advice.verdict(),
        advice.summary(),
        advice.score(),
        advice.findings().stream()
            .map(f -> new TrialFinding(f.card(), f.title(), f.severity(), f.kind(), f.message()))
            .toList());
  }
}

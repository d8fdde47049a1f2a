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

/** Tries draft cards on a set-up, beside those in service. Nothing is stored. */
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
   * The result of trying cards on a set-up.
   *
   * @param draft the result with the draft; absent if the cards do not compile
   * @param inService the result with the cards in service; absent if there are none
   * @param cards the outcome of each changed card, with reasons; numbers in SI units
   * @param errors the errors that the gate would report
   * @param warnings what is unusual but allowed
   */
  public record TrialAnswer(
      @Nullable Side draft,
      @Nullable Side inService,
      List<TraceDocument.CardResult> cards,
      List<CardError> errors,
      List<CardWarning> warnings) {}

  /**
   * The result with one set of cards.
   *
   * @param verdict the verdict
   * @param summary the result in one sentence
   * @param score 0 to 100
   * @param findings the findings, most severe first
   */
  @Schema(name = "TrialSide")
  public record Side(Verdict verdict, String summary, int score, List<TrialFinding> findings) {}

  /**
   * The finding of one card.
   *
   * @param card id of the card
   * @param title its claim
   * @param severity its severity after all changes
   * @param kind fail or open
   * @param message its message, in the units of the set-up
   */
  public record TrialFinding(
      String card, String title, Severity severity, Kind kind, String message) {}

  /**
   * Tries cards on a set-up.
   *
   * @param edit the change of cards
   * @param setup the set-up, as in a request for an assessment
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
   * Tries cards on the set-up of a recorded assessment.
   *
   * @param edit the change of cards
   * @param id id of the assessment
   * @throws NotFoundException if there is none, or its evidence is withheld
   */
  public TrialAnswer onRecord(CardEdit edit, UUID id) {
    AuditRecord record =
        records
            .find(id)
            .filter(stored -> !stored.gone())
            .orElseThrow(
                () -> new NotFoundException("There is no readable assessment with the id " + id))
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

package org.standproud.api.audit;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.assessments.Bodies;
import org.standproud.api.problem.BadParameter;
import org.standproud.api.problem.NotThere;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.Withdrawal;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.decisions.SaidThen;
import org.standproud.audit.decisions.ShownAcceptance;
import org.standproud.audit.store.AcceptanceBook;
import org.standproud.audit.store.Records;
import org.standproud.audit.store.StoredRecord;

/** What people decide about findings. A verdict stays whatever is accepted. */
@Tag(name = "Decisions", description = "Who answers for going on in spite of a finding.")
@RestController
@RequestMapping(
    path = "/v1/assessments/{id}/acceptances",
    produces = MediaType.APPLICATION_JSON_VALUE)
class AcceptancesController {

  private static final Clock CLOCK = Clock.systemUTC();

  private final Records records;
  private final AcceptanceBook book;
  private final Bodies bodies;

  AcceptancesController(Records records, AcceptanceBook book, Bodies bodies) {
    this.records = records;
    this.book = book;
    this.bodies = bodies;
  }

  /**
   * An acceptance as it is asked for.
   *
   * @param card id of the card whose finding is accepted
   * @param reason why
   * @param by who answers for it
   * @param expires until when, at most a year ahead
   * @param forJobOrder whether it speaks for later assessments of the same job order too
   */
  @Schema(name = "AcceptanceRequest")
  record Asked(String card, String reason, Signature by, Instant expires, boolean forJobOrder) {}

  /**
   * A withdrawal as it is asked for.
   *
   * @param reason why
   * @param by who takes the acceptance back
   */
  @Schema(name = "WithdrawalRequest")
  record TakenBack(String reason, Signature by) {}

  /**
   * A finding with what was decided about it.
   *
   * @param card the card
   * @param kind its kind, as it was answered
   * @param severity its severity, as it was answered
   * @param acceptances what was decided, in force, stale or withdrawn
   */
  @Schema(name = "DecidedFinding")
  record Decided(String card, String kind, String severity, List<ShownAcceptance> acceptances) {}

  /**
   * All that was decided about an assessment.
   *
   * @param assessment its id
   * @param verdict its verdict, which no acceptance changes
   * @param findings every finding, accepted or not
   */
  record Decisions(UUID assessment, String verdict, List<Decided> findings) {}

  @Operation(
      operationId = "acceptFinding",
      summary = "Answer for going on in spite of a finding",
      description =
          "The acceptance goes into the chain of records with name, role, reason and expiry. It is"
              + " shown beside the finding, which keeps its kind and severity; the verdict stays. It"
              + " becomes stale when it expires, or when the card says something else of the same"
              + " job order: another severity, limit or number.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Asked.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The acceptance is on disk.",
      content = @Content(schema = @Schema(implementation = ShownAcceptance.class)))
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<ShownAcceptance> accept(
      @PathVariable UUID id, HttpServletRequest request, Principal caller)
      throws IOException, InterruptedException {
    Asked asked = bodies.read(request, Asked.class);
    AuditRecord record = standing(id);
    refuseMasked(record, asked);
    RecordedFinding finding =
        record.findings().stream()
            .filter(f -> f.cardId().equals(asked.card()))
            .findFirst()
            .orElseThrow(
                () -> new BadParameter("card", "the assessment has no finding of this card"));
    CanonicalJson said = said(record, asked.card());
    Acceptance given = acceptance(asked, asked.by().through(caller), record, finding, said);
    records.append(given);
    return ResponseEntity.created(URI.create("/v1/assessments/" + id + "/acceptances"))
        .body(ShownAcceptance.of(given, null, said, given.time()));
  }

  @Operation(operationId = "listAcceptances", summary = "What was decided about the findings")
  @ApiResponse(
      responseCode = "200",
      description = "Every finding of the assessment with what was decided about it by now.")
  @GetMapping
  Decisions decisions(@PathVariable UUID id) {
    AuditRecord record = standing(id);
    List<AcceptanceBook.Decision> all = book.about(id, record.asked().jobOrder());
    Instant now = CLOCK.instant();
    return new Decisions(
        id,
        record.judged().verdict(),
        record.findings().stream()
            .map(
                f ->
                    new Decided(
                        f.cardId(), f.kind(), f.severity(), shown(all, f.cardId(), record, now)))
            .toList());
  }

  @Operation(
      operationId = "withdrawAcceptance",
      summary = "Take an acceptance back",
      description = "The acceptance stays in the chain; a record of its own takes it back.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = TakenBack.class))))
  @ApiResponse(responseCode = "201", description = "It is taken back.")
  @PostMapping(path = "/{acceptance}/withdrawal", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Void> withdraw(
      @PathVariable UUID id,
      @PathVariable UUID acceptance,
      HttpServletRequest request,
      Principal caller)
      throws IOException, InterruptedException {
    TakenBack asked = bodies.read(request, TakenBack.class);
    if (book.find(acceptance).filter(a -> a.assessment().equals(id)).isEmpty()) {
      throw new NotThere("The assessment has no acceptance with this id.");
    }
    records.append(withdrawal(asked, asked.by().through(caller), acceptance));
    return ResponseEntity.created(URI.create("/v1/assessments/" + id + "/acceptances")).build();
  }

  /** What stands where a job order was is no job order. */
  private static void refuseMasked(AuditRecord record, Asked asked) {
    if (asked.forJobOrder() && Mask.WITHHELD.equals(record.asked().jobOrder())) {
      throw new BadParameter("forJobOrder", "the job order of this assessment is withheld");
    }
  }

  private AuditRecord standing(UUID id) {
    StoredRecord stored =
        records.find(id).orElseThrow(() -> new NotThere("No assessment has the id " + id + "."));
    if (stored.gone()) {
      throw new ErrorResponseException(HttpStatus.GONE);
    }
    return stored.record();
  }

  private static Acceptance acceptance(
      Asked asked, Person by, AuditRecord record, RecordedFinding finding, CanonicalJson said) {
    try {
      return new Acceptance(
          AuditRecord.newId(),
          CLOCK.instant(),
          record.id(),
          record.asked().jobOrder(),
          finding.cardId(),
          finding.severity(),
          said,
          by,
          asked.reason(),
          asked.expires(),
          asked.forJobOrder());
    } catch (IllegalArgumentException e) {
      throw new BadParameter("body", String.valueOf(e.getMessage()));
    }
  }

  private static Withdrawal withdrawal(TakenBack asked, Person by, UUID acceptance) {
    try {
      return new Withdrawal(AuditRecord.newId(), CLOCK.instant(), acceptance, by, asked.reason());
    } catch (IllegalArgumentException e) {
      throw new BadParameter("body", String.valueOf(e.getMessage()));
    }
  }

  private static List<ShownAcceptance> shown(
      List<AcceptanceBook.Decision> all, String card, AuditRecord record, Instant now) {
    return all.stream()
        .filter(d -> d.acceptance().card().equals(card))
        .map(d -> ShownAcceptance.of(d.acceptance(), d.withdrawal(), said(record, card), now))
        .toList();
  }

  private static CanonicalJson said(AuditRecord record, String card) {
    return Objects.requireNonNull(
        SaidThen.line(record.account().trace(), card).orElse(null), "every card is in the trace");
  }
}

package org.standproud.api.assessment;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.security.Principal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.api.conditional.EntityTags;
import org.standproud.assessment.AssessmentDocument;
import org.standproud.assessment.AssessmentSummary;
import org.standproud.assessment.Assessor;
import org.standproud.assessment.EvidenceDocument;
import org.standproud.assessment.RecordDetails;
import org.standproud.assessment.SetupRequest;
import org.standproud.assessment.TraceDocument;
import org.standproud.assessment.idempotency.IdempotencyKey;
import org.standproud.assessment.idempotency.IdempotentAssessor;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoredRecord;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.NotFoundException;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** Assessments: created from a set-up, fetched as they were sent, and listed. */
@Tag(name = "Assessments", description = "Will this set-up hold?")
@RestController
@RequestMapping(path = "/v1/assessments", produces = MediaType.APPLICATION_JSON_VALUE)
class AssessmentsController {

  private static final String KEY =
      "Identifies the request so that it can be sent again after a timeout: the same key with"
          + " the same request gets the same answer and creates one record. A UUID is best. Kept"
          + " for standproud.idempotency.kept.";

  private final IdempotentAssessor assessor;
  private final Records records;
  private final RequestBodies bodies;
  private final RecordDetails details;

  AssessmentsController(
      IdempotentAssessor assessor, Records records, RequestBodies bodies, RecordDetails details) {
    this.assessor = assessor;
    this.records = records;
    this.bodies = bodies;
    this.details = details;
  }

  @Operation(
      operationId = "assess",
      summary = "Check a set-up",
      description =
          "Returns a verdict, a score, findings and what to measure, in the caller's units. The"
              + " answer is on disk before it is sent, and is sent exactly as stored.")
  @ApiResponse(
      responseCode = "201",
      description = "The set-up was checked, whatever the verdict.",
      headers =
          @Header(
              name = "Location",
              description = "the assessment",
              schema = @Schema(type = "string", format = "uri-reference")),
      content =
          @Content(schema = @Schema(oneOf = {AssessmentDocument.class, AssessmentSummary.class})))
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> assess(
      HttpServletRequest request,
      @Parameter(description = KEY) @RequestHeader(name = IdempotencyKey.HEADER, required = false)
          @Nullable String key,
      @Parameter(
              description = AnswerView.DESCRIPTION,
              schema =
                  @Schema(
                      allowableValues = {"full", "summary"},
                      defaultValue = "full"))
          @RequestParam(name = AnswerView.PARAMETER, required = false)
          @Nullable String view,
      Principal caller)
      throws IOException, InterruptedException {
    AnswerView wanted = AnswerView.of(view);
    IdempotencyKey named = IdempotencyKey.read(caller.getName(), key);
    Assessor.Answered answered =
        assessor.assess(SetupRequest.of(bodies.text(request)), caller.getName(), named);
    return ResponseEntity.created(URI.create("/v1/assessments/" + answered.id()))
        .contentType(MediaType.APPLICATION_JSON)
        .body(wanted.bytes(answered.json()));
  }

  @Operation(
      operationId = "listAssessments",
      summary = "Find assessments",
      description =
          "Newest first. Unknown parameters are refused, so a misspelt filter never returns"
              + " everything.")
  @ApiResponse(responseCode = "200", description = "The assessments that match every filter.")
  @GetMapping
  AssessmentList list(Filter filter, HttpServletRequest request) {
    Filter.refuseUnheard(request.getParameterMap());
    int most = filter.most();
    try {
      return AssessmentList.of(records.search(filter.query(), most, filter.cursor()));
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("limit or cursor", String.valueOf(e.getMessage()));
    }
  }

  @Operation(
      operationId = "getAssessment",
      summary = "Fetch an assessment",
      description =
          "Byte for byte what was sent when it was created. Send its ETag as If-None-Match; 304"
              + " means that the answer is unchanged.")
  @ApiResponse(
      responseCode = "200",
      description = "The assessment.",
      content =
          @Content(schema = @Schema(oneOf = {AssessmentDocument.class, AssessmentSummary.class})))
  @GetMapping("/{id}")
  ResponseEntity<byte[]> get(
      @PathVariable UUID id,
      @Parameter(
              description = AnswerView.DESCRIPTION,
              schema =
                  @Schema(
                      allowableValues = {"full", "summary"},
                      defaultValue = "full"))
          @RequestParam(name = AnswerView.PARAMETER, required = false)
          @Nullable String view,
      HttpServletResponse response) {
    AnswerView wanted = AnswerView.of(view);
    CanonicalJson answer = record(id).account().answer();
    return EntityTags.under(response, wanted.tag(answer))
        .contentType(MediaType.APPLICATION_JSON)
        .body(wanted.bytes(answer));
  }

  @Operation(
      operationId = "getTrace",
      summary = "Explain an assessment: every card with its conditions",
      description =
          "Every card, fired or not, with the truth of each condition, the facts it read and how"
              + " far it is from flipping. Numbers in SI units, unrounded.")
  @ApiResponse(
      responseCode = "200",
      description = "The trace.",
      content = @Content(schema = @Schema(implementation = TraceDocument.class)))
  @GetMapping("/{id}/trace")
  ResponseEntity<byte[]> trace(@PathVariable UUID id, HttpServletResponse response) {
    return sent(PlainJson.canonical(details.of(record(id)).trace()), response);
  }

  @Operation(
      operationId = "getEvidence",
      summary = "Get every fact with its formula",
      description =
          "Every fact with its band, its formula, the inputs of the formula and the assumptions"
              + " made. Numbers in SI units, unrounded.")
  @ApiResponse(
      responseCode = "200",
      description = "The evidence.",
      content = @Content(schema = @Schema(implementation = EvidenceDocument.class)))
  @GetMapping("/{id}/evidence")
  ResponseEntity<byte[]> evidence(@PathVariable UUID id, HttpServletResponse response) {
    return sent(PlainJson.canonical(details.of(record(id)).evidence()), response);
  }

  private AuditRecord record(UUID id) {
    return records
        .find(id)
        .map(AssessmentsController::standing)
        .orElseThrow(() -> new NotFoundException("No assessment has the id " + id + "."));
  }

  private static AuditRecord standing(StoredRecord stored) {
    if (stored.gone()) {
      throw new Refusal(RefusalKind.GONE, RefusalKind.GONE.meaning());
    }
    return stored.record();
  }

  private static ResponseEntity<byte[]> sent(CanonicalJson json, HttpServletResponse response) {
    return EntityTags.under(response, json.sha256())
        .contentType(MediaType.APPLICATION_JSON)
        .body(json.utf8());
  }
}

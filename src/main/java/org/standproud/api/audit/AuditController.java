package org.standproud.api.audit;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.security.Principal;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.api.assessment.Filter;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.acceptance.Signature;
import org.standproud.audit.Mask;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.records.AuditProperties;
import org.standproud.audit.records.RecordExport;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.Retention;
import org.standproud.audit.records.RuleCount;
import org.standproud.audit.records.RuleUse;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.ConcurrencyLimit;
import org.standproud.refusal.TooManyExportsException;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.shop.RuleBaseHolder;

/** The records, for auditors. */
@Tag(name = "Audit", description = "The chain of records: search, export, check, retention.")
@RestController
@RequestMapping("/v1/audit")
class AuditController {

  private static final String CSV = "text/csv";

  private final Records records;
  private final Retention retention;
  private final RuleBaseHolder shelf;
  private final RequestBodies bodies;

  /** Records are long, and an export runs as long as there are records. */
  private final ConcurrencyLimit exports;

  AuditController(
      Records records,
      Retention retention,
      RuleBaseHolder shelf,
      RequestBodies bodies,
      AuditProperties properties) {
    exports = new ConcurrencyLimit(properties.mostExports(), TooManyExportsException::new);
    this.records = records;
    this.retention = retention;
    this.shelf = shelf;
    this.bodies = bodies;
  }

  /**
   * A request to remove texts from old records.
   *
   * @param before assessments before this time
   * @param mask what to remove: CALLER, CALLER_AND_JOB, or ACCOUNT (all but id, time, verdict,
   *     score, versions and findings)
   * @param by the person who orders it
   * @param reason the reason
   */
  @Schema(name = "WithholdingRequest")
  record WithholdingOrder(Instant before, Mask mask, Signature by, String reason) {}

  /**
   * The result of a removal.
   *
   * @param records number of records changed
   */
  record Withheld(long records) {}

  @Operation(
      operationId = "exportRecords",
      summary = "Export records as CSV or NDJSON",
      description =
          "Streamed, newest first: every record that matches every filter. CSV has one line a"
              + " record, NDJSON the whole record. The filters are those of the list of"
              + " assessments.")
  @ApiResponse(responseCode = "200", description = "The records.")
  @GetMapping(path = "/records", produces = CSV)
  void csv(Filter filter, HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    Filter.refuseUnheard(request.getParameterMap());
    RecordQuery query = filter.query();
    try (ConcurrencyLimit.Place place = exports.place()) {
      new RecordExport(records).csv(query, out(response, CSV));
    }
  }

  @Operation(operationId = "exportWholeRecords", summary = "Export records as NDJSON")
  @ApiResponse(responseCode = "200", description = "The records.")
  @GetMapping(path = "/records", produces = MediaType.APPLICATION_NDJSON_VALUE)
  void ndjson(Filter filter, HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    Filter.refuseUnheard(request.getParameterMap());
    RecordQuery query = filter.query();
    try (ConcurrencyLimit.Place place = exports.place()) {
      new RecordExport(records).ndjson(query, out(response, MediaType.APPLICATION_NDJSON_VALUE));
    }
  }

  @Operation(
      operationId = "exportChain",
      summary = "Export the whole chain for checking elsewhere",
      description =
          "Every record in order, every rule base that produced an answer, and a signed closing"
              + " checkpoint. It is also a backup: the command audit restore loads it.")
  @ApiResponse(responseCode = "200", description = "The chain.")
  @GetMapping(path = "/chain", produces = MediaType.APPLICATION_NDJSON_VALUE)
  void chain(HttpServletResponse response) throws IOException {
    try (ConcurrencyLimit.Place place = exports.place()) {
      records.export(out(response, MediaType.APPLICATION_NDJSON_VALUE));
    }
  }

  @Operation(operationId = "publicKey", summary = "Get the public key that verifies checkpoints")
  @ApiResponse(responseCode = "200", description = "The key in PEM.")
  @GetMapping(path = "/public-key", produces = MediaType.TEXT_PLAIN_VALUE)
  String publicKey() {
    return records.publicKey().pem();
  }

  @Operation(operationId = "verifyChain", summary = "Check the chain in the database")
  @ApiResponse(responseCode = "200", description = "The report of the check.")
  @GetMapping(path = "/verification", produces = MediaType.APPLICATION_JSON_VALUE)
  ChainReport verification() {
    try (ConcurrencyLimit.Place place = exports.place()) {
      return records.verify();
    }
  }

  @Operation(
      operationId = "useOfRules",
      summary = "Which cards fire, which never do, which are overridden",
      description = "Every card in service and every other card that fired in the period.")
  @ApiResponse(responseCode = "200", description = "By card.")
  @GetMapping(path = "/rules", produces = MediaType.APPLICATION_JSON_VALUE)
  List<RuleUse> rules(
      @RequestParam(required = false) @Nullable String from,
      @RequestParam(required = false) @Nullable String until) {
    Set<String> inService =
        shelf
            .ruleBase()
            .orElseThrow(() -> new NotReadyException("no rule base is in service"))
            .cards()
            .stream()
            .map(CompiledCard::id)
            .collect(Collectors.toSet());
    return records.useOfRules(span(from, until), inService);
  }

  @Operation(operationId = "countByRule", summary = "Count findings over time")
  @ApiResponse(responseCode = "200", description = "Counts by card, severity, kind and period.")
  @GetMapping(path = "/rules/counts", produces = MediaType.APPLICATION_JSON_VALUE)
  List<RuleCount> counts(
      @RequestParam(required = false) @Nullable String from,
      @RequestParam(required = false) @Nullable String until,
      @RequestParam(required = false) @Nullable String card,
      @RequestParam(defaultValue = "P1D") @Schema(description = "ISO 8601 duration") String span) {
    RecordQuery query = span(from, until);
    try {
      return records.countByRule(
          card == null ? query : query.with(RecordQuery.By.CARD, card), Duration.parse(span));
    } catch (DateTimeParseException | IllegalArgumentException e) {
      throw new BadParameterException("span", "must be a duration in whole seconds such as P1D");
    }
  }

  @Operation(
      operationId = "withhold",
      summary = "Remove or mask texts of old records",
      description =
          "The removal is recorded in the chain, which can still be verified: digests, seals,"
              + " verdicts and findings stay.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = WithholdingOrder.class))))
  @ApiResponse(responseCode = "200", description = "The number of records changed.")
  @PostMapping(
      path = "/withholdings",
      consumes = MediaType.APPLICATION_JSON_VALUE,
      produces = MediaType.APPLICATION_JSON_VALUE)
  Withheld withhold(HttpServletRequest request, Principal caller)
      throws IOException, InterruptedException {
    WithholdingOrder order = bodies.read(request, WithholdingOrder.class);
    RecordQuery before = RecordQuery.all().between(null, order.before());
    try {
      return new Withheld(
          retention.withhold(before, order.mask(), order.by().through(caller), order.reason()));
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("body", String.valueOf(e.getMessage()));
    }
  }

  private static RecordQuery span(@Nullable String from, @Nullable String until) {
    return RecordQuery.all().between(time("from", from), time("until", until));
  }

  private static @Nullable Instant time(String name, @Nullable String text) {
    try {
      return text == null ? null : Instant.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadParameterException(name, "must be a time such as 2026-11-25T08:00:00Z");
    }
  }

  private static Writer out(HttpServletResponse response, String type) throws IOException {
    response.setContentType(type);
    response.setCharacterEncoding(StandardCharsets.UTF_8.name());
    return new BufferedWriter(
        new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8));
  }
}

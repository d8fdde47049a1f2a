package org.standproud.api.sarif;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoredRecord;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;

/** Assessments for tools that collect SARIF results. */
@Tag(name = "Assessments")
@RestController
class SarifController {

  private static final String SARIF = "application/sarif+json";

  private final Records records;

  SarifController(Records records) {
    this.records = records;
  }

  @Operation(
      operationId = "getSarif",
      summary = "Get an assessment as SARIF 2.1.0",
      description =
          "Every card as a rule with its help, every outcome as a result with kind, level,"
              + " numbers and a fingerprint that stays the same while card and set-up do."
              + " Acceptances are suppressions, as of the time of the answer.")
  @ApiResponse(
      responseCode = "200",
      description = "A log by the schema of SARIF 2.1.0.",
      content = @Content(mediaType = SARIF, schema = @Schema(type = "object")))
  @GetMapping(path = "/v1/assessments/{id}/sarif", produces = SARIF)
  ResponseEntity<byte[]> sarif(@PathVariable UUID id) {
    AuditRecord record = standing(id);
    Map<String, Object> log = new SarifLog(record, cards(record.versions().ruleBase())).written();
    return ResponseEntity.ok()
        .contentType(MediaType.parseMediaType(SARIF))
        .body(PlainJson.canonical(log).utf8());
  }

  private AuditRecord standing(UUID id) {
    StoredRecord stored =
        records
            .find(id)
            .orElseThrow(() -> new NotFoundException("No assessment has the id " + id + "."));
    if (stored.gone()) {
      throw new ErrorResponseException(HttpStatus.GONE);
    }
    return stored.record();
  }

  private List<Card> cards(String revision) {
    Map<String, String> texts =
        records
            .ruleBases()
            .find(revision)
            .map(KeptRuleBase::cards)
            .orElseThrow(
                () ->
                    new NotFoundException(
                        "The rule base " + revision + " is not in the" + " archive."));
    return texts.entrySet().stream()
        .flatMap(text -> Stream.ofNullable(CardReader.read(text.getKey(), text.getValue()).card()))
        .toList();
  }
}

package org.standproud.api.audit;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.assessment.NotReadyException;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.records.Records;
import org.standproud.audit.replay.Comparison;
import org.standproud.audit.replay.NotReplayable;
import org.standproud.audit.replay.Replay;
import org.standproud.audit.replay.Replayer;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.engine.RuleBase;
import org.standproud.shop.RuleBaseHolder;

/** Replays of recorded answers. They store nothing. */
@Tag(name = "Audit")
@RestController
@RequestMapping(path = "/v1/assessments/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class ReplayController {

  private static final String TODAY = "today";

  private final Records records;
  private final Replayer replayer;
  private final RuleBaseHolder shelf;

  ReplayController(Records records, Replayer replayer, RuleBaseHolder shelf) {
    this.records = records;
    this.replayer = replayer;
    this.shelf = shelf;
  }

  @Operation(
      operationId = "replay",
      summary = "Replay the assessment with the revision that judged it",
      description =
          "Reads the set-up from the record, computes the evidence and judges it again. The"
              + " answer is the same byte for byte, or the report names the version that differs,"
              + " and where.")
  @ApiResponse(responseCode = "200", description = "The result of the replay.")
  @GetMapping("/replay")
  Replay replay(@PathVariable UUID id) {
    return replayer.replay(record(id));
  }

  @Operation(
      operationId = "compare",
      summary = "Judge the recorded set-up with another revision",
      description = "Which findings appear, vanish or change, and whether the verdict would.")
  @ApiResponse(responseCode = "200", description = "The differences.")
  @GetMapping("/reassessment")
  Comparison compare(@PathVariable UUID id, @RequestParam(defaultValue = TODAY) String ruleBase) {
    AuditRecord record = record(id);
    try {
      return replayer.compare(record, rules(ruleBase));
    } catch (NotReplayable e) {
      ProblemDetail problem =
          ProblemDetail.forStatusAndDetail(HttpStatus.CONFLICT, String.valueOf(e.getMessage()));
      throw new ErrorResponseException(HttpStatus.CONFLICT, problem, e);
    }
  }

  private RuleBase rules(String revision) {
    return revision.equals(TODAY)
        ? shelf.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service"))
        : replayer.rules(revision);
  }

  private AuditRecord record(UUID id) {
    return records
        .find(id)
        .orElseThrow(() -> new NotFoundException("No assessment has the id " + id + "."))
        .record();
  }
}

package org.standproud.api.rulebase;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.refusal.BadParameterException;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.shop.trial.CardTrials;
import tools.jackson.databind.json.JsonMapper;

/** Draft cards: the results of the gate, and what they would find. */
@Tag(name = "Rule base")
@RestController
@RequestMapping(path = "/v1/rule-base", produces = MediaType.APPLICATION_JSON_VALUE)
class DraftsController {

  private final RuleBasePublisher desk;
  private final CardTrials trials;
  private final Edits edits;

  DraftsController(RuleBasePublisher desk, CardTrials trials, Edits edits) {
    this.desk = desk;
    this.trials = trials;
    this.edits = edits;
  }

  /**
   * The result of the gate.
   *
   * @param passes whether they could be published
   * @param errors every error, by file, line and column
   * @param warnings what is unusual but allowed
   */
  record CardCheck(boolean passes, List<CardError> errors, List<CardWarning> warnings) {}

  @Operation(
      operationId = "checkCards",
      summary = "Check draft cards with the gate",
      description =
          "Applies the change to the cards in the store, parses, checks and compiles them, runs"
              + " their examples and measures coverage. Nothing is stored. Send JSON, or the YAML"
              + " of one card with its path as the parameter file.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(responseCode = "200", description = "Whether they pass; errors lists every problem.")
  @PostMapping(
      path = "/checks",
      consumes = {MediaType.APPLICATION_JSON_VALUE, Edits.YAML})
  CardCheck check(HttpServletRequest request) throws IOException {
    GateResult result = desk.validate(edits.read(request).edit());
    return new CardCheck(
        result instanceof GateResult.Published,
        result instanceof GateResult.Rejected rejected ? rejected.errors() : List.of(),
        result.warnings());
  }

  @Operation(
      operationId = "tryCards",
      summary = "Try draft cards on a set-up",
      description =
          "On a set-up in the request, or on the evidence of a recorded assessment, beside the"
              + " cards in service. The cards need not pass the gate, only compile.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(
      responseCode = "200",
      description = "The findings of the draft, and of the cards" + " in service.")
  @PostMapping(
      path = "/trials",
      consumes = {MediaType.APPLICATION_JSON_VALUE, Edits.YAML})
  CardTrials.TrialAnswer tryOn(HttpServletRequest request) throws IOException {
    EditBody body = edits.read(request);
    Map<String, Object> setup = body.setup();
    UUID record = body.record();
    if (setup != null) {
      return trials.onSetup(body.edit(), JsonMapper.shared().valueToTree(setup));
    } else if (record != null) {
      return trials.onRecord(body.edit(), record);
    }
    throw new BadParameterException("body", "setup or record is required");
  }
}

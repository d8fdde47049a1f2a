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

/** Cards that are being written: what the gate says of them, and what they would say. */
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
   * What the gate says of cards.
   *
   * @param passes whether they could be published
   * @param errors what is wrong, by file, line and column
   * @param warnings what is odd all the same
   */
  record CardCheck(boolean passes, List<CardError> errors, List<CardWarning> warnings) {}

  @Operation(
      operationId = "checkCards",
      summary = "What the gate says of cards",
      description =
          "The change laid over the cards in the store is read, checked, built, its examples are"
              + " run and coverage is looked at. Nothing is kept. Send JSON, or the YAML of one card"
              + " with its path as the parameter file.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(
      responseCode = "200",
      description = "Whether they pass; errors lists all that is wrong.")
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
      summary = "Try cards on a set-up",
      description =
          "On a set-up sent along, or on the numbers of an assessment on record, beside the cards in"
              + " service. The cards need not pass the gate, only be fit to be built.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(responseCode = "200", description = "What they say, and what those in service say.")
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
    throw new BadParameterException("body", "setup or record has to say what to try the cards on");
  }
}

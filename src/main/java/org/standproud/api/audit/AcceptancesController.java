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
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.assessment.acceptance.Acceptances;
import org.standproud.assessment.acceptance.ShownAcceptance;

/** Acceptances of findings. They never change a verdict. */
@Tag(name = "Decisions", description = "Who signs off a finding and runs anyway.")
@RestController
@RequestMapping(
    path = "/v1/assessments/{id}/acceptances",
    produces = MediaType.APPLICATION_JSON_VALUE)
class AcceptancesController {

  private final Acceptances acceptances;
  private final RequestBodies bodies;

  AcceptancesController(Acceptances acceptances, RequestBodies bodies) {
    this.acceptances = acceptances;
    this.bodies = bodies;
  }

  @Operation(
      operationId = "acceptFinding",
      summary = "Sign off a finding and run anyway",
      description =
          "The acceptance is added to the chain of records with name, role, reason and expiry."
              + " It is shown beside the finding, which keeps its kind and severity; the verdict"
              + " does not change. It becomes stale when it expires, or when the card's finding"
              + " for the same job order changes in severity, limit or number.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(schema = @Schema(implementation = Acceptances.AcceptanceRequest.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The acceptance is on disk.",
      content = @Content(schema = @Schema(implementation = ShownAcceptance.class)))
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<ShownAcceptance> accept(
      @PathVariable UUID id, HttpServletRequest request, Principal caller)
      throws IOException, InterruptedException {
    Acceptances.AcceptanceRequest asked = bodies.read(request, Acceptances.AcceptanceRequest.class);
    ShownAcceptance given = acceptances.accept(id, asked, caller);
    return ResponseEntity.created(URI.create("/v1/assessments/" + id + "/acceptances")).body(given);
  }

  @Operation(operationId = "listAcceptances", summary = "List the findings with their acceptances")
  @ApiResponse(
      responseCode = "200",
      description = "Every finding of the assessment with its acceptances.")
  @GetMapping
  Acceptances.Decisions decisions(@PathVariable UUID id) {
    return acceptances.decisions(id);
  }

  @Operation(
      operationId = "withdrawAcceptance",
      summary = "Withdraw an acceptance",
      description = "The acceptance stays in the chain; a second record withdraws it.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(schema = @Schema(implementation = Acceptances.WithdrawalRequest.class))))
  @ApiResponse(responseCode = "201", description = "The acceptance is withdrawn.")
  @PostMapping(path = "/{acceptance}/withdrawal", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Void> withdraw(
      @PathVariable UUID id,
      @PathVariable UUID acceptance,
      HttpServletRequest request,
      Principal caller)
      throws IOException, InterruptedException {
    Acceptances.WithdrawalRequest asked = bodies.read(request, Acceptances.WithdrawalRequest.class);
    acceptances.withdraw(id, acceptance, asked, caller);
    return ResponseEntity.created(URI.create("/v1/assessments/" + id + "/acceptances")).build();
  }
}

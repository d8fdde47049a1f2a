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
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.publishing.Proposal;
import org.standproud.rules.publishing.RevisionDiff;
import org.standproud.rules.publishing.RuleBasePublisher;

/** Proposed cards that wait for publication. */
@Tag(name = "Rule base", description = "How cards go into service.")
@RestController
@RequestMapping(path = "/v1/rule-base/proposals", produces = MediaType.APPLICATION_JSON_VALUE)
class ProposalsController {

  private final RuleBasePublisher desk;
  private final Edits edits;

  ProposalsController(RuleBasePublisher desk, Edits edits) {
    this.desk = desk;
    this.edits = edits;
  }

  /**
   * A proposal with what it changes.
   *
   * @param proposal summary of the proposal
   * @param changes the differences from the cards last published
   * @param files the text of each card file by its path
   */
  @Schema(name = "ProposedCards")
  record ProposedCards(ProposalLine proposal, RevisionDiff changes, Map<String, String> files) {}

  @Operation(
      operationId = "proposeCards",
      summary = "Propose cards",
      description =
          "They pass the gate and wait for publication: first see what they would change for"
              + " past jobs. The cards in service do not change.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(responseCode = "201", description = "The cards passed and wait for publication.")
  @PostMapping(consumes = {MediaType.APPLICATION_JSON_VALUE, Edits.YAML})
  ResponseEntity<Publication> propose(HttpServletRequest request) throws IOException {
    EditBody body = edits.read(request);
    String author = Edits.author(request, body.author());
    return Publication.answer(desk.propose(body.edit(), author, Edits.note(body.note())));
  }

  @Operation(operationId = "listProposals", summary = "List the pending proposals, oldest first")
  @ApiResponse(responseCode = "200", description = "Those neither published nor withdrawn.")
  @GetMapping
  List<ProposalLine> list() {
    return desk.proposals().stream().map(ProposalLine::of).toList();
  }

  @Operation(operationId = "getProposal", summary = "Get a proposal and its changes")
  @ApiResponse(responseCode = "200", description = "The proposal.")
  @GetMapping("/{id}")
  ProposedCards get(@PathVariable UUID id) {
    Proposal proposal = proposal(id);
    return new ProposedCards(
        ProposalLine.of(proposal), desk.diff(desk.files(), proposal.files()), proposal.files());
  }

  @Operation(operationId = "withdrawProposal", summary = "Discard a proposal")
  @ApiResponse(responseCode = "204", description = "The proposal is discarded.")
  @DeleteMapping("/{id}")
  ResponseEntity<Void> withdraw(@PathVariable UUID id) {
    desk.withdraw(proposal(id).id());
    return ResponseEntity.noContent().build();
  }

  @Operation(
      operationId = "publishProposal",
      summary = "Publish proposed cards",
      description =
          "Runs the gate again, judges past jobs again, then swaps the rule base; assessments in"
              + " progress finish on the revision they began with. With two-person approval,"
              + " someone other than the proposer must publish. Removing or weakening a stop then"
              + " also needs a note, in the proposal or here, that names each such stop and gives"
              + " a reason, and takes a second call: the first answers 409 with what changes for"
              + " past jobs.",
      requestBody =
          @RequestBody(content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(responseCode = "200", description = "They serve.")
  @PostMapping(path = "/{id}/publication", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Publication> publish(@PathVariable UUID id, HttpServletRequest request)
      throws IOException {
    EditBody body = edits.read(request);
    String publisher = Edits.author(request, body.author());
    String reason = body.note() == null ? "" : Edits.note(body.note());
    return Publication.answer(
        desk.publish(id.toString(), publisher, reason, Impact.Progress.UNWATCHED));
  }

  private Proposal proposal(UUID id) {
    return desk.proposal(id.toString())
        .orElseThrow(() -> new NotFoundException("No proposal with this id waits."));
  }
}

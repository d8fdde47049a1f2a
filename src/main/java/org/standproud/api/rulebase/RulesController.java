package org.standproud.api.rulebase;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.assessment.NotReadyException;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.publishing.CardEdit;
import org.standproud.rules.publishing.PublishResult;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.shop.RuleBaseHolder;

/** The rule cards in service, and reloading of the folder. */
@Tag(name = "Rules", description = "The shop's rule cards.")
@RestController
@RequestMapping(path = "/v1/rules", produces = MediaType.APPLICATION_JSON_VALUE)
class RulesController {

  private final RuleBaseHolder shelf;
  private final RuleBasePublisher desk;
  private final Edits edits;

  RulesController(RuleBaseHolder shelf, RuleBasePublisher desk, Edits edits) {
    this.shelf = shelf;
    this.desk = desk;
    this.edits = edits;
  }

  /**
   * The result of a reload of the folder of cards.
   *
   * @param revision the revision now in service
   * @param changed whether the revision changed
   * @param rules number of its cards
   * @param proposal the change that waits for a second person; nothing changed yet
   */
  record Reloaded(String revision, boolean changed, int rules, @Nullable ProposalLine proposal) {}

  @Operation(operationId = "listRules", summary = "Get the rule base in service")
  @ApiResponse(responseCode = "200", description = "Its revision and its cards.")
  @GetMapping
  ResponseEntity<RuleList> rules() {
    RuleBase base = inService();
    return ResponseEntity.ok().eTag('"' + base.revision().id() + '"').body(RuleList.of(base));
  }

  @Operation(
      operationId = "getRule",
      summary = "A whole card",
      description =
          "Conditions in words, limits, source and examples. A change of the card must send its"
              + " ETag.")
  @ApiResponse(responseCode = "200", description = "The card.")
  @GetMapping("/{id}")
  ResponseEntity<RuleCard> rule(@PathVariable String id) {
    RuleBase base = inService();
    CompiledCard card = card(base, id);
    String revision = base.revision().id();
    return ResponseEntity.ok()
        .eTag(CardTag.ofCard(text(card), revision))
        .body(RuleCard.of(base, card));
  }

  @Operation(operationId = "getRuleText", summary = "Get the YAML of a card")
  @ApiResponse(
      responseCode = "200",
      description = "Its text.",
      content = @Content(mediaType = Edits.YAML, schema = @Schema(type = "string")))
  @GetMapping(path = "/{id}/text", produces = Edits.YAML)
  ResponseEntity<byte[]> ruleText(@PathVariable String id) {
    String text = text(card(inService(), id));
    return ResponseEntity.ok()
        .eTag(CardTag.ofText(text))
        .contentType(MediaType.parseMediaType(Edits.YAML))
        .body(text.getBytes(StandardCharsets.UTF_8));
  }

  @Operation(
      operationId = "putRule",
      summary = "Propose a new or changed card",
      description =
          "If-Match with the ETag of the card you fetched, or If-None-Match: * with the path of"
              + " the new card in the parameter file. The card goes through the gate and waits"
              + " for publication, with everything else in service.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(mediaType = Edits.YAML, schema = @Schema(type = "string"))))
  @ApiResponse(responseCode = "201", description = "The card passed and waits for publication.")
  @PutMapping(path = "/{id}", consumes = Edits.YAML)
  ResponseEntity<Publication> put(
      @PathVariable String id,
      @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
      @RequestHeader(name = "If-None-Match", required = false) @Nullable String ifNoneMatch,
      @RequestParam(required = false) @Nullable String file,
      @RequestParam(required = false) @Nullable String author,
      @RequestParam String note,
      HttpServletRequest request)
      throws IOException {
    Latest latest = Latest.at(desk);
    String there = latest.file(id).orElse(file);
    if (there == null) {
      throw new BadParameterException(
          "file", "the path of the new card, such as holding/HOLD-900.yaml");
    }
    CardTag.require(ifMatch, ifNoneMatch, latest.files().get(there));
    CardEdit edit = new CardEdit(Map.of(there, edits.text(request)), Set.of(), latest.id());
    return proposed(edit, author, note, request);
  }

  @Operation(
      operationId = "deleteRule",
      summary = "Propose to remove a card",
      description = "If-Match with the ETag of the card you fetched. Its id is never reused.")
  @ApiResponse(responseCode = "201", description = "The removal waits for publication.")
  @DeleteMapping(path = "/{id}")
  ResponseEntity<Publication> delete(
      @PathVariable String id,
      @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
      @RequestParam(required = false) @Nullable String author,
      @RequestParam String note,
      HttpServletRequest request) {
    Latest latest = Latest.at(desk);
    String file = latest.file(id).orElseThrow(RulesController::none);
    CardTag.require(ifMatch, null, latest.files().get(file));
    return proposed(new CardEdit(Map.of(), Set.of(file), latest.id()), author, note, request);
  }

  private ResponseEntity<Publication> proposed(
      CardEdit edit, @Nullable String author, String note, HttpServletRequest request) {
    return Publication.answer(desk.propose(edit, Edits.author(request, author), Edits.note(note)));
  }

  private String text(CompiledCard card) {
    return desk.files(inService().revision().id())
        .map(files -> files.get(card.card().file()))
        .orElseThrow(RulesController::none);
  }

  private static CompiledCard card(RuleBase base, String id) {
    return base.cards().stream()
        .filter(card -> card.id().equals(id))
        .findFirst()
        .orElseThrow(RulesController::none);
  }

  private static NotFoundException none() {
    return new NotFoundException("No card in service has this id.");
  }

  @Operation(
      operationId = "reloadRules",
      summary = "Reload the folder of cards",
      description =
          "Takes the edited folder through the gate: parse, check, run every example. If one"
              + " card is refused, all are, with every error by file, line and column, and the"
              + " revision in service stays. Assessments in progress finish on the revision they"
              + " began with.")
  @ApiResponse(responseCode = "200", description = "The cards passed and are in service.")
  @PostMapping("/reload")
  Reloaded reload() {
    String before = shelf.ruleBase().map(b -> b.revision().id()).orElse("");
    PublishResult answer = shelf.load();
    ProposalLine waits = Publication.of(answer).proposal();
    RuleBase now = inService();
    String revision = now.revision().id();
    return new Reloaded(revision, !revision.equals(before), now.cards().size(), waits);
  }

  private RuleBase inService() {
    return shelf.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service"));
  }
}

package org.standproud.api.rulebase;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.publishing.RevisionDiff;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.rules.publishing.StoredRevision;

/** The history of published revisions. */
@Tag(name = "Rule base")
@RestController
@RequestMapping(path = "/v1/rule-base/revisions", produces = MediaType.APPLICATION_JSON_VALUE)
class RevisionsController {

  private final RuleBasePublisher desk;
  private final Edits edits;

  RevisionsController(RuleBasePublisher desk, Edits edits) {
    this.desk = desk;
    this.edits = edits;
  }

  /**
   * A revision with its cards.
   *
   * @param revision summary of the revision
   * @param files the text of each card file by its path
   */
  @Schema(name = "RevisionCards")
  record RevisionCards(RevisionLine revision, Map<String, String> files) {}

  @Operation(operationId = "listRevisions", summary = "List every revision, newest first")
  @ApiResponse(responseCode = "200", description = "Who published what, when and why.")
  @GetMapping
  List<RevisionLine> list() {
    List<RevisionLine> lines =
        new ArrayList<>(desk.revisions().stream().map(RevisionLine::of).toList());
    Collections.reverse(lines);
    return lines;
  }

  @Operation(operationId = "getRevision", summary = "Get a revision with the texts of its cards")
  @ApiResponse(responseCode = "200", description = "The revision.")
  @GetMapping("/{id}")
  ResponseEntity<RevisionCards> get(@PathVariable String id) {
    StoredRevision revision = revision(id);
    return ResponseEntity.ok()
        .eTag('"' + id + '"')
        .body(
            new RevisionCards(
                RevisionLine.of(revision), desk.files(id).orElseThrow(RevisionsController::none)));
  }

  @Operation(
      operationId = "getRevisionChanges",
      summary = "Compare with another revision",
      description = "Card by card and part by part; layout and comments do not count.")
  @ApiResponse(responseCode = "200", description = "What was added, removed and changed.")
  @GetMapping("/{id}/changes")
  RevisionDiff changes(
      @PathVariable String id,
      @RequestParam(required = false)
          @Nullable
          @Schema(description = "the other revision; by default the one before")
          String from) {
    String before = from == null ? revision(id).revision().parent() : from;
    if (before == null) {
      return desk.diff(Map.of(), desk.files(id).orElseThrow(RevisionsController::none));
    }
    return desk.diff(before, id).orElseThrow(RevisionsController::none);
  }

  @Operation(
      operationId = "rollBack",
      summary = "Restore an old revision",
      description =
          "Publishes its cards as a new revision, through the same gate and, with two-person"
              + " approval, after approval.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(responseCode = "200", description = "They serve.")
  @PostMapping(path = "/{id}/rollback", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Publication> rollBack(@PathVariable String id, HttpServletRequest request)
      throws IOException {
    EditBody body = edits.read(request);
    String author = Edits.author(request, body.author());
    return Publication.answer(
        desk.rollBack(id, author, Edits.note(body.note()), Impact.Progress.UNWATCHED));
  }

  private StoredRevision revision(String id) {
    return desk.revisions().stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow(RevisionsController::none);
  }

  private static NotFoundException none() {
    return new NotFoundException("There is no such revision.");
  }
}

package org.standproud.api.rulebase;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
import org.standproud.shop.impact.ImpactJob;
import org.standproud.shop.impact.ImpactJobs;
import tools.jackson.databind.json.JsonMapper;

/** The impact of a change of cards on past jobs. */
@Tag(name = "Rule base")
@RestController
@RequestMapping("/v1/rule-base/impacts")
class ImpactsController {

  /** Longest pause between lines, so that no proxy takes the connection for dead. */
  private static final long MOST_SECONDS_BETWEEN_LINES = 5;

  private final ImpactJobs jobs;
  private final Edits edits;
  private final JsonMapper json;

  ImpactsController(ImpactJobs jobs, Edits edits, JsonMapper json) {
    this.jobs = jobs;
    this.edits = edits;
    this.json = json;
  }

  @Operation(
      operationId = "startImpact",
      summary = "Judge past jobs again with a change of cards",
      description =
          "The cards must pass the gate. The work runs in the background: fetch it for its"
              + " progress, stream its progress, or delete it to cancel it.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = EditBody.class))))
  @ApiResponse(responseCode = "202", description = "The work has begun.")
  @PostMapping(
      consumes = {MediaType.APPLICATION_JSON_VALUE, Edits.YAML},
      produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<ImpactJob.Account> start(HttpServletRequest request) throws IOException {
    EditBody body = edits.read(request);
    ImpactJob job = jobs.start(body.edit(), Edits.author(request, body.author()));
    return ResponseEntity.accepted()
        .location(URI.create("/v1/rule-base/impacts/" + job.id()))
        .body(job.account());
  }

  @Operation(operationId = "listImpacts", summary = "List recent work, oldest first")
  @ApiResponse(responseCode = "200", description = "The progress of each.")
  @GetMapping(produces = MediaType.APPLICATION_JSON_VALUE)
  List<ImpactJob.Account> list() {
    return jobs.all().stream().map(ImpactJob::account).toList();
  }

  @Operation(operationId = "getImpact", summary = "Get progress and report")
  @ApiResponse(
      responseCode = "200",
      description = "The progress; with the report once it has" + " ended.")
  @GetMapping(path = "/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
  ImpactJob.Account get(@PathVariable UUID id) {
    return job(id).account();
  }

  @Operation(
      operationId = "watchImpact",
      summary = "Stream the progress",
      description = "NDJSON, one line whenever it advances; the last line has the report.")
  @ApiResponse(responseCode = "200", description = "One line whenever it advances.")
  @GetMapping(path = "/{id}/progress", produces = MediaType.APPLICATION_NDJSON_VALUE)
  void watch(@PathVariable UUID id, HttpServletResponse response)
      throws IOException, InterruptedException {
    ImpactJob job = job(id);
    response.setContentType(MediaType.APPLICATION_NDJSON_VALUE);
    OutputStream out = response.getOutputStream();
    ImpactJob.Account seen = job.account();
    line(seen, out);
    while (!seen.ended()) {
      seen = job.next(seen, MOST_SECONDS_BETWEEN_LINES);
      line(seen, out);
    }
  }

  private void line(ImpactJob.Account account, OutputStream out) throws IOException {
    out.write((json.writeValueAsString(account) + "\n").getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  @Operation(operationId = "cancelImpact", summary = "Cancel the work")
  @ApiResponse(responseCode = "200", description = "The progress when it was cancelled.")
  @DeleteMapping(path = "/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
  ImpactJob.Account cancel(@PathVariable UUID id) {
    ImpactJob job = job(id);
    job.cancel();
    return job.account();
  }

  private ImpactJob job(UUID id) {
    return jobs.find(id)
        .orElseThrow(() -> new NotFoundException("There is no such work, or no longer."));
  }
}

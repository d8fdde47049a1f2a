package org.standproud.api.batch;

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
import java.nio.charset.StandardCharsets;
import java.security.Principal;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.assessment.batch.Batch;
import org.standproud.assessment.batch.ColumnMap;
import org.standproud.assessment.batch.Entry;
import org.standproud.assessment.batch.LineResult;
import org.standproud.assessment.batch.NdjsonEntries;
import org.standproud.assessment.batch.OrderedParallelism;
import org.standproud.assessment.batch.TableEntries;
import org.standproud.refusal.ConcurrencyLimit;
import tools.jackson.databind.json.JsonMapper;

/** Batches of set-ups, as lines from a shop system or as a table. */
@Tag(name = "Assessments")
@RestController
@RequestMapping("/v1/assessments/batch")
class BatchController {

  private static final Logger LOG = LoggerFactory.getLogger(BatchController.class);
  private static final String CSV = "text/csv";
  private static final String NDJSON = MediaType.APPLICATION_NDJSON_VALUE;

  private final Batch batch;
  private final RequestBodies bodies;
  private final JsonMapper json;

  BatchController(Batch batch, RequestBodies bodies, JsonMapper json) {
    this.batch = batch;
    this.bodies = bodies;
    this.json = json;
  }

  @Operation(
      operationId = "assessBatch",
      summary = "Check many set-ups, one a line",
      description =
          "Streamed both ways, in order: one line of the answer for every line that is not"
              + " blank, with the status that a single request would get. A line is a set-up, or"
              + " an object with setup and idempotencyKey. Read the answers while you send: the"
              + " service stops reading when they are not taken. Every answer sent is on disk, so"
              + " after a broken connection send only the rest again, or with keys, all of it.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(
                      mediaType = NDJSON,
                      schema = @Schema(type = "string", format = "binary"))))
  @ApiResponse(
      responseCode = "200",
      description = "One line for every line. 200 only means that the batch was read.",
      content = @Content(mediaType = NDJSON, schema = @Schema(implementation = LineResult.class)))
  @PostMapping(consumes = NDJSON, produces = NDJSON)
  void ndjson(HttpServletRequest request, HttpServletResponse response, Principal caller)
      throws IOException, InterruptedException {
    try (ConcurrencyLimit.Place place = batch.place()) {
      NdjsonEntries lines = new NdjsonEntries(request.getInputStream(), bodies.limitBytes());
      judge(lines, caller, response, asNdjson(response));
    }
  }

  @Operation(
      operationId = "assessTable",
      summary = "Check a table of set-ups, one a row",
      description =
          "The table is CSV (RFC 4180) with a heading row. The map names the field and unit of"
              + " each column, and what all rows have in common. An empty cell is a field left"
              + " out. A column that is neither mapped nor ignored is refused, so no column is"
              + " dropped silently. Answered like a batch; line counts rows after the heading.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(mediaType = CSV, schema = @Schema(type = "string", format = "binary"))))
  @ApiResponse(
      responseCode = "200",
      description = "One line for every row. 200 only means that the table was read.",
      content = @Content(mediaType = NDJSON, schema = @Schema(implementation = LineResult.class)))
  @PostMapping(consumes = CSV, produces = NDJSON)
  void table(
      @RequestParam
          @Schema(
              description =
                  "JSON with columns (heading to JSON Pointer, or to field and unit), common"
                      + " (what every row has in common, as in a set-up), ignore (headings), key"
                      + " (heading of the idempotency key) and separator",
              example =
                  "{\"columns\":{\"Job\":\"/job/jobOrder\",\"Height\":{\"field\":\"/stock/height\","
                      + "\"unit\":\"in\"}}}")
          String map,
      HttpServletRequest request,
      HttpServletResponse response,
      Principal caller)
      throws IOException, InterruptedException {
    try (ConcurrencyLimit.Place place = batch.place()) {
      TableEntries rows = TableEntries.open(request.getInputStream(), ColumnMap.read(map));
      judge(rows, caller, response, asNdjson(response));
    }
  }

  @Operation(
      operationId = "assessTableToTable",
      summary = "Check a table of set-ups and return a table",
      description =
          "As above, but answered as CSV. No cell begins like a formula: one that would is"
              + " prefixed with an apostrophe.")
  @ApiResponse(responseCode = "200", description = "One row for every row.")
  @PostMapping(consumes = CSV, produces = CSV)
  void tableToTable(
      @RequestParam String map,
      HttpServletRequest request,
      HttpServletResponse response,
      Principal caller)
      throws IOException, InterruptedException {
    try (ConcurrencyLimit.Place place = batch.place()) {
      TableEntries rows = TableEntries.open(request.getInputStream(), ColumnMap.read(map));
      response.setContentType(CSV);
      response.setCharacterEncoding(StandardCharsets.UTF_8.name());
      try (TableAnswers out = new TableAnswers(response.getWriter())) {
        judge(rows, caller, response, out);
      }
    }
  }

  private void judge(
      OrderedParallelism.Source<Entry> source,
      Principal caller,
      HttpServletResponse response,
      OrderedParallelism.Sink<LineResult> sink)
      throws IOException, InterruptedException {
    try {
      batch.judge(source, caller.getName(), sink);
    } catch (IOException e) {
      if (!response.isCommitted()) {
        throw e;
      }
      LOG.info("The client of a batch disconnected: {}", e.toString());
    }
  }

  private OrderedParallelism.Sink<LineResult> asNdjson(HttpServletResponse response)
      throws IOException {
    response.setContentType(NDJSON);
    OutputStream out = response.getOutputStream();
    return (answer, last) -> {
      out.write(json.writeValueAsBytes(answer));
      out.write('\n');
      if (last) {
        out.flush();
      }
    };
  }
}

package org.standproud.api.access;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.access.journal.AccessEntry;
import org.standproud.access.journal.AccessJournal;
import org.standproud.access.journal.JournalQuery;
import org.standproud.refusal.BadParameterException;

/** The access journal, for auditors. */
@Tag(name = "Access")
@RestController
@RequestMapping(path = "/v1/audit/access", produces = MediaType.APPLICATION_JSON_VALUE)
class JournalController {

  private static final int LARGEST_PAGE = 500;

  private final AccessJournal journal;

  JournalController(AccessJournal journal) {
    this.journal = journal;
  }

  /**
   * A page of the access journal, newest first.
   *
   * @param entries the entries
   * @param next cursor for the next page; absent on the last page
   */
  @Schema(name = "AccessJournal")
  record Page(List<AccessEntry> entries, @Nullable UUID next) {}

  @Operation(
      operationId = "accessJournal",
      summary = "List denied calls and key changes",
      description =
          "Newest first. Equal denied calls within a few seconds are counted in one entry. The"
              + " address is the row of the access table that it matches.")
  @ApiResponse(responseCode = "200", description = "The entries that match every filter.")
  @GetMapping
  Page entries(
      @RequestParam(required = false) AccessEntry.@Nullable Kind kind,
      @RequestParam(required = false) @Nullable String caller,
      @RequestParam(required = false) @Nullable Integer status,
      @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE_TIME)
          @Nullable Instant from,
      @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE_TIME)
          @Nullable Instant until,
      @RequestParam(defaultValue = "50") int limit,
      @RequestParam(required = false) @Nullable UUID cursor) {
    if (limit < 1 || limit > LARGEST_PAGE) {
      throw new BadParameterException("limit", "must be 1 to " + LARGEST_PAGE);
    }
    journal.writeDenied();
    List<AccessEntry> found =
        journal.list(new JournalQuery(kind, caller, status, from, until, cursor), limit + 1);
    boolean more = found.size() > limit;
    List<AccessEntry> page = more ? found.subList(0, limit) : found;
    return new Page(page, more ? page.get(limit - 1).id() : null);
  }
}

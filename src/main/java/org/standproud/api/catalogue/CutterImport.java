package org.standproud.api.catalogue;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.assessment.MalformedRequestException;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.CatalogueShelf;
import org.standproud.setup.request.Problem;
import org.standproud.setup.request.RequestText;
import org.standproud.shop.CatalogueSnapshot;
import org.standproud.shop.CatalogueStore;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Imports many cutters at once: all of them become one revision of the catalogue, or none does. */
@Tag(name = "Catalogue")
@RestController
@RequestMapping(path = "/v1/catalogue/imports/cutters", produces = MediaType.APPLICATION_JSON_VALUE)
class CutterImport {

  private static final String CSV = "text/csv";
  private static final int LARGEST_BYTES = 2 * 1024 * 1024;
  private static final CatalogueShelf SHELF = CatalogueShelf.CUTTERS;

  private final CatalogueStore store;
  private final RequestBodies bodies;

  CutterImport(CatalogueStore store, RequestBodies bodies) {
    this.store = store;
    this.bodies = bodies;
  }

  /**
   * The result for a row.
   *
   * @param row its number, from 1; headings do not count
   * @param name the name of the cutter; absent if the row has none
   * @param status new, changed, unchanged or refused
   * @param errors errors in the row; may be empty
   */
  @Schema(name = "ImportedRow")
  record Row(
      int row,
      @Nullable String name,
      String status,
      @ArraySchema(schema = @Schema(ref = "#/components/schemas/SetupError"))
          List<Problem> errors) {}

  /**
   * The result of an import.
   *
   * @param revision the revision of the catalogue afterwards
   * @param rows the result for each row
   */
  @Schema(name = "Import")
  record Imported(String revision, List<Row> rows) {}

  @Operation(
      operationId = "importCutters",
      summary = "Import cutters from a table or a list",
      description =
          "Columns of CSV, and keys of JSON, are symbols of ISO 13399 (DC, ZEFP, APMX, LPR,"
              + " KAPR, RE, FHA, BS) or names of fields. A heading may name a unit in brackets,"
              + " such as DC [mm]; other numbers are in the units of the file. All rows are"
              + " imported as one revision, or none is; the answer has a result for each row.",
      requestBody =
          @RequestBody(
              required = true,
              content = {
                @Content(mediaType = CSV, schema = @Schema(type = "string")),
                @Content(
                    mediaType = MediaType.APPLICATION_JSON_VALUE,
                    schema = @Schema(type = "object"))
              }))
  @ApiResponse(responseCode = "200", description = "All rows are imported, or would be.")
  @PostMapping(consumes = {CSV, MediaType.APPLICATION_JSON_VALUE})
  Imported importCutters(
      @RequestParam(defaultValue = "metric") @Schema(description = "units of plain numbers")
          UnitSystem units,
      @RequestParam(defaultValue = "false")
          @Schema(description = "whether existing cutters may be changed")
          boolean replace,
      @RequestParam(defaultValue = "false") @Schema(description = "only report what would change")
          boolean dryRun,
      @RequestParam(defaultValue = "") @Schema(description = "reason, for the history") String note,
      HttpServletRequest request,
      Principal author)
      throws IOException {
    List<ObjectNode> items = rows(request);
    items.forEach(row -> row.put(CatalogueShelf.UNITS, units.words()));
    List<Row> rows = new ArrayList<>();
    CatalogueSnapshot after =
        store.change(
            now -> {
              List<CatalogueSnapshot.Change> changes = plan(items, replace, now, rows);
              return dryRun ? List.of() : changes;
            },
            author.getName(),
            CatalogueEdits.note(note));
    return new Imported(after.catalogue().revision(), rows);
  }

  private List<ObjectNode> rows(HttpServletRequest request) throws IOException {
    String text = bodies.text(request, LARGEST_BYTES);
    if (MediaType.parseMediaType(request.getContentType())
        .isCompatibleWith(MediaType.valueOf(CSV))) {
      return CutterRows.ofTable(text);
    }
    try {
      JsonNode body = RequestText.json(text);
      return CutterRows.ofList(body.path(SHELF.words()));
    } catch (RequestText.Malformed e) {
      throw new MalformedRequestException(e);
    }
  }

  private static List<CatalogueSnapshot.Change> plan(
      List<ObjectNode> items, boolean replace, CatalogueSnapshot now, List<Row> rows) {
    List<CatalogueSnapshot.Change> changes = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (ObjectNode item : items) {
      String name = item.path("name").asString(null);
      List<Problem> problems = new ArrayList<>(SHELF.problems(item));
      if (name != null && !names.add(name)) {
        problems.add(atName(name, "another row has this name"));
      }
      CatalogueSnapshot.Item there = name == null ? null : now.item(SHELF, name);
      CanonicalJson text = problems.isEmpty() ? canonical(item, problems) : null;
      boolean same = there != null && there.content().equals(text);
      if (there != null && !same && !replace) {
        problems.add(atName(there.revision(), "a cutter of this name exists; replace is false"));
      }
      rows.add(new Row(rows.size() + 1, name, status(problems, there, same), problems));
      if (problems.isEmpty() && !same && name != null) {
        changes.add(new CatalogueSnapshot.Change(SHELF, name, text));
      }
    }
    refuse(rows);
    return changes;
  }

  private static @Nullable CanonicalJson canonical(ObjectNode item, List<Problem> problems) {
    try {
      return CanonicalJson.of(item);
    } catch (NotCanonical e) {
      problems.add(atName("", "cannot be stored unchanged: " + e.getMessage()));
      return null;
    }
  }

  private static Problem atName(String value, String message) {
    return new Problem("/name", value, message, null, null, null);
  }

  private static String status(
      List<Problem> problems, CatalogueSnapshot.@Nullable Item there, boolean same) {
    if (!problems.isEmpty()) {
      return "refused";
    }
    return there == null ? "new" : same ? "unchanged" : "changed";
  }

  private static void refuse(List<Row> rows) {
    long refused = rows.stream().filter(row -> !row.errors().isEmpty()).count();
    if (refused > 0) {
      throw new Refusal(
          RefusalKind.IMPORT_REFUSED,
          refused + " of " + rows.size() + " rows are refused",
          Map.of("rows", rows));
    }
    if (rows.isEmpty()) {
      throw new Refusal(
          RefusalKind.IMPORT_REFUSED, "There are no rows.", Map.of("rows", List.of()));
    }
  }
}

package org.standproud.api.catalogue;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.NotFoundException;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.CatalogueShelf;
import org.standproud.shop.CatalogueRevision;
import org.standproud.shop.CatalogueSnapshot;
import org.standproud.shop.CatalogueStore;
import tools.jackson.databind.node.ObjectNode;

/** The shop's machines, vises, cutters and materials, which a request can name. */
@Tag(
    name = "Catalogue",
    description = "Machines, vises, cutters and materials that a request" + " can name.")
@RestController
@RequestMapping(path = "/v1/catalogue", produces = MediaType.APPLICATION_JSON_VALUE)
class CatalogueController {

  private static final int MOST_REVISIONS = 200;

  private final CatalogueStore store;

  CatalogueController(CatalogueStore store) {
    this.store = store;
  }

  /**
   * The names in the catalogue.
   *
   * @param revision SHA-256 of its content; catalogues with the same revision hold the same numbers
   * @param shelves the names on each shelf
   */
  record CatalogueContents(String revision, Map<String, List<String>> shelves) {}

  /**
   * A revision of an item.
   *
   * @param revision SHA-256 of the item in canonical JSON (RFC 8785); absent if it was removed
   * @param time time of the change
   * @param author author of the change
   * @param note why
   * @param catalogue the revision of the catalogue after the change
   * @param item the item, with the units of its plain numbers; absent if it was removed
   */
  @Schema(name = "ItemRevision")
  record ItemRevision(
      @Nullable String revision,
      Instant time,
      String author,
      String note,
      String catalogue,
      @Schema(type = "object") @Nullable Object item) {

    static ItemRevision of(CatalogueRevision revision) {
      CatalogueRevision.Changed item = revision.changed().get(0);
      return new ItemRevision(
          item.revision(),
          revision.time(),
          revision.author(),
          revision.note(),
          revision.revision(),
          item.content() == null ? null : item.content().tree());
    }
  }

  @Operation(operationId = "getCatalogue", summary = "List the names on each shelf")
  @ApiResponse(responseCode = "200", description = "The names on each shelf.")
  @GetMapping
  ResponseEntity<CatalogueContents> contents() {
    CatalogueSnapshot now = store.now();
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (CatalogueShelf shelf : CatalogueShelf.values()) {
      names.put(
          shelf.words(), List.copyOf(shelf.items(now.catalogue(), UnitSystem.METRIC).keySet()));
    }
    String revision = now.catalogue().revision();
    return ResponseEntity.ok().eTag(revision).body(new CatalogueContents(revision, names));
  }

  @Operation(
      operationId = "listCatalogueRevisions",
      summary = "List the revisions of the catalogue",
      description = "Newest first: who changed what, when and why.")
  @ApiResponse(responseCode = "200", description = "Its revisions.")
  @GetMapping("/revisions")
  List<CatalogueRevision> revisions(
      @RequestParam(required = false)
          @Schema(description = "only those with this content hash, as in an answer")
          @Nullable String revision,
      @RequestParam(required = false)
          @Schema(description = "only those before this sequence" + " number")
          @Nullable Long before,
      @RequestParam(defaultValue = "50") @Schema(description = "most revisions; at most 200")
          int limit) {
    if (limit < 1 || limit > MOST_REVISIONS) {
      throw new BadParameterException("limit", "must be 1 to " + MOST_REVISIONS);
    }
    return store.revisions(revision, before == null ? Long.MAX_VALUE : before, limit);
  }

  @Operation(operationId = "getShelf", summary = "Get every item of a shelf")
  @ApiResponse(responseCode = "200", description = "The items, by name.")
  @GetMapping("/{shelf}")
  List<ObjectNode> items(
      @PathVariable CatalogueShelf shelf, @RequestParam(defaultValue = "metric") UnitSystem units) {
    return List.copyOf(shelf.items(store.now().catalogue(), units).values());
  }

  @Operation(
      operationId = "getItem",
      summary = "One item",
      description = "Send its ETag as If-Match to change it.")
  @ApiResponse(responseCode = "200", description = "The item in the form a request uses.")
  @GetMapping("/{shelf}/{name}")
  ResponseEntity<ObjectNode> item(
      @PathVariable CatalogueShelf shelf,
      @PathVariable String name,
      @RequestParam(defaultValue = "metric") UnitSystem units) {
    CatalogueSnapshot.Item item = store.now().item(shelf, name);
    if (item == null) {
      throw new NotFoundException("This shelf has no item of this name.");
    }
    return ResponseEntity.ok()
        .eTag(Expected.tag(item))
        .body(shelf.written(item.content().tree(), units));
  }

  @Operation(
      operationId = "getItemHistory",
      summary = "List the revisions of an item",
      description = "Newest first; a removal is a revision too.")
  @ApiResponse(responseCode = "200", description = "Its revisions, with the item as of each.")
  @GetMapping("/{shelf}/{name}/history")
  List<ItemRevision> history(@PathVariable CatalogueShelf shelf, @PathVariable String name) {
    List<ItemRevision> all = store.history(shelf, name).stream().map(ItemRevision::of).toList();
    if (all.isEmpty()) {
      throw new NotFoundException("This shelf never had an item of this name.");
    }
    return all;
  }
}

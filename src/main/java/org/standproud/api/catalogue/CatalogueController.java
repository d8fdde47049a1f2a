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

/** The shop's machines, vises, cutters and materials, which a request may name. */
@Tag(name = "Catalogue", description = "What a request may name.")
@RestController
@RequestMapping(path = "/v1/catalogue", produces = MediaType.APPLICATION_JSON_VALUE)
class CatalogueController {

  private static final int MOST_REVISIONS = 200;

  private final CatalogueStore store;

  CatalogueController(CatalogueStore store) {
    this.store = store;
  }

  /**
   * The catalogue in short.
   *
   * @param revision SHA-256 of its content
   * @param shelves the names on each shelf
   */
  record Contents(String revision, Map<String, List<String>> shelves) {}

  /**
   * A revision of an item.
   *
   * @param revision SHA-256 of the item as it was told; null if it was taken away
   * @param time when it was told
   * @param author who told it
   * @param note why
   * @param catalogue the revision of the catalogue that it first stood in
   * @param told the item as it was told; null if it was taken away
   */
  @Schema(name = "ItemRevision")
  record Past(
      @Nullable String revision,
      Instant time,
      String author,
      String note,
      String catalogue,
      @Schema(type = "object") @Nullable Object told) {

    static Past of(CatalogueRevision revision) {
      CatalogueRevision.Changed item = revision.changed().get(0);
      return new Past(
          item.revision(),
          revision.time(),
          revision.author(),
          revision.note(),
          revision.revision(),
          item.told() == null ? null : item.told().tree());
    }
  }

  @Operation(operationId = "getCatalogue", summary = "What is on the shelves, by name")
  @ApiResponse(responseCode = "200", description = "The names on each shelf.")
  @GetMapping
  ResponseEntity<Contents> contents() {
    CatalogueSnapshot now = store.now();
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (CatalogueShelf shelf : CatalogueShelf.values()) {
      names.put(
          shelf.words(), List.copyOf(shelf.items(now.catalogue(), UnitSystem.METRIC).keySet()));
    }
    String revision = now.catalogue().revision();
    return ResponseEntity.ok().eTag(revision).body(new Contents(revision, names));
  }

  @Operation(
      operationId = "listCatalogueRevisions",
      summary = "How the catalogue changed",
      description = "Newest first: who changed what, when and why.")
  @ApiResponse(responseCode = "200", description = "Its revisions.")
  @GetMapping("/revisions")
  List<CatalogueRevision> revisions(
      @RequestParam(required = false)
          @Schema(description = "only those with this content, as an answer names it")
          @Nullable String revision,
      @RequestParam(required = false) @Schema(description = "only those before this place")
          @Nullable Long before,
      @RequestParam(defaultValue = "50") @Schema(description = "most revisions, up to 200")
          int limit) {
    if (limit < 1 || limit > MOST_REVISIONS) {
      throw new BadParameterException("limit", "it is 1 to " + MOST_REVISIONS);
    }
    return store.revisions(revision, before == null ? Long.MAX_VALUE : before, limit);
  }

  @Operation(operationId = "getShelf", summary = "Everything on a shelf")
  @ApiResponse(responseCode = "200", description = "The items, by name.")
  @GetMapping("/{shelf}")
  List<ObjectNode> items(
      @PathVariable CatalogueShelf shelf, @RequestParam(defaultValue = "metric") UnitSystem units) {
    return List.copyOf(shelf.items(store.now().catalogue(), units).values());
  }

  @Operation(
      operationId = "getItem",
      summary = "One item",
      description = "The ETag is its revision, to be sent back as If-Match when it is changed.")
  @ApiResponse(responseCode = "200", description = "The item as a request would describe it.")
  @GetMapping("/{shelf}/{name}")
  ResponseEntity<ObjectNode> item(
      @PathVariable CatalogueShelf shelf,
      @PathVariable String name,
      @RequestParam(defaultValue = "metric") UnitSystem units) {
    CatalogueSnapshot.Item item = store.now().item(shelf, name);
    if (item == null) {
      throw new NotFoundException("Nothing on this shelf has this name.");
    }
    return ResponseEntity.ok()
        .eTag(Expected.tag(item))
        .body(shelf.written(item.told().tree(), units));
  }

  @Operation(
      operationId = "getItemHistory",
      summary = "Every revision of an item",
      description = "Newest first; that it was taken away is a revision too.")
  @ApiResponse(responseCode = "200", description = "Its revisions, each as it was told.")
  @GetMapping("/{shelf}/{name}/history")
  List<Past> history(@PathVariable CatalogueShelf shelf, @PathVariable String name) {
    List<Past> all = store.history(shelf, name).stream().map(Past::of).toList();
    if (all.isEmpty()) {
      throw new NotFoundException("Nothing of this name was ever on this shelf.");
    }
    return all;
  }
}

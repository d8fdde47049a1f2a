package org.standproud.api.catalogue;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.assessing.NotReady;
import org.standproud.api.problem.NotThere;
import org.standproud.api.shop.ShopCatalogue;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.node.ObjectNode;

/** What the shop has on its shelves, each item as a request would describe it in full. */
@Tag(name = "Catalogue", description = "Machines, vises, cutters and materials of the shop.")
@RestController
@RequestMapping(path = "/v1/catalogue", produces = MediaType.APPLICATION_JSON_VALUE)
class CatalogueController {

  private final ShopCatalogue shop;

  CatalogueController(ShopCatalogue shop) {
    this.shop = shop;
  }

  /**
   * The catalogue in short.
   *
   * @param revision SHA-256 of its content
   * @param shelves the names on each shelf
   */
  record Contents(String revision, Map<String, List<String>> shelves) {}

  @Operation(operationId = "getCatalogue", summary = "What is on the shelves, by name")
  @ApiResponse(responseCode = "200", description = "The names on each shelf.")
  @GetMapping
  Contents contents() {
    Catalogue catalogue = catalogue();
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (Shelf shelf : Shelf.values()) {
      names.put(shelf.words(), List.copyOf(shelf.items(catalogue, UnitSystem.METRIC).keySet()));
    }
    return new Contents(catalogue.revision(), names);
  }

  @Operation(operationId = "getShelf", summary = "Everything on a shelf")
  @ApiResponse(responseCode = "200", description = "The items, by name.")
  @GetMapping("/{shelf}")
  List<ObjectNode> items(
      @PathVariable Shelf shelf, @RequestParam(defaultValue = "metric") UnitSystem units) {
    return List.copyOf(shelf.items(catalogue(), units).values());
  }

  @Operation(operationId = "getItem", summary = "One item")
  @ApiResponse(responseCode = "200", description = "The item as a request would describe it.")
  @GetMapping("/{shelf}/{name}")
  ObjectNode item(
      @PathVariable Shelf shelf,
      @PathVariable String name,
      @RequestParam(defaultValue = "metric") UnitSystem units) {
    ObjectNode item = shelf.items(catalogue(), units).get(name);
    if (item == null) {
      throw new NotThere("Nothing on this shelf has this name.");
    }
    return item;
  }

  private Catalogue catalogue() {
    return shop.get().orElseThrow(() -> new NotReady(shop.fault()));
  }
}

package org.standproud.api.catalogue;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.enums.ParameterIn;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.assessment.MalformedRequestException;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.refusal.BadParameterException;
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

/** Changes of single catalogue items, each with author and reason. */
@Tag(name = "Catalogue")
@RestController
@RequestMapping(path = "/v1/catalogue", produces = MediaType.APPLICATION_JSON_VALUE)
class CatalogueEdits {

  private static final String NAME = "name";

  private final CatalogueStore store;
  private final RequestBodies bodies;

  CatalogueEdits(CatalogueStore store, RequestBodies bodies) {
    this.store = store;
    this.bodies = bodies;
  }

  @Operation(
      operationId = "putItem",
      summary = "Add or replace an item",
      description =
          "The body is the item in the form that getItem returns and a request uses; the name in"
              + " the address counts. Send If-Match with the ETag you fetched to replace an item,"
              + " or If-None-Match: * to add one. The next assessment names the new revision of"
              + " the catalogue.",
      parameters = {
        @Parameter(
            in = ParameterIn.HEADER,
            name = "If-Match",
            description = "the ETag of the item to replace",
            schema = @Schema(type = "string")),
        @Parameter(
            in = ParameterIn.HEADER,
            name = "If-None-Match",
            description = "an asterisk, to add a new item",
            schema = @Schema(type = "string"))
      })
  @ApiResponse(responseCode = "200", description = "The item after the change.")
  @ApiResponse(responseCode = "201", description = "The new item.")
  @PutMapping(path = "/{shelf}/{name}", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<ObjectNode> put(
      @PathVariable CatalogueShelf shelf,
      @PathVariable String name,
      @RequestParam(defaultValue = "metric") UnitSystem units,
      @RequestParam(defaultValue = "") @Schema(description = "reason, for the history") String note,
      @Parameter(hidden = true) @RequestHeader HttpHeaders headers,
      HttpServletRequest request,
      Principal author)
      throws IOException {
    Expected expected = Expected.of(headers);
    CanonicalJson sent = itemOf(shelf, name, units, bodies.text(request));
    boolean[] fresh = new boolean[1];
    CatalogueSnapshot after =
        store.change(
            now -> {
              CatalogueSnapshot.Item there = now.item(shelf, name);
              expected.check(there);
              fresh[0] = there == null;
              return there != null && there.content().equals(sent)
                  ? List.of()
                  : List.of(new CatalogueSnapshot.Change(shelf, name, sent));
            },
            author.getName(),
            note(note));
    CatalogueSnapshot.Item item = after.item(shelf, name);
    return ResponseEntity.status(fresh[0] ? HttpStatus.CREATED : HttpStatus.OK)
        .eTag(new CatalogueSnapshot.Item(sent).revision())
        .body(shelf.written(item == null ? sent.tree() : item.content().tree(), units));
  }

  @Operation(
      operationId = "removeItem",
      summary = "Remove an item",
      description = "Its history stays; requests can no longer name it.",
      parameters =
          @Parameter(
              in = ParameterIn.HEADER,
              name = "If-Match",
              description = "the ETag of the item",
              schema = @Schema(type = "string")))
  @ApiResponse(responseCode = "204", description = "The item is removed.")
  @DeleteMapping("/{shelf}/{name}")
  ResponseEntity<Void> remove(
      @PathVariable CatalogueShelf shelf,
      @PathVariable String name,
      @RequestParam(defaultValue = "") @Schema(description = "reason, for the history") String note,
      @Parameter(hidden = true) @RequestHeader HttpHeaders headers,
      Principal author) {
    Expected expected = Expected.of(headers);
    store.change(
        now -> {
          expected.check(now.item(shelf, name));
          return List.of(new CatalogueSnapshot.Change(shelf, name, null));
        },
        author.getName(),
        note(note));
    return ResponseEntity.noContent().build();
  }

  private static CanonicalJson itemOf(
      CatalogueShelf shelf, String name, UnitSystem units, String body) {
    JsonNode item = parsed(body);
    if (item instanceof ObjectNode object) {
      if (!object.has(NAME)) {
        object.put(NAME, name);
      } else if (!name.equals(object.path(NAME).asString(null))) {
        refuse(
            List.of(
                new Problem(
                    "/" + NAME,
                    object.path(NAME).toString(),
                    "the address names another item",
                    name,
                    null,
                    null)));
      }
      refuseUnits(object);
      object.put(CatalogueShelf.UNITS, units.words());
    }
    refuse(shelf.problems(item));
    return CanonicalJson.of(item);
  }

  private static void refuseUnits(ObjectNode item) {
    if (item.has(CatalogueShelf.UNITS)) {
      refuse(
          List.of(
              new Problem(
                  "/" + CatalogueShelf.UNITS,
                  item.path(CatalogueShelf.UNITS).toString(),
                  "the units of plain numbers are a parameter of the address",
                  "?units=metric or ?units=inch",
                  null,
                  null)));
    }
  }

  private static JsonNode parsed(String body) {
    try {
      return RequestText.json(body);
    } catch (RequestText.Malformed e) {
      throw new MalformedRequestException(e);
    }
  }

  private static void refuse(List<Problem> problems) {
    if (!problems.isEmpty()) {
      throw new Refusal(
          RefusalKind.ITEM_REFUSED,
          problems.size() + " errors in the item",
          Map.of("errors", problems));
    }
  }

  /** A note of valid length. */
  static String note(String note) {
    if (note.length() > CatalogueStore.LONGEST_NOTE
        || note.chars()
            .anyMatch(c -> Character.isISOControl(c) || Character.isSurrogate((char) c))) {
      throw new BadParameterException(
          "note", "must be one line of at most " + CatalogueStore.LONGEST_NOTE + " characters");
    }
    return note;
  }
}

package org.standproud.api.access;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.security.Principal;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.access.Role;
import org.standproud.access.keys.ApiKey;
import org.standproud.access.keys.KeyRing;
import org.standproud.api.RequestBodies;
import org.standproud.refusal.BadParameterException;

/** Keys over REST, for operators. */
@Tag(name = "Access", description = "Keys that callers show.")
@RestController
@RequestMapping(path = "/v1/access/keys", produces = MediaType.APPLICATION_JSON_VALUE)
class KeysController {

  private final KeyRing keys;
  private final RequestBodies bodies;

  KeysController(KeyRing keys, RequestBodies bodies) {
    this.keys = keys;
    this.bodies = bodies;
  }

  /**
   * A key that is asked for.
   *
   * @param caller who is to show it, as records name him
   * @param roles what he is trusted with, in words
   * @param expires when it expires, at most 366 days ahead
   */
  @Schema(name = "KeyRequest")
  record Wanted(String caller, List<String> roles, Instant expires) {}

  /**
   * A key that is to replace another.
   *
   * @param expires when the new one expires, at most 366 days ahead
   * @param overlap how long the old one still serves, ISO 8601, at most 30 days
   */
  @Schema(name = "RotationRequest")
  record Rotation(Instant expires, String overlap) {}

  /**
   * A key that was just made.
   *
   * @param key the key as it is kept
   * @param text what its holder sends; shown this once
   */
  @Schema(name = "IssuedKey")
  record Issued(ApiKey key, String text) {

    /** Answers are logged by what they say of themselves. */
    @Override
    public String toString() {
      return key.toString();
    }

    static ResponseEntity<Issued> told(KeyRing.Issued issued) {
      return ResponseEntity.created(URI.create("/v1/access/keys/" + issued.key().id()))
          .body(new Issued(issued.key(), issued.text().text()));
    }
  }

  @Operation(operationId = "listKeys", summary = "Every key there ever was, without its secret")
  @ApiResponse(responseCode = "200", description = "The keys, oldest first.")
  @GetMapping
  List<ApiKey> list() {
    return keys.all();
  }

  @Operation(
      operationId = "makeKey",
      summary = "Make a key",
      description =
          "The text of the key is in this answer and nowhere else: what is kept is its SHA-256.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Wanted.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The key.",
      content = @Content(schema = @Schema(implementation = Issued.class)))
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Issued> make(HttpServletRequest request, Principal by) throws IOException {
    Wanted wanted = bodies.read(request, Wanted.class);
    Set<Role> roles = wanted.roles().stream().map(KeysController::role).collect(Collectors.toSet());
    return Issued.told(
        heard(() -> keys.make(wanted.caller(), roles, wanted.expires(), by.getName())));
  }

  @Operation(
      operationId = "rotateKey",
      summary = "Make a key to replace another",
      description =
          "Of the same caller, with the same roles. Both serve until the overlap is over; no more"
              + " than two do.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Rotation.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The new key.",
      content = @Content(schema = @Schema(implementation = Issued.class)))
  @PostMapping(path = "/{id}/rotation", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Issued> rotate(@PathVariable String id, HttpServletRequest request, Principal by)
      throws IOException {
    Rotation wanted = bodies.read(request, Rotation.class);
    Duration overlap = overlap(wanted.overlap());
    return Issued.told(heard(() -> keys.rotate(id, overlap, wanted.expires(), by.getName())));
  }

  @Operation(
      operationId = "revokeKey",
      summary = "Take a key back",
      description = "It opens nothing from now on, at every replica; sessions made with it end.")
  @ApiResponse(responseCode = "204", description = "It is taken back.")
  @DeleteMapping("/{id}")
  ResponseEntity<Void> revoke(@PathVariable String id, Principal by) {
    keys.revoke(id, by.getName());
    return ResponseEntity.noContent().build();
  }

  private static Role role(String word) {
    return Role.of(word)
        .orElseThrow(
            () ->
                new BadParameterException(
                    "roles",
                    Arrays.stream(Role.values())
                        .map(Role::words)
                        .collect(Collectors.joining(", ", "each is one of: ", ""))));
  }

  private static Duration overlap(String text) {
    try {
      return Duration.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadParameterException("overlap", "a duration such as P7D is wanted");
    }
  }

  private static <T> T heard(Supplier<T> work) {
    try {
      return work.get();
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("body", String.valueOf(e.getMessage()));
    }
  }
}

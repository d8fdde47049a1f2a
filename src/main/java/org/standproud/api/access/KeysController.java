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

/** API keys over REST, for operators. */
@Tag(name = "Access", description = "API keys.")
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
   * A request for a key.
   *
   * @param caller name of the caller, as records will show it: up to 100 letters, digits, spaces
   *     and . _ &#64; / -.
   * @param roles roles of the caller, at least one of: caller, rule editor, rule publisher,
   *     auditor, operator
   * @param expires expiry, at most 366 days ahead
   */
  @Schema(name = "KeyRequest")
  record KeyRequest(String caller, List<String> roles, Instant expires) {}

  /**
   * A request to rotate a key.
   *
   * @param expires expiry of the new key, at most 366 days ahead
   * @param overlap how long the old key stays valid, ISO 8601 such as P7D, at most 30 days
   */
  @Schema(name = "RotationRequest")
  record RotationRequest(Instant expires, String overlap) {}

  /**
   * A new key.
   *
   * @param key the key as stored
   * @param text the bearer token, for Authorization: Bearer &lt;text&gt;; returned only once
   */
  @Schema(name = "IssuedKey")
  record Issued(ApiKey key, String text) {

    /** Answers are logged by toString, which leaves the secret out. */
    @Override
    public String toString() {
      return key.toString();
    }

    static ResponseEntity<Issued> created(KeyRing.Issued issued) {
      return ResponseEntity.created(URI.create("/v1/access/keys/" + issued.key().id()))
          .body(new Issued(issued.key(), issued.text().text()));
    }
  }

  @Operation(operationId = "listKeys", summary = "List all keys, without their secrets")
  @ApiResponse(responseCode = "200", description = "The keys, oldest first.")
  @GetMapping
  List<ApiKey> list() {
    return keys.all();
  }

  @Operation(
      operationId = "makeKey",
      summary = "Make a key",
      description =
          "Only this answer contains the text of the key; the service stores its SHA-256.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = KeyRequest.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The key.",
      content = @Content(schema = @Schema(implementation = Issued.class)))
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Issued> make(HttpServletRequest request, Principal by) throws IOException {
    KeyRequest requested = bodies.read(request, KeyRequest.class);
    Set<Role> roles =
        requested.roles().stream().map(KeysController::role).collect(Collectors.toSet());
    return Issued.created(
        refusing(() -> keys.make(requested.caller(), roles, requested.expires(), by.getName())));
  }

  @Operation(
      operationId = "rotateKey",
      summary = "Rotate a key",
      description =
          "Same caller, same roles. Both keys are valid until the overlap ends; a caller has at"
              + " most two.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = RotationRequest.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The new key.",
      content = @Content(schema = @Schema(implementation = Issued.class)))
  @PostMapping(path = "/{id}/rotation", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Issued> rotate(@PathVariable String id, HttpServletRequest request, Principal by)
      throws IOException {
    RotationRequest requested = bodies.read(request, RotationRequest.class);
    Duration overlap = overlap(requested.overlap());
    return Issued.created(
        refusing(() -> keys.rotate(id, overlap, requested.expires(), by.getName())));
  }

  @Operation(
      operationId = "revokeKey",
      summary = "Revoke a key",
      description = "The key is refused from now on, at every replica; its sessions end.")
  @ApiResponse(responseCode = "204", description = "The key is revoked.")
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
                        .collect(Collectors.joining(", ", "each must be one of: ", ""))));
  }

  private static Duration overlap(String text) {
    try {
      return Duration.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadParameterException("overlap", "must be a duration such as P7D");
    }
  }

  private static <T> T refusing(Supplier<T> work) {
    try {
      return work.get();
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("body", String.valueOf(e.getMessage()));
    }
  }
}

package org.standproud.api.rulebase;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.standproud.access.Caller;
import org.standproud.api.RequestBodies;
import org.standproud.refusal.BadParameterException;
import org.standproud.shop.RulesProperties;

/**
 * Reads changes of cards: JSON with any number of files, or the YAML of one card with its path in
 * the parameter {@code file}.
 */
@Component
class Edits {

  static final String YAML = "application/yaml";

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_NOTE = 1_000;

  private final RequestBodies bodies;
  private final int limitBytes;

  Edits(RequestBodies bodies, RulesProperties properties) {
    this.bodies = bodies;
    this.limitBytes = Math.toIntExact(properties.largestEdit().toBytes());
  }

  EditBody read(HttpServletRequest request) throws IOException {
    String text = bodies.text(request, limitBytes);
    return MediaType.parseMediaType(request.getContentType()).isCompatibleWith(yaml())
        ? ofCard(text, request)
        : RequestBodies.readWithGaps(text.isBlank() ? "{}" : text, EditBody.class);
  }

  String text(HttpServletRequest request) throws IOException {
    return bodies.text(request, limitBytes);
  }

  private static MediaType yaml() {
    return MediaType.parseMediaType(YAML);
  }

  private static EditBody ofCard(String text, HttpServletRequest request) {
    String file = request.getParameter("file");
    if (file == null) {
      throw new BadParameterException(
          "file", "the path of the card, such as holding/HOLD-001.yaml");
    }
    return new EditBody(
        Map.of(file, text),
        request.getParameter("onto"),
        request.getParameter("author"),
        request.getParameter("note"),
        null,
        record(request.getParameter("record")));
  }

  private static @Nullable UUID record(@Nullable String text) {
    try {
      return text == null ? null : UUID.fromString(text);
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("record", "must be the id of an assessment");
    }
  }

  /** The author: the caller if known, else the name in the request. */
  static String author(HttpServletRequest request, @Nullable String named) {
    Principal caller = request.getUserPrincipal();
    boolean known = caller != null && !caller.getName().equals(Caller.ANONYMOUS.name());
    return bounded("author", known ? caller.getName() : named, LONGEST_NAME);
  }

  static String note(@Nullable String note) {
    return bounded("note", note, LONGEST_NOTE);
  }

  private static String bounded(String name, @Nullable String text, int longest) {
    if (text == null || text.isBlank() || text.length() > longest) {
      throw new BadParameterException(name, "must have 1 to " + longest + " characters");
    }
    return text.strip();
  }
}

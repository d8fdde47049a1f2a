package org.standproud;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The schema of a request in the committed contract. */
public final class RequestContract {

  private static final JsonNode CONTRACT = contract();

  private RequestContract() {}

  private static JsonNode contract() {
    try {
      return new YAMLMapper().readTree(Files.readString(Path.of("api-docs/openapi.yaml")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Whether a JSON Pointer (RFC 6901) leads to a field that a request may have.
   *
   * @param pointer the pointer
   */
  public static boolean has(String pointer) {
    return pointer.startsWith("/")
        && has(CONTRACT.at("/components/schemas/Setup"), pointer.substring(1).split("/", -1), 0);
  }

  private static boolean has(JsonNode schema, String[] names, int at) {
    if (at == names.length) {
      return !schema.isMissingNode();
    }
    JsonNode ref = schema.path("$ref");
    if (ref.isString()) {
      return has(CONTRACT.at(ref.stringValue().substring(1)), names, at);
    }
    for (String choices : new String[] {"oneOf", "anyOf", "allOf"}) {
      for (JsonNode choice : schema.path(choices)) {
        if (has(choice, names, at)) {
          return true;
        }
      }
    }
    return has(schema.path("properties").path(names[at]), names, at + 1);
  }
}

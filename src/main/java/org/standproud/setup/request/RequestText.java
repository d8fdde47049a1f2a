package org.standproud.setup.request;

import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Text to tree, within bounds, refusing doubled keys and anything after the end. */
public final class RequestText {

  private static final StreamReadConstraints BOUNDS =
      StreamReadConstraints.builder()
          .maxNestingDepth(32)
          .maxNumberLength(64)
          .maxStringLength(10_000)
          .maxNameLength(200)
          .maxDocumentLength(4_000_000)
          .build();

  private static final JsonMapper JSON =
      JsonMapper.builder(JsonFactory.builder().streamReadConstraints(BOUNDS).build())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final YAMLMapper YAML =
      YAMLMapper.builder(YAMLFactory.builder().streamReadConstraints(BOUNDS).build())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private RequestText() {}

  /** Text that is not well formed. */
  public static final class Malformed extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    Malformed(JacksonException cause) {
      super(message(cause), cause);
      TokenStreamLocation at = cause.getLocation();
      line = at == null ? -1 : at.getLineNr();
      column = at == null ? -1 : at.getColumnNr();
    }

    /** Line where reading stopped, from 1; negative if not known. */
    public int line() {
      return line;
    }

    /** Column where reading stopped, from 1; negative if not known. */
    public int column() {
      return column;
    }

    private static String message(JacksonException cause) {
      TokenStreamLocation at = cause.getLocation();
      String where =
          at == null || at.getLineNr() < 0
              ? ""
              : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
      return MessageText.shortened(cause.getOriginalMessage()) + where;
    }
  }

  /**
   * The tree of a JSON text.
   *
   * @param text one JSON value
   * @throws Malformed if the text is not JSON, repeats a key or is out of bounds
   */
  public static JsonNode json(String text) throws Malformed {
    try {
      return JSON.readTree(text);
    } catch (JacksonException e) {
      throw new Malformed(e);
    }
  }

  static JsonNode yaml(String text) throws Malformed {
    try {
      return YAML.readTree(text);
    } catch (JacksonException e) {
      throw new Malformed(e);
    }
  }
}

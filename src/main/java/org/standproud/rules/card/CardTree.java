package org.standproud.rules.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Parses the YAML of one card into texts, lists and maps with their positions. Every value is text:
 * the file chooses no types. Anchors, aliases, tags, repeated keys, further documents and anything
 * over {@link CardLimits} are refused.
 */
final class CardTree {

  /** A node of the tree. */
  sealed interface Node {
    int line();

    int column();
  }

  /** A text. */
  record Text(Written written) implements Node {
    @Override
    public int line() {
      return written.line();
    }

    @Override
    public int column() {
      return written.column();
    }
  }

  /** A list. */
  record Sequence(List<Node> items, int line, int column) implements Node {}

  /** A map, with the position of each key. */
  record Mapping(Map<String, Node> entries, Map<String, Written> keys, int line, int column)
      implements Node {}

  /** The file cannot be parsed. */
  static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient CardError error;

    Unreadable(CardError error) {
      super(error.message());
      this.error = error;
    }

    CardError error() {
      return error;
    }
  }

  private static final YAMLFactory YAML =
      YAMLFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(CardLimits.MAX_DEPTH + 2)
                  .maxStringLength(CardLimits.MAX_CARD_LENGTH)
                  .maxNameLength(CardLimits.MAX_CARD_LENGTH)
                  .maxNumberLength(CardLimits.MAX_CARD_LENGTH)
                  .build())
          .build();

  private final String file;
  private final String yaml;

  /** The characters by the indices that the parser reports. */
  private final int[] characters;

  private int values;

  private CardTree(String file, String yaml) {
    this.file = file;
    this.yaml = yaml;
    this.characters = yaml.codePoints().limit(CardLimits.MAX_CARD_LENGTH).toArray();
  }

  static Mapping read(String file, String yaml) throws Unreadable {
    return new CardTree(file, yaml).document();
  }

  private Mapping document() throws Unreadable {
    if (yaml.length() > CardLimits.MAX_CARD_LENGTH) {
      throw bad(1, 1, "", "the card is longer than " + CardLimits.MAX_CARD_LENGTH + " characters");
    }
    try (JsonParser parser = YAML.createParser(ObjectReadContext.empty(), yaml)) {
      JsonToken first = parser.nextToken();
      Node node = first == null ? null : node((YAMLParser) parser, 1);
      if (!(node instanceof Mapping mapping)) {
        throw bad(1, 1, "", "a card is a map that begins with id:");
      }
      if (parser.nextToken() != null) {
        throw bad(parser, "one file holds one card");
      }
      return mapping;
    } catch (JacksonException e) {
      TokenStreamLocation at = e.getLocation();
      throw bad(
          at == null ? 1 : Math.max(1, at.getLineNr()),
          at == null ? 1 : Math.max(1, at.getColumnNr()),
          "",
          "this is not YAML: " + firstLine(e.getOriginalMessage()));
    } catch (RuntimeException e) {
      throw bad(1, 1, "", "this is not YAML");
    }
  }

  private static String firstLine(@Nullable String message) {
    String text = message == null ? "" : message.strip();
    String[] lines = text.split("\\R");
    // The parser's message starts with the context and puts the problem after the excerpt of the
    // file.
    for (String line : lines) {
      if (line.startsWith("found ") || line.startsWith("expected ") || line.startsWith("but ")) {
        return line;
      }
    }
    return lines[0].length() > 120 ? lines[0].substring(0, 120) : lines[0];
  }

  private Node node(YAMLParser parser, int depth) throws Unreadable {
    JsonToken token = parser.currentToken();
    if (depth > CardLimits.MAX_DEPTH) {
      throw bad(parser, "nested deeper than " + CardLimits.MAX_DEPTH + " levels");
    }
    if (++values > CardLimits.MAX_VALUES) {
      throw bad(parser, "more than " + CardLimits.MAX_VALUES + " values");
    }
    if (parser.isCurrentAlias() || parser.getObjectId() != null || firstChar(parser) == '&') {
      throw bad(parser, "anchors and aliases are not allowed");
    }
    if (parser.getTypeId() != null) {
      throw bad(parser, "tags are not allowed");
    }
    if (token == JsonToken.START_OBJECT) {
      return mapping(parser, depth);
    } else if (token == JsonToken.START_ARRAY) {
      return sequence(parser, depth);
    }
    return new Text(written(parser));
  }

  private Mapping mapping(YAMLParser parser, int depth) throws Unreadable {
    TokenStreamLocation start = parser.currentTokenLocation();
    Map<String, Node> entries = new LinkedHashMap<>();
    Map<String, Written> keys = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      Written key = written(parser);
      if (key.text().length() > CardLimits.MAX_NAME_LENGTH) {
        throw bad(parser, "a name is longer than " + CardLimits.MAX_NAME_LENGTH + " characters");
      }
      if (keys.put(key.text(), key) != null) {
        throw bad(key.line(), key.column(), key.text(), "written twice");
      }
      parser.nextToken();
      entries.put(key.text(), node(parser, depth + 1));
    }
    return new Mapping(entries, keys, start.getLineNr(), start.getColumnNr());
  }

  private Sequence sequence(YAMLParser parser, int depth) throws Unreadable {
    TokenStreamLocation start = parser.currentTokenLocation();
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(node(parser, depth + 1));
    }
    return new Sequence(items, start.getLineNr(), start.getColumnNr());
  }

  private Written written(YAMLParser parser) throws Unreadable {
    TokenStreamLocation at = parser.currentTokenLocation();
    String text = parser.getString();
    if (text == null) {
      throw bad(parser, "unexpected end");
    }
    if (text.length() > CardLimits.MAX_TEXT_LENGTH) {
      throw bad(parser, "a text is longer than " + CardLimits.MAX_TEXT_LENGTH + " characters");
    }
    int first = firstChar(parser);
    boolean quoted = first == '"' || first == '\'';
    return new Written(text, at.getLineNr(), at.getColumnNr() + (quoted ? 1 : 0));
  }

  /** Index of the first character of a value; the parser hides quotes and anchors. */
  private int firstChar(YAMLParser parser) {
    long at = parser.currentTokenLocation().getCharOffset();
    return at < 0 || at >= characters.length ? ' ' : characters[(int) at];
  }

  private Unreadable bad(YAMLParser parser, String message) {
    TokenStreamLocation at = parser.currentTokenLocation();
    String text = parser.getString();
    String fragment = text == null || text.length() > 40 ? "" : text;
    return bad(at.getLineNr(), at.getColumnNr(), fragment, message);
  }

  private Unreadable bad(JsonParser parser, String message) {
    TokenStreamLocation at = parser.currentTokenLocation();
    return bad(at.getLineNr(), at.getColumnNr(), "", message);
  }

  private Unreadable bad(int line, int column, String fragment, String message) {
    return new Unreadable(
        new CardError(file, Math.max(1, line), Math.max(1, column), fragment, message, null, null));
  }
}

package org.standproud.audit.canonical;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.StringNode;

/**
 * JSON text in the canonical form of RFC 8785: no white space, members sorted by UTF-16 code unit,
 * numbers and strings written as ECMAScript writes them. Two values that mean the same have the
 * same text, so texts can be hashed, and an answer can be compared byte for byte with its replay.
 *
 * <p>What the form cannot hold unchanged is refused rather than rounded: an integer that a double
 * does not represent, a number that is not finite, half of a surrogate pair.
 */
public final class CanonicalJson {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private final String text;

  /** A record of some hundred kilobytes is asked for its digest several times on its way. */
  private @Nullable String digest;

  /**
   * A text that is canonical already.
   *
   * @param text the canonical text
   */
  @JsonCreator(mode = JsonCreator.Mode.DISABLED) // A string read as JSON is a value, not a text.
  public CanonicalJson(String text) {
    this.text = Objects.requireNonNull(text, "text");
  }

  /** The canonical text. */
  public String text() {
    return text;
  }

  /**
   * Canonical form of a tree.
   *
   * @param tree any JSON value
   * @return its canonical text
   * @throws NotCanonical when the form cannot hold the tree unchanged
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static CanonicalJson of(JsonNode tree) {
    return told(out -> new CanonicalWriter(out).value(tree));
  }

  /**
   * Canonical form of one value as it is told, members already in the order of RFC 8785 section
   * 3.2.3: no tree is made, which is most of the cost of a large value.
   *
   * @param teller writes the value
   * @return its canonical text
   * @throws NotCanonical when a member is out of order, or the form cannot hold the value unchanged
   */
  public static CanonicalJson told(Consumer<JsonGenerator> teller) {
    StringWriter text = new StringWriter(8_192);
    try (JsonGenerator out = new CanonicalGenerator(text)) {
      teller.accept(out);
    }
    String canonical = text.toString();
    // UTF-8 has no bytes for half of a pair.
    if (holdsHalfAPair(canonical)) {
      throw new NotCanonical("a text holds half of a surrogate pair");
    }
    return new CanonicalJson(canonical);
  }

  /**
   * Reads any JSON text and brings it to canonical form.
   *
   * @param json JSON text, white space and member order free
   * @return its canonical form
   * @throws NotCanonical when the text is not JSON, repeats a member name, or cannot be held
   */
  public static CanonicalJson parse(String json) {
    try {
      return of(MAPPER.readTree(json));
    } catch (JacksonException e) {
      throw new NotCanonical("not JSON: " + e.getOriginalMessage());
    }
  }

  /**
   * An object made of members that are canonical already.
   *
   * @param members value by member name
   * @return the object, canonical
   */
  public static CanonicalJson object(Map<String, CanonicalJson> members) {
    return new CanonicalJson(
        new TreeMap<>(members)
            .entrySet().stream()
                .map(m -> of(StringNode.valueOf(m.getKey())).text() + ":" + m.getValue().text())
                .collect(Collectors.joining(",", "{", "}")));
  }

  /**
   * The value as a tree.
   *
   * @return a fresh tree
   * @throws NotCanonical when the text is not JSON
   */
  @JsonValue
  public JsonNode tree() {
    try {
      return MAPPER.readTree(text);
    } catch (JacksonException e) {
      throw new NotCanonical("not JSON: " + e.getOriginalMessage());
    }
  }

  /**
   * The text as it is hashed.
   *
   * @return UTF-8 bytes
   */
  public byte[] utf8() {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /**
   * What stands for the text where the text itself is not at hand.
   *
   * @return SHA-256 (FIPS 180-4) of {@link #utf8()}, 64 hexadecimal digits
   */
  public String sha256() {
    String known = digest;
    if (known == null) {
      known = digested();
      digest = known; // A thread that does not see it yet finds the same.
    }
    return known;
  }

  private String digested() {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(utf8()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }

  private static boolean holdsHalfAPair(String text) {
    for (int i = 0; i < text.length(); i++) {
      char unit = text.charAt(i);
      if (Character.isSurrogate(unit)) {
        boolean pair =
            Character.isHighSurrogate(unit)
                && i + 1 < text.length()
                && Character.isLowSurrogate(text.charAt(i + 1));
        if (!pair) {
          return true;
        }
        i++;
      }
    }
    return false;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CanonicalJson json && text.equals(json.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}

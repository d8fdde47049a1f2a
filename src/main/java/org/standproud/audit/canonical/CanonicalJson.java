package org.standproud.audit.canonical;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
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
 *
 * @param text the canonical text
 */
public record CanonicalJson(String text) {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /**
   * Canonical form of a tree.
   *
   * @param tree any JSON value
   * @return its canonical text
   * @throws NotCanonical when the form cannot hold the tree unchanged
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static CanonicalJson of(JsonNode tree) {
    String canonical = CanonicalWriter.text(tree);
    // UTF-8 has no bytes for half of a pair.
    if (!canonical.equals(
        new String(canonical.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8))) {
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
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(utf8()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}

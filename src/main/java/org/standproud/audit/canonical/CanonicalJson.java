package org.standproud.audit.canonical;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.util.ByteArrayBuilder;
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

  /** One of both is known; the other is made of it when asked for. */
  private @Nullable String text;

  private final byte @Nullable [] utf8;

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
    utf8 = null;
  }

  private CanonicalJson(byte[] utf8) {
    this.utf8 = utf8;
  }

  /** The canonical text. */
  public String text() {
    String known = text;
    if (known == null) {
      known = new String(bytes(), StandardCharsets.UTF_8);
      text = known; // A thread that does not see it yet makes the same.
    }
    return known;
  }

  private byte[] bytes() {
    return utf8 != null ? utf8 : text().getBytes(StandardCharsets.UTF_8);
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
    return written(out -> new CanonicalWriter(out).value(tree));
  }

  /**
   * Canonical form of a value written with its members already in the order of RFC 8785 section
   * 3.2.3: without a tree, which is most of the cost of a large value.
   *
   * @param writer writes the value
   * @return its canonical text
   * @throws NotCanonical when a member is out of order, or the form cannot hold the value unchanged
   */
  public static CanonicalJson written(Consumer<JsonGenerator> writer) {
    // In segments, because a text of a hundred kilobytes would be copied at every growth.
    ByteArrayBuilder utf8 = new ByteArrayBuilder();
    try (JsonGenerator out = new CanonicalGenerator(utf8)) {
      writer.accept(out);
    }
    CanonicalJson json = new CanonicalJson(utf8.toByteArray());
    if (holdsHalfAPair(json.bytes())) {
      throw new NotCanonical("a text holds half of a surrogate pair");
    }
    return json;
  }

  /**
   * UTF-8 has no bytes for half of a pair, so the writer escapes it; of what the form escapes, only
   * characters under 20 are written by their number.
   */
  private static boolean holdsHalfAPair(byte[] utf8) {
    // One character a byte, because a search in a text is many times as quick as one by byte.
    String bytes = new String(utf8, StandardCharsets.ISO_8859_1);
    for (int at = bytes.indexOf('\\'); at >= 0; at = bytes.indexOf('\\', at + 2)) {
      if (bytes.charAt(at + 1) == 'u' && bytes.charAt(at + 2) != '0') {
        return true;
      }
    }
    return false;
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
    List<byte[]> parts = new ArrayList<>();
    for (Map.Entry<String, CanonicalJson> member : new TreeMap<>(members).entrySet()) {
      parts.add(of(StringNode.valueOf(member.getKey())).bytes());
      parts.add(member.getValue().bytes());
    }
    int separators = Math.max(parts.size(), 1); // One after each part; the last is the end.
    int bytes = 1 + separators + parts.stream().mapToInt(part -> part.length).sum();
    ByteBuffer utf8 = ByteBuffer.allocate(bytes).put((byte) '{');
    for (int i = 0; i < parts.size(); i++) {
      utf8.put(parts.get(i)).put((byte) (i % 2 == 0 ? ':' : ','));
    }
    utf8.put(bytes - 1, (byte) '}');
    return new CanonicalJson(utf8.array());
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
      return utf8 != null ? MAPPER.readTree(utf8) : MAPPER.readTree(text());
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
    return bytes().clone();
  }

  /**
   * Writes the text as it is hashed.
   *
   * @param out gets UTF-8 bytes
   * @throws IOException if it takes none
   */
  public void writeTo(OutputStream out) throws IOException {
    out.write(bytes());
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
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CanonicalJson json && text().equals(json.text());
  }

  @Override
  public int hashCode() {
    return text().hashCode();
  }

  @Override
  public String toString() {
    return text();
  }
}

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
 * numbers and strings as in ECMAScript. Equal values have equal texts, so texts can be hashed, and
 * an answer can be compared byte for byte with its replay.
 *
 * <p>What the form cannot represent exactly is refused, not rounded: an integer that is not a
 * double, a number that is not finite, an unpaired surrogate.
 */
public final class CanonicalJson {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /** At least one of text and tree is set; the other is computed on demand. */
  private @Nullable String text;

  private final byte @Nullable [] utf8;

  /** Cached, because the digest of a record of some hundred kilobytes is needed several times. */
  private @Nullable String digest;

  /**
   * Wraps text that is canonical already.
   *
   * @param text the canonical text
   */
  @JsonCreator(
      mode = JsonCreator.Mode.DISABLED) // A string parsed as JSON would be a value, not a text.
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
      text = known; // A thread that does not see it yet computes the same.
    }
    return known;
  }

  private byte[] bytes() {
    return utf8 != null ? utf8 : text().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Converts a tree to canonical form.
   *
   * @param tree any JSON value
   * @return its canonical text
   * @throws NotCanonical if the form cannot represent the tree exactly
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static CanonicalJson of(JsonNode tree) {
    return written(out -> new CanonicalWriter(out).value(tree));
  }

  /**
   * Canonical form of a value whose members are written in the order of RFC 8785 section 3.2.3:
   * without a tree, which is most of the cost of a large value.
   *
   * @param writer writes the value
   * @return its canonical text
   * @throws NotCanonical if a member is out of order, or the form cannot represent the value
   *     exactly
   */
  public static CanonicalJson written(Consumer<JsonGenerator> writer) {
    // In segments: a growing array would copy a text of a hundred kilobytes again and again.
    ByteArrayBuilder utf8 = new ByteArrayBuilder();
    try (JsonGenerator out = new CanonicalGenerator(utf8)) {
      writer.accept(out);
    }
    CanonicalJson json = new CanonicalJson(utf8.toByteArray());
    if (holdsHalfAPair(json.bytes())) {
      throw new NotCanonical("a text contains an unpaired surrogate");
    }
    return json;
  }

  /**
   * UTF-8 cannot encode an unpaired surrogate, so the writer escapes it; canonical form itself
   * escapes only characters below 20 hexadecimal by number.
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
   * Parses any JSON text and converts it to canonical form.
   *
   * @param json JSON text, in any white space and member order
   * @return its canonical form
   * @throws NotCanonical if the text is not JSON, repeats a member name, or cannot be represented
   */
  public static CanonicalJson parse(String json) {
    try {
      return of(MAPPER.readTree(json));
    } catch (JacksonException e) {
      throw new NotCanonical("not JSON: " + e.getOriginalMessage());
    }
  }

  /**
   * Builds an object from canonical members.
   *
   * @param members values by member name
   * @return the object, canonical
   */
  public static CanonicalJson object(Map<String, CanonicalJson> members) {
    List<byte[]> parts = new ArrayList<>();
    for (Map.Entry<String, CanonicalJson> member : new TreeMap<>(members).entrySet()) {
      parts.add(of(StringNode.valueOf(member.getKey())).bytes());
      parts.add(member.getValue().bytes());
    }
    int separators = Math.max(parts.size(), 1); // A separator after each part; the last is the end.
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
   * @throws NotCanonical if the text is not JSON
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
   * The bytes that are hashed.
   *
   * @return UTF-8 bytes
   */
  public byte[] utf8() {
    return bytes().clone();
  }

  /**
   * Writes the bytes that are hashed.
   *
   * @param out receives UTF-8 bytes
   * @throws IOException if writing fails
   */
  public void writeTo(OutputStream out) throws IOException {
    out.write(bytes());
  }

  /**
   * The digest that identifies the text.
   *
   * @return SHA-256 (FIPS 180-4) of {@link #utf8()}, 64 hexadecimal digits
   */
  public String sha256() {
    String known = digest;
    if (known == null) {
      known = digested();
      digest = known; // A thread that does not see it yet computes the same.
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

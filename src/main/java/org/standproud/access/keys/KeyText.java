package org.standproud.access.keys;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A key as its holder sends it: {@code standproud_<id>_<secret>}.
 *
 * <p>The secret is 256 random bits, so what is stored is one SHA-256 of it (FIPS 180-4). A slow
 * hash protects what people choose, because that can be guessed; 2^256 equally likely secrets
 * cannot, and a slow hash would only let strangers keep the service busy.
 *
 * @param id names the key
 * @param secret proves that it is held
 */
public record KeyText(String id, String secret) {

  /** What every key begins with, so that one in a wrong place is found by a search. */
  public static final String MARK = "standproud_";

  private static final int SECRET_BYTES = 32;
  private static final int ID_BYTES = 8;
  private static final Pattern SHAPE = Pattern.compile(MARK + "([0-9a-f]{16})_([A-Za-z0-9_-]{43})");
  private static final SecureRandom RANDOM = new SecureRandom();

  static KeyText random() {
    byte[] id = new byte[ID_BYTES];
    byte[] secret = new byte[SECRET_BYTES];
    RANDOM.nextBytes(id);
    RANDOM.nextBytes(secret);
    return new KeyText(
        HexFormat.of().formatHex(id),
        Base64.getUrlEncoder().withoutPadding().encodeToString(secret));
  }

  static Optional<KeyText> read(String text) {
    Matcher matcher = SHAPE.matcher(text);
    return matcher.matches()
        ? Optional.of(new KeyText(matcher.group(1), matcher.group(2)))
        : Optional.empty();
  }

  /** The text to be sent. */
  public String text() {
    return MARK + id + "_" + secret;
  }

  /** SHA-256 of the secret in hexadecimal. */
  String digest() {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.US_ASCII));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Compares in constant time, so that timing does not show where the first difference lies. */
  boolean has(String storedDigest) {
    return MessageDigest.isEqual(
        digest().getBytes(StandardCharsets.US_ASCII),
        storedDigest.getBytes(StandardCharsets.US_ASCII));
  }

  /** No secret gets into a log by way of a message. */
  @Override
  public String toString() {
    return MARK + id + "_…";
  }
}

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
 * The text of a key: {@code standproud_<id>_<secret>}.
 *
 * <p>The secret is 256 random bits, so one SHA-256 of it is stored (FIPS 180-4). A slow hash
 * protects passwords, which can be guessed; 2^256 equally likely secrets cannot, and a slow hash
 * would only let strangers keep the service busy.
 *
 * @param id id of the key
 * @param secret the secret
 */
public record KeyText(String id, String secret) {

  /** The prefix of every key, so that a leaked one can be found by a search. */
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

  /** The bearer token. */
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

  /** Compares in constant time, so that timing does not reveal the first difference. */
  boolean has(String storedDigest) {
    return MessageDigest.isEqual(
        digest().getBytes(StandardCharsets.US_ASCII),
        storedDigest.getBytes(StandardCharsets.US_ASCII));
  }

  /** Hides the secret, which must not get into a log. */
  @Override
  public String toString() {
    return MARK + id + "_…";
  }
}

package org.standproud.audit.chain;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The secret that seals records and signs checkpoints: HMAC with SHA-256 (RFC 2104, FIPS 180-4).
 *
 * <p>A seal covers the record's SHA-256 digest rather than its text, so that the chain can still be
 * proved where a record's text is withheld. Links, checkpoints and the key's own id are hashed
 * under different labels, so that one can never stand for another.
 */
public final class ChainKey {

  /** What stands as previous seal before the first record. */
  public static final String GENESIS = "0".repeat(64);

  private static final String ALGORITHM = "HmacSHA256";
  private static final int LENGTH_BYTES = 32;
  private static final HexFormat HEX = HexFormat.of();

  private final SecretKeySpec secret;
  private final String id;

  private ChainKey(byte[] secret) {
    if (secret.length < LENGTH_BYTES) {
      throw new IllegalArgumentException(
          "A chain key has at least " + LENGTH_BYTES + " bytes; this one has " + secret.length);
    }
    this.secret = new SecretKeySpec(secret, ALGORITHM);
    this.id = HEX.formatHex(mac("standproud key id", new byte[0]), 0, 8);
  }

  /**
   * A key from its Base64 text.
   *
   * @param base64 at least 32 bytes, Base64
   * @return the key
   * @throws IllegalArgumentException when the text is no Base64 or too short
   */
  public static ChainKey of(String base64) {
    return new ChainKey(Base64.getDecoder().decode(base64.strip()));
  }

  /**
   * A fresh secret.
   *
   * @return 32 random bytes, Base64
   */
  static String fresh() {
    byte[] bytes = new byte[LENGTH_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getEncoder().encodeToString(bytes);
  }

  /**
   * Which key this is, without giving it away.
   *
   * @return 16 hexadecimal digits
   */
  public String id() {
    return id;
  }

  /**
   * Puts a record in its place.
   *
   * @param sequence its place, from 1
   * @param previous seal of the record before
   * @param body the record
   * @return the sealed link
   */
  public Link seal(long sequence, String previous, CanonicalJson body) {
    byte[] covered =
        ByteBuffer.allocate(Long.BYTES + 32 + 32)
            .putLong(sequence)
            .put(HEX.parseHex(previous))
            .put(sha256(body.utf8()))
            .array();
    return new Link(sequence, previous, HEX.formatHex(mac("standproud link 1", covered)), body);
  }

  /**
   * Whether this key sealed the link just as it stands.
   *
   * @param link a link from anywhere
   * @return false when anything in it was changed
   */
  public boolean sealed(Link link) {
    return isSeal(link.previous())
        && same(seal(link.sequence(), link.previous(), link.body()).seal(), link.seal());
  }

  /**
   * States how far the chain has come.
   *
   * @param sequence place of the last record
   * @param seal its seal
   * @param time now
   * @return the signed statement
   */
  public Checkpoint sign(long sequence, String seal, Instant time) {
    Instant kept = time.truncatedTo(ChronoUnit.MICROS);
    String covered = sequence + "\n" + seal + "\n" + kept + "\n" + id;
    byte[] signature = mac("standproud checkpoint 1", covered.getBytes(StandardCharsets.UTF_8));
    return new Checkpoint(sequence, seal, kept, id, HEX.formatHex(signature));
  }

  /**
   * Whether this key signed the checkpoint just as it stands.
   *
   * @param checkpoint a checkpoint from anywhere
   * @return false when anything in it was changed
   */
  public boolean signed(Checkpoint checkpoint) {
    String expected = sign(checkpoint.sequence(), checkpoint.seal(), checkpoint.time()).signature();
    return id.equals(checkpoint.keyId()) && same(expected, checkpoint.signature());
  }

  private static boolean isSeal(String text) {
    return text.length() == 64 && text.chars().allMatch(HexFormat::isHexDigit);
  }

  private static boolean same(String expected, String found) {
    return MessageDigest.isEqual(
        expected.getBytes(StandardCharsets.UTF_8), found.getBytes(StandardCharsets.UTF_8));
  }

  private byte[] mac(String label, byte[] covered) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(secret);
      mac.update(label.getBytes(StandardCharsets.UTF_8));
      mac.update((byte) 0);
      return mac.doFinal(covered);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java platform has " + ALGORITHM, e);
    }
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }

  /** Names the key by its id only. */
  @Override
  public String toString() {
    return "ChainKey " + id;
  }
}

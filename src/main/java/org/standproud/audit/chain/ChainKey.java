package org.standproud.audit.chain;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The secret key that seals records: HMAC with SHA-256 (RFC 2104, FIPS 180-4).
 *
 * <p>A seal covers the record's SHA-256 digest rather than its text, so that the chain can still be
 * verified where a record's text is withheld. Links, checkpoints and the key's own id are hashed
 * under different labels, so that none can be mistaken for another. Checkpoints are signed with a
 * {@link SigningKey} today; this key still verifies those of the first version.
 */
public final class ChainKey {

  /** The previous seal of the first record. */
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
   * Decodes a key.
   *
   * @param base64 at least 32 bytes, Base64
   * @return the key
   * @throws IllegalArgumentException if the text is not Base64 or too short
   */
  public static ChainKey of(String base64) {
    return new ChainKey(Base64.getDecoder().decode(base64.strip()));
  }

  /**
   * A new secret.
   *
   * @return 32 random bytes, Base64
   */
  static String fresh() {
    byte[] bytes = new byte[LENGTH_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getEncoder().encodeToString(bytes);
  }

  /**
   * The id of the key, which does not reveal it.
   *
   * @return 16 hexadecimal digits
   */
  public String id() {
    return id;
  }

  /**
   * Seals a record in its position.
   *
   * @param sequence its position, from 1
   * @param previous seal of the record before
   * @param body the record
   * @return the sealed link
   */
  public Link seal(long sequence, String previous, CanonicalJson body) {
    return new Link(sequence, previous, sealOf(sequence, previous, body.sha256()), body);
  }

  /**
   * Whether this key sealed exactly this link.
   *
   * @param link any link
   * @return false if anything in it was changed
   */
  public boolean sealed(Link link) {
    return Hex64.is(link.previous())
        && Hex64.is(link.digest())
        && same(sealOf(link.sequence(), link.previous(), link.digest()), link.seal());
  }

  /**
   * Whether this key signed exactly this checkpoint of the first version.
   *
   * @param checkpoint any checkpoint
   * @return false if anything in it was changed, or another key or version signed it
   */
  public boolean signed(Checkpoint checkpoint) {
    String covered =
        checkpoint.sequence() + "\n" + checkpoint.seal() + "\n" + checkpoint.time() + "\n" + id;
    byte[] expected = mac("standproud checkpoint 1", covered.getBytes(StandardCharsets.UTF_8));
    return checkpoint.digest() == null
        && id.equals(checkpoint.keyId())
        && same(HEX.formatHex(expected), checkpoint.signature());
  }

  /**
   * A keyed hash over the index columns of a record in its position.
   *
   * @param filing position, words and numbers, as a text that is unique for them
   * @return 64 hexadecimal digits
   */
  public String filed(String filing) {
    return HEX.formatHex(mac("standproud filing 1", filing.getBytes(StandardCharsets.UTF_8)));
  }

  /**
   * Whether this key made the hash.
   *
   * @param filing see {@link #filed}
   * @param hash any hash
   */
  public boolean filed(String filing, String hash) {
    return same(filed(filing), hash);
  }

  private String sealOf(long sequence, String previous, String digest) {
    byte[] covered =
        ByteBuffer.allocate(Long.BYTES + 32 + 32)
            .putLong(sequence)
            .put(HEX.parseHex(previous))
            .put(HEX.parseHex(digest))
            .array();
    return HEX.formatHex(mac("standproud link 1", covered));
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

  /** Prints the key by its id only. */
  @Override
  public String toString() {
    return "ChainKey " + id;
  }
}

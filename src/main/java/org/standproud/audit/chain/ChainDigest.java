package org.standproud.audit.chain;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A running hash over the chain that anyone can compute, so that a checkpoint signed over it is
 * proof without the chain key: D(0) = 64 zeros, D(n) = SHA-256(label, zero byte, D(n-1), place,
 * seal, SHA-256 of the record).
 */
public final class ChainDigest {

  /** The digest of an empty chain. */
  public static final String START = "0".repeat(64);

  private static final byte[] LABEL =
      "standproud chain digest 1".getBytes(StandardCharsets.US_ASCII);
  private static final HexFormat HEX = HexFormat.of();

  private ChainDigest() {}

  /**
   * The digest with one more record.
   *
   * @param before the digest up to the previous record
   * @param link the record
   * @return 64 hexadecimal digits
   * @throws IllegalArgumentException when a seal or digest is not hexadecimal
   */
  public static String after(String before, Link link) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(LABEL);
      digest.update((byte) 0);
      digest.update(HEX.parseHex(before));
      digest.update(ByteBuffer.allocate(Long.BYTES).putLong(0, link.sequence()).array());
      digest.update(HEX.parseHex(link.seal()));
      return HEX.formatHex(digest.digest(HEX.parseHex(link.digest())));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}

package org.standproud.audit.chain;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.HexFormat;

/**
 * Signs checkpoints with Ed25519 (RFC 8032), so that an auditor needs only the public half and
 * cannot forge them.
 */
public final class SigningKey {

  private static final String ALGORITHM = "Ed25519";

  private final PrivateKey secret;
  private final VerifyingKey open;

  private SigningKey(PrivateKey secret, VerifyingKey open) {
    this.secret = secret;
    this.open = open;
    Checkpoint probe = sign(0, ChainKey.GENESIS, ChainDigest.START, "", Instant.EPOCH);
    if (!open.signed(probe)) {
      throw new IllegalArgumentException("the halves of the signing key do not belong together");
    }
  }

  /**
   * Parses a key.
   *
   * @param text private half (PKCS#8) and public half (SubjectPublicKeyInfo), both Base64, with
   *     white space between them
   * @throws IllegalArgumentException if the text is not such a pair
   */
  public static SigningKey of(String text) {
    String[] halves = text.strip().split("\\s+");
    if (halves.length != 2) {
      throw new IllegalArgumentException("a signing key has a private and a public half");
    }
    try {
      byte[] encoded = Base64.getDecoder().decode(halves[0]);
      PrivateKey secret =
          KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(encoded));
      return new SigningKey(secret, VerifyingKey.of(halves[1]));
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("not an Ed25519 private key", e);
    }
  }

  /** The text of a new key. */
  static String fresh() {
    try {
      KeyPair pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
      Base64.Encoder base64 = Base64.getEncoder();
      return base64.encodeToString(pair.getPrivate().getEncoded())
          + "\n"
          + base64.encodeToString(pair.getPublic().getEncoded())
          + "\n";
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Java 15 and newer have " + ALGORITHM, e);
    }
  }

  /** The public half. */
  public VerifyingKey verifying() {
    return open;
  }

  /**
   * Signs the current end of the chain.
   *
   * @param sequence position of the last record
   * @param seal its seal
   * @param digest {@link ChainDigest} up to it
   * @param chainKey id of the key that seals the records
   * @param time now; truncated to the microsecond
   * @return the signed statement
   */
  public Checkpoint sign(long sequence, String seal, String digest, String chainKey, Instant time) {
    Instant kept = time.truncatedTo(ChronoUnit.MICROS);
    Checkpoint bare = new Checkpoint(sequence, seal, digest, kept, chainKey, open.id(), "");
    try {
      Signature signature = Signature.getInstance(ALGORITHM);
      signature.initSign(secret);
      signature.update(bare.signedText().getBytes(StandardCharsets.UTF_8));
      String hex = HexFormat.of().formatHex(signature.sign());
      return new Checkpoint(sequence, seal, digest, kept, chainKey, open.id(), hex);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("A key that was read signs", e);
    }
  }

  /** Prints the key by its id only. */
  @Override
  public String toString() {
    return "SigningKey " + open.id();
  }
}

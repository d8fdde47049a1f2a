package org.standproud.audit.chain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;

/** The public half of a {@link SigningKey}: all that is needed to verify its checkpoints. */
public final class VerifyingKey {

  private static final String BEGIN = "-----BEGIN PUBLIC KEY-----";
  private static final String END = "-----END PUBLIC KEY-----";

  private final PublicKey key;
  private final String id;

  VerifyingKey(PublicKey key) {
    this.key = key;
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getEncoded());
      this.id = HexFormat.of().formatHex(digest, 0, 8);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }

  /**
   * Reads a key from a file, in PEM (RFC 7468) or as bare Base64.
   *
   * @param file the file
   * @throws IllegalArgumentException if the file holds no Ed25519 public key
   * @throws UncheckedIOException if it cannot be read
   */
  public static VerifyingKey read(Path file) {
    try {
      return of(Files.readString(file, StandardCharsets.US_ASCII));
    } catch (IOException e) {
      throw new UncheckedIOException("Public key file " + file, e);
    }
  }

  /**
   * Parses a key.
   *
   * @param text PEM or Base64 of a SubjectPublicKeyInfo (RFC 8410)
   * @throws IllegalArgumentException if it is not an Ed25519 public key
   */
  public static VerifyingKey of(String text) {
    String base64 = text.replace(BEGIN, "").replace(END, "").replaceAll("\\s", "");
    try {
      byte[] encoded = Base64.getDecoder().decode(base64);
      return new VerifyingKey(
          KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(encoded)));
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("not an Ed25519 public key", e);
    }
  }

  /** The id of the key: 16 hexadecimal digits of the SHA-256 of its encoding. */
  public String id() {
    return id;
  }

  /** The key as PEM text, for auditors. */
  public String pem() {
    String base64 = Base64.getEncoder().encodeToString(key.getEncoded());
    return BEGIN + "\n" + base64 + "\n" + END + "\n";
  }

  /**
   * Whether the private half signed exactly this checkpoint.
   *
   * @param checkpoint any checkpoint
   */
  public boolean signed(Checkpoint checkpoint) {
    if (checkpoint.digest() == null || !id.equals(checkpoint.keyId())) {
      return false;
    }
    try {
      Signature signature = Signature.getInstance("Ed25519");
      signature.initVerify(key);
      signature.update(checkpoint.signedText().getBytes(StandardCharsets.UTF_8));
      return signature.verify(HexFormat.of().parseHex(checkpoint.signature()));
    } catch (GeneralSecurityException | IllegalArgumentException e) {
      return false; // Not a signature of that key at all.
    }
  }

  /** Prints the key by its id. */
  @Override
  public String toString() {
    return "VerifyingKey " + id;
  }
}

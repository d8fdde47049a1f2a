package org.standproud.audit.chain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Stores the signing key in a file that only its owner may read, and its public half beside it.
 *
 * @param path path of the key; its directory is created if missing
 */
public record SigningKeyFile(Path path) {

  /**
   * Reads the key, or creates it on the first start.
   *
   * @return the key
   * @throws IllegalStateException if others than the owner may read the file
   * @throws IllegalArgumentException if the file holds no key
   * @throws UncheckedIOException if a file cannot be read or written
   */
  public SigningKey open() {
    SigningKey key = SigningKey.of(new SecretFile(path).open(SigningKey::fresh));
    try {
      Files.writeString(publicPath(), key.verifying().pem(), StandardCharsets.US_ASCII);
    } catch (IOException e) {
      throw new UncheckedIOException("Public key file " + publicPath(), e);
    }
    return key;
  }

  /** Path of the public half, in PEM. */
  public Path publicPath() {
    return path.resolveSibling(path.getFileName() + ".pub");
  }
}

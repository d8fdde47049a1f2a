package org.standproud.audit.chain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Keeps the signing key in a file that only its owner may read, and its public half beside it.
 *
 * @param path where the key lies; the directory above it is made when missing
 */
public record SigningKeyFile(Path path) {

  /**
   * Reads the key, making it on the first start.
   *
   * @return the key
   * @throws IllegalStateException when others than the owner may read the file
   * @throws IllegalArgumentException when the file holds no key
   * @throws UncheckedIOException when a file cannot be read or made
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

  /** Where the public half lies, in PEM. */
  public Path publicPath() {
    return path.resolveSibling(path.getFileName() + ".pub");
  }
}

package org.standproud.audit.chain;

import java.nio.file.Path;

/**
 * Keeps the chain key in a file that only its owner may read.
 *
 * @param path where the key lies; the directory above it is made when missing
 */
public record ChainKeyFile(Path path) {

  /**
   * Reads the key, making it on the first start.
   *
   * @return the key
   * @throws IllegalStateException when others than the owner may read the file
   * @throws IllegalArgumentException when the file holds no key
   * @throws java.io.UncheckedIOException when the file cannot be read or made
   */
  public ChainKey open() {
    return ChainKey.of(new SecretFile(path).open(ChainKey::fresh));
  }
}

package org.standproud.audit.chain;

import java.nio.file.Path;

/**
 * Stores the chain key in a file that only its owner may read.
 *
 * @param path path of the key; its directory is created if missing
 */
public record ChainKeyFile(Path path) {

  /**
   * Reads the key, or creates it on the first start.
   *
   * @return the key
   * @throws IllegalStateException if others than the owner may read the file
   * @throws IllegalArgumentException if the file holds no key
   * @throws java.io.UncheckedIOException if the file cannot be read or written
   */
  public ChainKey open() {
    return ChainKey.of(new SecretFile(path).open(ChainKey::fresh));
  }
}

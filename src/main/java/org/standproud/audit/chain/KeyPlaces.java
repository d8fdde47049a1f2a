package org.standproud.audit.chain;

import java.nio.file.Path;

/**
 * Default paths of keys and checkpoints.
 *
 * @param directory the audit directory
 */
public record KeyPlaces(Path directory) {

  /** The file of the chain key. */
  public ChainKeyFile chain() {
    return new ChainKeyFile(directory.resolve("chain.key"));
  }

  /** The file of the signing key. */
  public SigningKeyFile signing() {
    return new SigningKeyFile(directory.resolve("checkpoint.key"));
  }

  /** The file of checkpoints. */
  public CheckpointFile checkpoints() {
    return new CheckpointFile(directory.resolve("checkpoints.ndjson"));
  }
}

package org.standproud.audit.chain;

import java.time.Instant;
import java.util.Objects;

/**
 * A signed statement that the chain once reached a place with a seal; kept outside the database, it
 * shows when the end of the chain was cut off or written anew.
 *
 * @param sequence place of the last record then; 0 for a chain with no records
 * @param seal seal of that record
 * @param time when the statement was made
 * @param keyId which key signed
 * @param signature keyed hash over the above: 64 hexadecimal digits
 */
public record Checkpoint(long sequence, String seal, Instant time, String keyId, String signature) {

  /** Refuses a checkpoint with a part missing, as an edited file may hold. */
  public Checkpoint {
    Objects.requireNonNull(seal, "seal");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(keyId, "keyId");
    Objects.requireNonNull(signature, "signature");
  }
}

package org.standproud.audit.chain;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A signed statement that the chain once reached a place with a seal; kept outside the database, it
 * shows when the end of the chain was cut off or written anew.
 *
 * @param sequence place of the last record then; 0 for a chain with no records
 * @param seal seal of that record
 * @param digest {@link ChainDigest} up to that record; null in statements of the first version,
 *     which only the chain key can check
 * @param time when the statement was made
 * @param chainKey id of the key that sealed the records; null in statements of the first version
 * @param keyId which key signed
 * @param signature Ed25519 signature over the above, 128 hexadecimal digits; in the first version a
 *     keyed hash of 64
 */
public record Checkpoint(
    long sequence,
    String seal,
    @Nullable String digest,
    Instant time,
    @Nullable String chainKey,
    String keyId,
    String signature) {

  /** Refuses a checkpoint with a part missing, as an edited file may hold. */
  public Checkpoint {
    Objects.requireNonNull(seal, "seal");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(keyId, "keyId");
    Objects.requireNonNull(signature, "signature");
  }

  /** Id of the key that sealed the records. */
  String sealedBy() {
    return chainKey == null ? keyId : chainKey;
  }

  /** What is signed: one part a line, so that it can be put together by hand. */
  String signedText() {
    return String.join(
        "\n",
        "standproud checkpoint 2",
        Long.toString(sequence),
        seal,
        String.valueOf(digest),
        time.toString(),
        String.valueOf(chainKey),
        keyId);
  }
}

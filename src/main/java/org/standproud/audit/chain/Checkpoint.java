package org.standproud.audit.chain;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A signed statement that the chain had reached a position with a seal; kept outside the database,
 * it shows when the end of the chain was cut off or rewritten.
 *
 * @param sequence position of the last record then; 0 for an empty chain
 * @param seal seal of that record
 * @param digest {@link ChainDigest} up to that record; null in statements of the first version,
 *     which only the chain key can verify
 * @param time time of the statement
 * @param chainKey id of the key that sealed the records; null in statements of the first version
 * @param keyId id of the signing key
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

  /** Refuses an incomplete checkpoint, as an edited file may hold. */
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

  /** The signed text: one part a line, so that it can be rebuilt by hand. */
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

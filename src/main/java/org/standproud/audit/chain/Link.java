package org.standproud.audit.chain;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * One record in its position in the chain, whole or with its text withheld.
 *
 * @param sequence position, from 1 without gaps
 * @param previous seal of the record before, {@link ChainKey#GENESIS} for the first
 * @param seal keyed hash over position, previous seal and digest of the record: 64 hexadecimal
 *     digits
 * @param body the record, canonical; null if it was withheld
 * @param withheld the rest of it; null if it is whole
 */
public record Link(
    long sequence,
    String previous,
    String seal,
    @Nullable CanonicalJson body,
    @Nullable Remainder withheld) {

  /** Refuses an incomplete link, as an edited export may hold. */
  public Link {
    Objects.requireNonNull(previous, "previous");
    Objects.requireNonNull(seal, "seal");
    if ((body == null) == (withheld == null)) {
      throw new IllegalArgumentException("a link has a body, or what is left of it");
    }
  }

  /** A whole record in its position. */
  public Link(long sequence, String previous, String seal, CanonicalJson body) {
    this(sequence, previous, seal, body, null);
  }

  /** The record, or the rest of it. */
  public CanonicalJson text() {
    return body != null ? body : Objects.requireNonNull(withheld).text();
  }

  /** SHA-256 of the sealed record, 64 hexadecimal digits. */
  public String digest() {
    return body != null ? body.sha256() : Objects.requireNonNull(withheld).digest();
  }
}

package org.standproud.audit.chain;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * One record in its place in the chain, whole or with its text withheld.
 *
 * @param sequence place, counted from 1 without gaps
 * @param previous seal of the record before, {@link ChainKey#GENESIS} for the first
 * @param seal keyed hash over place, previous seal and digest of the record: 64 hexadecimal digits
 * @param body the record, canonical; null when it was withheld
 * @param withheld what is left of it; null when it is whole
 */
public record Link(
    long sequence,
    String previous,
    String seal,
    @Nullable CanonicalJson body,
    @Nullable Remainder withheld) {

  /** Refuses a link with a part missing, as an edited export may hold. */
  public Link {
    Objects.requireNonNull(previous, "previous");
    Objects.requireNonNull(seal, "seal");
    if ((body == null) == (withheld == null)) {
      throw new IllegalArgumentException("a link has a body, or what is left of it");
    }
  }

  /** A whole record in its place. */
  public Link(long sequence, String previous, String seal, CanonicalJson body) {
    this(sequence, previous, seal, body, null);
  }

  /** The record, or what is left of it. */
  public CanonicalJson text() {
    return body != null ? body : Objects.requireNonNull(withheld).text();
  }

  /** SHA-256 of the record that was sealed, 64 hexadecimal digits. */
  public String digest() {
    return body != null ? body.sha256() : Objects.requireNonNull(withheld).digest();
  }
}

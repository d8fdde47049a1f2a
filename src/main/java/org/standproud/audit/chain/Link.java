package org.standproud.audit.chain;

import java.util.Objects;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * One record in its place in the chain.
 *
 * @param sequence place, counted from 1 without gaps
 * @param previous seal of the record before, {@link ChainKey#GENESIS} for the first
 * @param seal keyed hash over place, previous seal and body: 64 hexadecimal digits
 * @param body the record, canonical
 */
public record Link(long sequence, String previous, String seal, CanonicalJson body) {

  /** Refuses a link with a part missing, as an edited export may hold. */
  public Link {
    Objects.requireNonNull(previous, "previous");
    Objects.requireNonNull(seal, "seal");
    Objects.requireNonNull(body, "body");
  }
}

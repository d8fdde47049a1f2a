package org.standproud.audit.chain;

import java.util.Objects;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The rest of a record whose text was withheld.
 *
 * @param digest SHA-256 of the sealed text, 64 hexadecimal digits
 * @param text the text left, canonical
 */
public record Remainder(String digest, CanonicalJson text) {

  /** Refuses an incomplete remainder, as an edited export may hold. */
  public Remainder {
    Objects.requireNonNull(digest, "digest");
    Objects.requireNonNull(text, "text");
  }
}

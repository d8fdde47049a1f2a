package org.standproud.audit.chain;

import java.util.Objects;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * What is left of a record whose text was withheld.
 *
 * @param digest SHA-256 of the text that was sealed, 64 hexadecimal digits
 * @param text what still stands of it, canonical
 */
public record Remainder(String digest, CanonicalJson text) {

  /** Refuses a remainder with a part missing, as an edited export may hold. */
  public Remainder {
    Objects.requireNonNull(digest, "digest");
    Objects.requireNonNull(text, "text");
  }
}

package org.standproud.rules.card;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An example beside the limit it proves; it runs as a test.
 *
 * @param says the set-up in words
 * @param expect what the card must say of it
 * @param base name of a demonstration set-up whose evidence is taken first, or null for none
 * @param given values of facts, laid over it
 */
public record Example(
    Written says, Expectation expect, @Nullable Written base, Map<String, Written> given) {

  /** Copies the values, keeping their order. */
  public Example {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }
}

package org.standproud.rules.card;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An example next to the limit it proves; it runs as a test.
 *
 * @param says the set-up in words
 * @param expect the result the card must have
 * @param base name of a demonstration set-up that supplies the evidence, or null
 * @param given values of facts that override it
 */
public record Example(
    Written says, Expectation expect, @Nullable Written base, Map<String, Written> given) {

  /** Copies the values, keeping their order. */
  public Example {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }
}

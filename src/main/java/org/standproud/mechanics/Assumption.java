package org.standproud.mechanics;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;

/**
 * The value assumed for an input that was not given.
 *
 * @param input the field of the request, as a JSON Pointer
 * @param statement the assumption, with band and unit
 * @param source the source of the band
 * @param measure what to measure or state to replace it; absent if nothing replaces it
 */
public record Assumption(
    FieldPointer input, String statement, String source, @Nullable String measure) {

  /** An assumption that a field of the request replaces. */
  public Assumption(Field<?, ?> input, String statement, String source, String measure) {
    this(FieldPointer.to(input), statement, source, measure);
  }

  /** An assumption of the model, which stays whatever the caller says. */
  public Assumption(Field<?, ?> input, String statement, String source) {
    this(FieldPointer.to(input), statement, source, null);
  }
}

package org.standproud.mechanics;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;

/**
 * What was taken for an input that the caller did not give, or that no caller can give.
 *
 * @param input the field of the request by which a better value comes in
 * @param statement what was assumed, with the band and its unit, in one sentence
 * @param source where the band comes from
 * @param measure what the shop would measure or say to put a fact in its place; null if the band
 *     belongs to the model and stays whatever is said
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

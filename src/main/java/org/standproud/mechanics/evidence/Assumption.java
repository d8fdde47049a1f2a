package org.standproud.mechanics.evidence;

import org.jspecify.annotations.Nullable;

/**
 * What was taken for an input that the caller did not give, or that no caller can give.
 *
 * @param input the input, as a path in the request, such as {@code hold.jawFriction}
 * @param statement what was assumed, with the band and its unit, in one sentence
 * @param source where the band comes from
 * @param measure what the shop would measure or say to put a fact in its place; null if the band
 *     belongs to the model and stays whatever is said
 */
public record Assumption(String input, String statement, String source, @Nullable String measure) {

  /** An assumption of the model, which stays whatever the caller says. */
  public Assumption(String input, String statement, String source) {
    this(input, statement, source, null);
  }
}

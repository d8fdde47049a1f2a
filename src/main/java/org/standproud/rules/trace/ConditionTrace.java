package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;

/**
 * The outcome of one condition of a card.
 *
 * @param text the condition as written
 * @param words the condition in words
 * @param draws the draws in which it holds
 * @param read the facts in it with their values
 * @param unknown why it cannot be judged; empty unless it is unknown
 * @param margin how far it is from flipping, or null if no number can flip it
 */
public record ConditionTrace(
    Written text,
    String words,
    DrawTruth draws,
    List<Reading> read,
    List<String> unknown,
    @Nullable Margin margin) {

  /** Copies the lists, unless they are immutable. */
  public ConditionTrace {
    read = LazyList.kept(read);
    unknown = LazyList.kept(unknown);
  }

  /** The truth over all draws. */
  public Truth truth() {
    return draws.truth();
  }
}

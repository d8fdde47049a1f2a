package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;

/**
 * What one condition of a card came to.
 *
 * @param text the condition as written
 * @param words the condition in words
 * @param draws in which draws it holds
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

  /** Copies the lists, unless nobody can change them. */
  public ConditionTrace {
    read = LazyList.kept(read);
    unknown = LazyList.kept(unknown);
  }

  /** All of the draws in one word. */
  public Truth truth() {
    return draws.truth();
  }
}

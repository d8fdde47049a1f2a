package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;

/**
 * What one card came to.
 *
 * @param card the card
 * @param kind what it came to
 * @param truth what can be said of all its conditions and its scope together
 * @param severity its severity after every change
 * @param changes the changes of severity, in the order of the cards that made them
 * @param scope what each selector of its scope came to
 * @param conditions what each condition came to
 * @param margin how far the whole card is from flipping, or null if no number can flip it
 * @param placeholders what the placeholders of its message stand for, in their order
 */
public record CardTrace(
    Card card,
    Kind kind,
    Truth truth,
    Severity severity,
    List<Changed> changes,
    List<ConditionTrace> scope,
    List<ConditionTrace> conditions,
    @Nullable Margin margin,
    List<Placeholder> placeholders)
    implements CardOutcome {

  /** Copies the lists, unless nobody can change them. */
  public CardTrace {
    changes = List.copyOf(changes);
    scope = List.copyOf(scope);
    conditions = LazyList.kept(conditions);
    placeholders = LazyList.kept(placeholders);
  }

  @Override
  public String id() {
    return card.id().text();
  }

  @Override
  public boolean isFinding() {
    return card.flags() && (kind == Kind.FAIL || kind == Kind.OPEN);
  }
}

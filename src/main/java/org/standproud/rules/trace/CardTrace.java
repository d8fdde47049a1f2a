package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;

/**
 * What one card came to.
 *
 * @param card the card
 * @param kind what it came to
 * @param draws in which draws all its conditions and its scope hold
 * @param severity its severity after every change
 * @param level the share of the draws above which it speaks
 * @param changes the changes of severity, in the order of the cards that made them
 * @param scope what each selector of its scope came to
 * @param conditions what each condition came to
 * @param margin how far the whole card is from flipping, or null if no number can flip it
 * @param placeholders what the placeholders of its message stand for, in their order
 * @param silencedBy id of the card that says the same with a higher severity, or null
 */
public record CardTrace(
    Card card,
    Kind kind,
    DrawTruth draws,
    Severity severity,
    double level,
    List<Changed> changes,
    List<ConditionTrace> scope,
    List<ConditionTrace> conditions,
    @Nullable Margin margin,
    List<Placeholder> placeholders,
    @Nullable String silencedBy)
    implements CardOutcome {

  /** Copies the lists, unless nobody can change them. */
  public CardTrace {
    changes = List.copyOf(changes);
    scope = List.copyOf(scope);
    conditions = LazyList.kept(conditions);
    placeholders = LazyList.kept(placeholders);
  }

  /** All of the draws in one word. */
  public Truth truth() {
    return draws.truth();
  }

  @Override
  public double share() {
    return draws.share();
  }

  /** The same, kept back because another card says it. */
  public CardTrace silenced(String by) {
    return new CardTrace(
        card, kind, draws, severity, level, changes, scope, conditions, margin, placeholders, by);
  }

  @Override
  public String id() {
    return card.id().text();
  }

  @Override
  public boolean isFinding() {
    return card.flags() && silencedBy == null && (kind == Kind.FAIL || kind == Kind.OPEN);
  }
}

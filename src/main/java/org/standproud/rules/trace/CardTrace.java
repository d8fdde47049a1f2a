package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;

/**
 * The outcome of one card with reasons.
 *
 * @param card the card
 * @param kind its kind
 * @param draws the draws in which its scope and all its conditions hold
 * @param severity its severity after all changes
 * @param level the share of the draws above which it fires
 * @param changes the changes of severity, in the order of the cards that made them
 * @param scope outcome of each selector of its scope
 * @param conditions outcome of each condition
 * @param margin how far the whole card is from flipping, or null if no number can flip it
 * @param placeholders values of the placeholders of its message, in order
 * @param silencedBy id of the card that finds the same with a higher severity, or null
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

  /** Copies the lists, unless they are immutable. */
  public CardTrace {
    changes = List.copyOf(changes);
    scope = List.copyOf(scope);
    conditions = LazyList.kept(conditions);
    placeholders = LazyList.kept(placeholders);
  }

  /** The truth over all draws. */
  public Truth truth() {
    return draws.truth();
  }

  @Override
  public double share() {
    return draws.share();
  }

  /** A copy silenced by another card. */
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
    return card.flags() && silencedBy == null && kind.isFinding();
  }
}

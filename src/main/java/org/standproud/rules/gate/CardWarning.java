package org.standproud.rules.gate;

import java.util.Locale;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.setup.Worded;

/**
 * Something unusual in a card that is allowed.
 *
 * @param kind never holds, never acts, same conditions, shadowed or judgement unread
 * @param card id of the card
 * @param place the place, and what is unusual
 */
public record CardWarning(Kind kind, String card, CardError place) {

  /** The kinds of warning. */
  public enum Kind implements Worded {
    /** Its scope and conditions contradict each other: it can never hold. */
    NEVER_HOLDS,
    /** It and the card whose finding it would change can never hold together. */
    NEVER_ACTS,
    /** Another card has the same scope and conditions. */
    SAME_CONDITIONS,
    /** Whenever it flags, another card flags too and is more severe. */
    SHADOWED,
    /** No card reads the judgement it derives. */
    JUDGEMENT_UNREAD,
    /** It is a stop in service that would stop less. */
    STOP_WEAKENED;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  static CardWarning at(Kind kind, CompiledCard card, Written where, String message) {
    return new CardWarning(kind, card.id(), CardError.at(card.card().file(), where, message));
  }

  /** The warning on one line. */
  @Override
  public String toString() {
    return place.toString();
  }
}

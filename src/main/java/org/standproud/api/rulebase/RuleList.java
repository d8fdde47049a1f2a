package org.standproud.api.rulebase;

import java.util.List;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Confidence;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.Revision;
import org.standproud.rules.engine.RuleBase;

/**
 * The rule base in service.
 *
 * @param revision its identity
 * @param rules its cards in the order of their ids
 */
record RuleList(Revision revision, List<RuleLine> rules) {

  /**
   * A card in short.
   *
   * @param id stable id, never used again
   * @param title its claim
   * @param role flags a set-up, derives a judgement, eases or overrides another card's finding
   * @param severity how grave its finding is
   * @param confidence how good its source is
   * @param protects what it protects
   * @param since day it came into force
   * @param revised day it was last changed, or empty
   * @param owner who answers for it
   * @param self where to find the whole card
   */
  record RuleLine(
      String id,
      String title,
      String role,
      Severity severity,
      Confidence confidence,
      Protects protects,
      String since,
      String revised,
      String owner,
      String self) {

    static RuleLine of(Card card) {
      return new RuleLine(
          card.id().text(),
          card.title(),
          role(card),
          card.severity(),
          card.confidence(),
          card.protects(),
          card.since(),
          card.revised(),
          card.owner(),
          "/v1/rules/" + card.id().text());
    }

    private static String role(Card card) {
      if (card.change() != null) {
        return card.change().overrides() ? "overrides" : "eases";
      }
      return card.derives() == null ? "flags" : "derives";
    }
  }

  static RuleList of(RuleBase base) {
    return new RuleList(
        base.revision(), base.cards().stream().map(c -> RuleLine.of(c.card())).toList());
  }
}

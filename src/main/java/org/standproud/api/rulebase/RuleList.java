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
 * @param revision its revision
 * @param rules its cards, ordered by id
 */
record RuleList(Revision revision, List<RuleLine> rules) {

  /**
   * A summary line of a card.
   *
   * @param id stable id, never reused
   * @param title its claim
   * @param role flags a set-up, derives a judgement, eases or overrides another card's finding
   * @param severity severity of its finding
   * @param confidence confidence in its source
   * @param protects what it protects
   * @param since date it came into force
   * @param revised date of its last change, or empty
   * @param owner its owner
   * @param self link to the whole card
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

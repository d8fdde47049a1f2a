package org.standproud.advice.remedy;

import java.util.List;
import org.standproud.rules.card.Severity;

/**
 * For one stop or caution, the smallest single change of each kind that clears it and makes nothing
 * else worse.
 *
 * @param card id of the card
 * @param title its claim
 * @param severity stop or caution
 * @param remedies the changes, best first; empty if no single change clears it
 */
public record CardRemedies(String card, String title, Severity severity, List<Remedy> remedies) {

  /** Copies the list. */
  public CardRemedies {
    remedies = List.copyOf(remedies);
  }
}

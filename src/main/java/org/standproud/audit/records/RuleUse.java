package org.standproud.audit.records;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How a card has been used in a span of time.
 *
 * @param cardId the card
 * @param inService whether it is in the rule base asked about
 * @param fails findings that fail
 * @param opens findings that could not be judged
 * @param accepted findings that somebody accepted
 * @param last when it last had something to say, null when never in the span
 */
public record RuleUse(
    String cardId,
    boolean inService,
    long fails,
    long opens,
    long accepted,
    @Nullable Instant last) {

  /** Whether it had nothing to say in the whole span. */
  public boolean silent() {
    return fails == 0 && opens == 0;
  }
}

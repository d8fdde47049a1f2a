package org.standproud.audit.records;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How often a card was used in a period.
 *
 * @param cardId the card
 * @param inService whether it is in the rule base in service
 * @param fails findings that fail
 * @param opens findings that could not be judged
 * @param accepted findings that were signed off
 * @param last time of its last finding; absent if none in the period
 */
public record RuleUse(
    String cardId,
    boolean inService,
    long fails,
    long opens,
    long accepted,
    @Nullable Instant last) {

  /** Whether it had no finding in the whole period. */
  public boolean silent() {
    return fails == 0 && opens == 0;
  }
}

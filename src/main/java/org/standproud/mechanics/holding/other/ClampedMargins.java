package org.standproud.mechanics.holding.other;

import org.standproud.setup.Band;

/**
 * Margins of a hold without a vise: capacity over demand, above one it holds; at most 1000. No
 * safety factor is in them.
 *
 * @param slipMargin slip alone
 * @param liftMargin lift alone
 * @param tipMarginTowardSupport tip alone, under a push toward the backing or the fixed support
 * @param tipMarginAway tip alone, the other way
 * @param combinedMargin all together
 */
public record ClampedMargins(
    Band slipMargin,
    Band liftMargin,
    Band tipMarginTowardSupport,
    Band tipMarginAway,
    Band combinedMargin) {

  /** The least of all together and of both tips. */
  public Band hold() {
    return combinedMargin.orLess(tipMarginTowardSupport).orLess(tipMarginAway);
  }
}

package org.standproud.advice.envelope;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One column of an envelope, in the caller's units.
 *
 * @param at value of the quantity on the other axis
 * @param greatestDepth greatest axial depth judged at which no card objects; null if even the least
 *     depth is stopped
 * @param refusedDepth least axial depth judged above that; null if the whole range is free
 * @param limits cards that stop the refused depth
 */
public record Column(
    double at, @Nullable Double greatestDepth, @Nullable Double refusedDepth, List<String> limits) {

  /** Copies the list. */
  public Column {
    limits = List.copyOf(limits);
  }
}

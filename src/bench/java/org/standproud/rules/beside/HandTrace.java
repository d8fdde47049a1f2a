package org.standproud.rules.beside;

import org.jspecify.annotations.Nullable;
import org.standproud.rules.language.Truth;

/**
 * What one hand-written card came to.
 *
 * @param applies whether it is about this set-up
 * @param truth scope and conditions together
 * @param truths of each selector and condition
 * @param distances of each
 * @param distance of the whole card
 */
public record HandTrace(
    Truth applies,
    Truth truth,
    Truth[] truths,
    @Nullable Distance[] distances,
    @Nullable Distance distance) {

  /** Puts together what the conditions came to, of which the first are the scope. */
  public static HandTrace of(
      int scope, Truth[] truths, Truth[] likely, @Nullable Distance[] distances) {
    Truth applies = Truth.TRUE;
    Truth all = Truth.TRUE;
    for (int i = 0; i < truths.length; i++) {
      all = all.and(truths[i]);
      applies = i < scope ? all : applies;
    }
    boolean none = all == Truth.UNKNOWN || applies == Truth.FALSE;
    Distance distance = none ? null : Distance.among(likely, distances, true, true);
    return new HandTrace(applies, all, truths, distances, distance);
  }
}

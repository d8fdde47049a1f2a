package org.standproud.api.problem;

import java.time.Duration;

/** A body that came too slowly, which would hold up others. */
public final class BodyTooSlow extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param limit how long a body may take to arrive
   */
  public BodyTooSlow(Duration limit) {
    super("A body may take " + limit.toSeconds() + " s at most to arrive.");
  }
}

package org.standproud.refusal;

import java.time.Duration;

/** A body that came too slowly, which would hold up others. */
public final class BodyTooSlowException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param limit how long a body may take to arrive
   */
  public BodyTooSlowException(Duration limit) {
    super(RefusalKind.TOO_SLOW, "A body may take " + limit.toSeconds() + " s at most to arrive.");
  }
}

package org.standproud.refusal;

import java.time.Duration;

/** A body that arrives too slowly and would block others. */
public final class BodyTooSlowException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param limit how long a body may take to arrive
   */
  public BodyTooSlowException(Duration limit) {
    super(RefusalKind.TOO_SLOW, "A body may take " + limit.toSeconds() + " s at most to arrive.");
  }
}

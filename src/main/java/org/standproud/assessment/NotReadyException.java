package org.standproud.assessment;

import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** There is no catalogue or no rule base in service. */
public final class NotReadyException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param reason what is missing
   */
  public NotReadyException(String reason) {
    super(RefusalKind.NOT_READY, reason);
  }
}

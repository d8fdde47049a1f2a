package org.standproud.assessment;

import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** No assessment can be made, because there is no catalogue or no rule base in service. */
public final class NotReadyException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says what is lacking.
   *
   * @param reason what is lacking
   */
  public NotReadyException(String reason) {
    super(RefusalKind.NOT_READY, reason);
  }
}

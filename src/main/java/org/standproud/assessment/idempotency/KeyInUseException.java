package org.standproud.assessment.idempotency;

import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** An Idempotency-Key whose first request is still being answered. */
public final class KeyInUseException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param key the key
   */
  public KeyInUseException(String key) {
    super(RefusalKind.KEY_IN_USE, "A request with the key " + key + " is being answered.");
  }
}

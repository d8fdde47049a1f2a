package org.standproud.assessment.idempotency;

import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** An Idempotency-Key that belongs to another request. */
public final class KeyReusedException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param key the key
   */
  public KeyReusedException(String key) {
    super(RefusalKind.KEY_REUSED, "The key " + key + " belongs to another request.");
  }
}

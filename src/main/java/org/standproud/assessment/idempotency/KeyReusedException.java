package org.standproud.assessment.idempotency;

import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** An Idempotency-Key that stands for another request. */
public final class KeyReusedException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Names the key.
   *
   * @param key the key
   */
  public KeyReusedException(String key) {
    super(RefusalKind.KEY_REUSED, "The key " + key + " was sent with another request before.");
  }
}

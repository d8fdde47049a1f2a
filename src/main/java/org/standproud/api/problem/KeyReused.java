package org.standproud.api.problem;

/** An Idempotency-Key that stands for another request. */
public final class KeyReused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Names the key.
   *
   * @param key the key
   */
  public KeyReused(String key) {
    super("The key " + key + " was sent with another request before.");
  }
}

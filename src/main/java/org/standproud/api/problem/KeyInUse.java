package org.standproud.api.problem;

/** An Idempotency-Key whose first request is still being answered. */
public final class KeyInUse extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Names the key.
   *
   * @param key the key
   */
  public KeyInUse(String key) {
    super("A request with the key " + key + " is being answered just now.");
  }
}

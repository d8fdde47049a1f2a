package org.standproud.access.keys;

import org.jspecify.annotations.Nullable;

/** A key that opens nothing. Its message never holds the secret. */
public final class KeyRefused extends Exception {

  private static final long serialVersionUID = 1L;

  private final @Nullable String keyId;

  /**
   * Says why.
   *
   * @param reason why, to its holder
   * @param keyId the key, if there is one of this id
   */
  KeyRefused(String reason, @Nullable String keyId) {
    super(reason);
    this.keyId = keyId;
  }

  /** The key, if there is one of the id that was shown. */
  public @Nullable String keyId() {
    return keyId;
  }
}

package org.standproud.access.keys;

import org.jspecify.annotations.Nullable;

/** An invalid key. The message never contains the secret. */
public final class KeyRefused extends Exception {

  private static final long serialVersionUID = 1L;

  private final @Nullable String keyId;

  /**
   * Creates the exception.
   *
   * @param reason the reason, for its holder
   * @param keyId the key with this id, if there is one
   */
  KeyRefused(String reason, @Nullable String keyId) {
    super(reason);
    this.keyId = keyId;
  }

  /** The key with this id, if there is one. */
  public @Nullable String keyId() {
    return keyId;
  }
}

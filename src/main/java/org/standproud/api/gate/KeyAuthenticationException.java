package org.standproud.api.gate;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.AuthenticationException;
import org.standproud.access.keys.KeyRefused;

/** An invalid key, as Spring Security's exception. */
final class KeyAuthenticationException extends AuthenticationException {

  private static final long serialVersionUID = 1L;

  private final @Nullable String keyId;

  KeyAuthenticationException(KeyRefused cause) {
    super(String.valueOf(cause.getMessage()), cause);
    this.keyId = cause.keyId();
  }

  /** The key with this id, if there is one. */
  @Nullable String keyId() {
    return keyId;
  }
}

package org.standproud.api.gate;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.AuthenticationException;
import org.standproud.access.keys.KeyRefused;

/** A key that opens nothing, as Spring Security carries it. */
final class KeyAuthenticationException extends AuthenticationException {

  private static final long serialVersionUID = 1L;

  private final @Nullable String keyId;

  KeyAuthenticationException(KeyRefused cause) {
    super(String.valueOf(cause.getMessage()), cause);
    this.keyId = cause.keyId();
  }

  /** The key, if there is one of the id that was shown. */
  @Nullable String keyId() {
    return keyId;
  }
}

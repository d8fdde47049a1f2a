package org.standproud.api.gate;

import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.oauth2.server.resource.authentication.BearerTokenAuthenticationToken;
import org.standproud.access.keys.KeyRefused;
import org.standproud.access.keys.KeyRing;
import org.standproud.access.keys.KeyText;

/**
 * Authenticates callers by a key of this service, in a header or in the sign-in form, or by a token
 * of a trusted issuer.
 */
final class KeyOrTokenResolver implements AuthenticationManager {

  private final KeyRing keys;
  private final @Nullable AuthenticationProvider tokens;

  /**
   * Creates the resolver.
   *
   * @param keys the keys
   * @param tokens verifies tokens; null if none are trusted
   */
  KeyOrTokenResolver(KeyRing keys, @Nullable AuthenticationProvider tokens) {
    this.keys = keys;
    this.tokens = tokens;
  }

  @Override
  public Authentication authenticate(Authentication shown) {
    if (shown instanceof BearerTokenAuthenticationToken bearer) {
      return tokens == null || bearer.getToken().startsWith(KeyText.MARK)
          ? byKey(bearer.getToken())
          : byToken(bearer, tokens);
    }
    if (shown instanceof UsernamePasswordAuthenticationToken form) {
      return byKey(String.valueOf(form.getCredentials()).strip());
    }
    throw new BadCredentialsException("Neither a key nor a token was sent.");
  }

  private Authentication byKey(String text) {
    try {
      return new CallerAuthentication(keys.open(text));
    } catch (KeyRefused e) {
      throw new KeyAuthenticationException(e);
    }
  }

  private static Authentication byToken(
      BearerTokenAuthenticationToken bearer, AuthenticationProvider tokens) {
    Authentication known = tokens.authenticate(bearer);
    if (known == null) {
      throw new BadCredentialsException("Tokens are not configured.");
    }
    return known;
  }
}

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
 * Knows callers by what they show: a key of this service, in a header or in the form to sign in, or
 * a token of another that this one trusts.
 */
final class KeyOrTokenResolver implements AuthenticationManager {

  private final KeyRing keys;
  private final @Nullable AuthenticationProvider tokens;

  /**
   * Brings together what can be shown.
   *
   * @param keys the keys
   * @param tokens checks tokens; null if none are trusted
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
    throw new BadCredentialsException("Neither a key nor a token was shown.");
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
      throw new BadCredentialsException("The token was not checked.");
    }
    return known;
  }
}

package org.standproud.api.gate;

import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.standproud.access.Caller;
import org.standproud.access.Role;

/** A known caller as Spring Security's authentication; it holds no secret. */
final class CallerAuthentication extends AbstractAuthenticationToken {

  private static final long serialVersionUID = 1L;

  private final Caller caller;

  CallerAuthentication(Caller caller) {
    super(caller.roles().stream().map(CallerAuthentication::authority).toList());
    this.caller = caller;
    setAuthenticated(true);
  }

  private static GrantedAuthority authority(Role role) {
    return new SimpleGrantedAuthority(role.name());
  }

  @Override
  public Caller getPrincipal() {
    return caller;
  }

  @Override
  public Object getCredentials() {
    return "";
  }
}

package org.standproud.api.gate;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.core.convert.converter.Converter;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.oauth2.jwt.Jwt;
import org.standproud.access.Caller;
import org.standproud.access.Role;

/**
 * Reads caller and roles from a token whose signature, issuer and times are verified. Unknown words
 * in the roles claim give no role.
 */
final class TokenCaller implements Converter<Jwt, AbstractAuthenticationToken> {

  private static final String MARK = "token:";
  private static final int LONGEST = 200;

  private final String nameClaim;
  private final String rolesClaim;
  private final Map<String, Role> roles;

  /**
   * Creates the converter.
   *
   * @param nameClaim claim with the name of the caller
   * @param rolesClaim claim with the roles, as a list or separated by spaces
   * @param roles roles by their word in the claim
   */
  TokenCaller(String nameClaim, String rolesClaim, Map<String, Role> roles) {
    this.nameClaim = nameClaim;
    this.rolesClaim = rolesClaim;
    this.roles = Map.copyOf(roles);
  }

  @Override
  public AbstractAuthenticationToken convert(Jwt token) {
    Object name = token.getClaim(nameClaim);
    String caller = MARK + (name instanceof String word ? word : "");
    if (caller.equals(MARK)
        || caller.length() > LONGEST
        || caller.chars().anyMatch(Character::isISOControl)) {
      throw new BadCredentialsException("The token names no caller.");
    }
    return new CallerAuthentication(new Caller(caller, roles(token.getClaim(rolesClaim)), null));
  }

  private Set<Role> roles(@Nullable Object claim) {
    Set<Object> claimed =
        claim instanceof Collection<?> list
            ? new HashSet<>(list)
            : new HashSet<>(claim instanceof String text ? List.of(text.split(" ")) : List.of());
    return roles.entrySet().stream()
        .filter(e -> claimed.contains(e.getKey()))
        .map(Map.Entry::getValue)
        .collect(Collectors.toSet());
  }
}

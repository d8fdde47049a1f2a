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
 * Reads from a token whose signature, issuer and times are proved who holds it, and with which
 * roles. Words of the claim that stand for no role give none.
 */
final class TokenCaller implements Converter<Jwt, AbstractAuthenticationToken> {

  private static final String MARK = "token:";
  private static final int LONGEST = 200;

  private final String nameClaim;
  private final String rolesClaim;
  private final Map<String, Role> roles;

  /**
   * How claims are read.
   *
   * @param nameClaim claim that names the caller
   * @param rolesClaim claim that lists his roles, as a list or with spaces between
   * @param roles roles by what stands for them in the claim
   */
  TokenCaller(String nameClaim, String rolesClaim, Map<String, Role> roles) {
    this.nameClaim = nameClaim;
    this.rolesClaim = rolesClaim;
    this.roles = Map.copyOf(roles);
  }

  @Override
  public AbstractAuthenticationToken convert(Jwt token) {
    Object name = token.getClaim(nameClaim);
    String told = MARK + (name instanceof String word ? word : "");
    if (told.equals(MARK)
        || told.length() > LONGEST
        || told.chars().anyMatch(Character::isISOControl)) {
      throw new BadCredentialsException("The token names no caller.");
    }
    return new CallerAuthentication(new Caller(told, roles(token.getClaim(rolesClaim)), null));
  }

  private Set<Role> roles(@Nullable Object claim) {
    Set<Object> told =
        claim instanceof Collection<?> list
            ? new HashSet<>(list)
            : new HashSet<>(claim instanceof String text ? List.of(text.split(" ")) : List.of());
    return roles.entrySet().stream()
        .filter(e -> told.contains(e.getKey()))
        .map(Map.Entry::getValue)
        .collect(Collectors.toSet());
  }
}

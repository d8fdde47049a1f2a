package org.standproud.access;

import java.io.Serializable;
import java.security.Principal;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who asks.
 *
 * @param name the name that goes into records
 * @param roles what he is trusted with
 * @param keyId the key he showed; null if he showed a token, or nobody had to show anything
 */
public record Caller(String name, Set<Role> roles, @Nullable String keyId)
    implements Principal, Serializable {

  /** Whoever asks a service that asks nobody who he is; he may do everything. */
  public static final Caller ANONYMOUS = new Caller("anonymous", Set.of(Role.values()), null);

  /** Keeps the roles as they are now. */
  public Caller {
    roles = Set.copyOf(roles);
  }

  @Override
  public String getName() {
    return name;
  }
}

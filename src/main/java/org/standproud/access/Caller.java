package org.standproud.access;

import java.io.Serializable;
import java.security.Principal;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A caller.
 *
 * @param name the name in records
 * @param roles its roles
 * @param keyId its key; null for a token or without access control
 */
public record Caller(String name, Set<Role> roles, @Nullable String keyId)
    implements Principal, Serializable {

  /** The caller while access control is off; it may do everything. */
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

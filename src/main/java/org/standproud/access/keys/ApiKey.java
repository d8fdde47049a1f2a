package org.standproud.access.keys;

import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.access.Caller;
import org.standproud.access.Role;

/**
 * A key without its secret, which is not stored.
 *
 * @param id its id in lists and records; not secret
 * @param caller name of the caller, as records show it
 * @param roles the roles of the caller
 * @param madeAt time of creation
 * @param madeBy its creator
 * @param expiresAt expiry
 * @param revokedAt time of revocation; absent if not revoked
 * @param replaces the key it replaces; absent if none
 */
public record ApiKey(
    String id,
    String caller,
    Set<Role> roles,
    Instant madeAt,
    String madeBy,
    Instant expiresAt,
    @Nullable Instant revokedAt,
    @Nullable String replaces) {

  /** Keeps the roles as they are now. */
  public ApiKey {
    roles = Set.copyOf(roles);
  }

  /** Why it is invalid at a time; null if it is valid. */
  @Nullable String closed(Instant now) {
    if (revokedAt != null) {
      return "The key was revoked.";
    }
    return now.isBefore(expiresAt) ? null : "The key expired at " + expiresAt + ".";
  }

  /** The caller of the key. */
  public Caller holder() {
    return new Caller(caller, roles, id);
  }
}

package org.standproud.access.keys;

import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.access.Caller;
import org.standproud.access.Role;

/**
 * A key as it may be shown: everything of it but its secret.
 *
 * @param id its name in lists and records; no secret
 * @param caller who shows it, as named in records
 * @param roles what the caller may do
 * @param madeAt when it was made
 * @param madeBy who made it
 * @param expiresAt from when on it opens nothing
 * @param revokedAt when it was taken back, null if it was not
 * @param replaces the key it was made to replace, null if none
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

  /** Why it opens nothing at a time; null if it opens. */
  @Nullable String closed(Instant now) {
    if (revokedAt != null) {
      return "The key was revoked.";
    }
    return now.isBefore(expiresAt) ? null : "The key expired at " + expiresAt + ".";
  }

  /** Who shows it. */
  public Caller holder() {
    return new Caller(caller, roles, id);
  }
}

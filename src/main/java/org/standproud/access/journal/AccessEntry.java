package org.standproud.access.journal;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Worded;

/**
 * A denied call, or a change of a key.
 *
 * @param id its id; ids increase with time
 * @param kind denied, key made, key rotated, key revoked, signed in or entries removed
 * @param first time, or time of the first
 * @param last time of the last
 * @param times number of calls counted in it
 * @param about caller, key and address
 */
public record AccessEntry(UUID id, Kind kind, Instant first, Instant last, int times, About about) {

  /** What happened. */
  public enum Kind implements Worded {
    /** A call was denied. */
    DENIED,
    /** A key was created. */
    KEY_MADE,
    /** A key was rotated. */
    KEY_ROTATED,
    /** A key was revoked. */
    KEY_REVOKED,
    /** A person signed in to the pages. */
    SIGNED_IN,
    /** Old entries were deleted. */
    ENTRIES_REMOVED;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * The caller and address of a denied call, or the key and what was done with it.
   *
   * <p>Of a call, only the row of the access table is stored, not the address: text that a stranger
   * chooses is stored nowhere.
   *
   * @param caller the caller, as far as authenticated
   * @param keyId the key, if it is a key of this service
   * @param address network address of the caller
   * @param method HTTP method
   * @param place the row of the access table that the address falls under
   * @param status HTTP status of the answer
   * @param note a description
   */
  public record About(
      @Nullable String caller,
      @Nullable String keyId,
      @Nullable String address,
      @Nullable String method,
      @Nullable String place,
      @Nullable Integer status,
      String note) {

    /** A change of a key. */
    public static About key(String caller, @Nullable String keyId, String note) {
      return new About(caller, keyId, null, null, null, null, note);
    }
  }
}

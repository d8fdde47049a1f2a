package org.standproud.access.journal;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Worded;

/**
 * An event in the access journal.
 *
 * @param id its id; ids in order are times in order
 * @param kind what happened
 * @param first when, or when first
 * @param last when last
 * @param times how often
 * @param about who was denied, or who did something with a key
 */
public record AccessEntry(UUID id, Kind kind, Instant first, Instant last, int times, About about) {

  /** What happened. */
  public enum Kind implements Worded {
    /** A call was denied. */
    DENIED,
    /** A key was made. */
    KEY_MADE,
    /** A key was replaced by another. */
    KEY_ROTATED,
    /** A key was taken back. */
    KEY_REVOKED,
    /** A person signed in to the pages. */
    SIGNED_IN,
    /** Old entries were taken out of the journal. */
    ENTRIES_REMOVED;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * Who and what. Of a call, only the row of the access table is stored, not the address: what a
   * stranger writes into an address is stored nowhere.
   *
   * @param caller who, as far as it was proved
   * @param keyId the key, if it is one of ours
   * @param address from which network address
   * @param method HTTP method
   * @param place the row of the table of access
   * @param status what was answered
   * @param note in words
   */
  public record About(
      @Nullable String caller,
      @Nullable String keyId,
      @Nullable String address,
      @Nullable String method,
      @Nullable String place,
      @Nullable Integer status,
      String note) {

    /** Something done with a key. */
    public static About key(String caller, @Nullable String keyId, String note) {
      return new About(caller, keyId, null, null, null, null, note);
    }
  }
}

package org.standproud.access.journal;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A query for journal entries that match every filter.
 *
 * @param kind kind of entry, null for any
 * @param caller caller, null for any
 * @param status status, null for any
 * @param from start of the period, null for no limit
 * @param until end of the period, exclusive, null for no limit
 * @param before only entries older than this one, null for no limit
 */
public record JournalQuery(
    AccessEntry.@Nullable Kind kind,
    @Nullable String caller,
    @Nullable Integer status,
    @Nullable Instant from,
    @Nullable Instant until,
    @Nullable UUID before) {

  /** A condition of constant text; caller input is only in its values. */
  String condition() {
    List<String> all = new ArrayList<>(List.of("1 = 1"));
    add(all, "kind = ?", kind);
    add(all, "caller = ?", caller);
    add(all, "status = ?", status);
    add(all, "last_at >= ?", from);
    add(all, "first_at < ?", until);
    add(all, "id < ?", before);
    return String.join(" and ", all);
  }

  /** The values of the condition, in order. */
  List<Object> values() {
    List<Object> all = new ArrayList<>();
    add(all, kind == null ? null : kind.words());
    add(all, caller);
    add(all, status);
    add(all, from == null ? null : from.atOffset(ZoneOffset.UTC));
    add(all, until == null ? null : until.atOffset(ZoneOffset.UTC));
    add(all, before);
    return all;
  }

  private static void add(List<String> all, String condition, @Nullable Object value) {
    if (value != null) {
      all.add(condition);
    }
  }

  private static void add(List<Object> all, @Nullable Object value) {
    if (value != null) {
      all.add(value);
    }
  }
}

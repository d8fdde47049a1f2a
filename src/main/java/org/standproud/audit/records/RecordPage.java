package org.standproud.audit.records;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Some of the records that a query finds, newest first.
 *
 * @param records the records
 * @param next cursor for the records after these, null when these are the last
 */
public record RecordPage(List<RecordSummary> records, @Nullable String next) {

  /** Keeps the list as it is now. */
  public RecordPage {
    records = List.copyOf(records);
  }
}

package org.standproud.audit.records;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A page of the records of a query, newest first.
 *
 * @param records the records
 * @param next cursor for the next page, null on the last page
 */
public record RecordPage(List<RecordSummary> records, @Nullable String next) {

  /** Keeps the list as it is now. */
  public RecordPage {
    records = List.copyOf(records);
  }
}

package org.standproud.audit.records;

import java.util.SortedMap;
import java.util.TreeMap;
import org.standproud.audit.LogEntry;
import org.standproud.audit.chain.ChainCheck;
import org.standproud.audit.chain.ChainFault.Kind;

/**
 * Compares a log outside the chain with its digests in the chain. Entries from before the log was
 * chained are not compared. Not thread-safe.
 */
final class LogCheck {

  private final ChainedLog log;
  private final SortedMap<Long, String> before;
  private final SortedMap<Long, Chained> chained = new TreeMap<>();

  private record Chained(long record, String digest) {}

  /** Starts a check at the first record; reads the log now. */
  LogCheck(ChainedLog log) {
    this.log = log;
    this.before = log.digests();
  }

  /**
   * Adds the next entry.
   *
   * @param record position of the record in the chain
   * @param entry the entry
   */
  void next(long record, LogEntry entry) {
    if (!entry.log().equals(log.name())) {
      return;
    }
    if (entry.place() == 1) {
      chained.clear(); // The log was restarted, in a database into which the chain was restored.
    }
    chained.put(entry.place(), new Chained(record, entry.digest()));
  }

  /** Reports differences. */
  void finish(ChainCheck check) {
    if (chained.isEmpty()) {
      return;
    }
    // Read again for new entries; those read before are all in the chain.
    SortedMap<Long, String> now = log.digests();
    chained.forEach(
        (place, entry) -> {
          String found = now.get(place);
          if (found == null) {
            check.fault(Kind.DELETED, entry.record(), which(place) + " is gone");
          } else if (!found.equals(entry.digest())) {
            check.fault(Kind.EDITED, entry.record(), which(place) + " is not as it was entered");
          }
        });
    long last = chained.values().stream().mapToLong(Chained::record).max().orElseThrow();
    before.tailMap(chained.firstKey()).keySet().stream()
        .filter(place -> !chained.containsKey(place))
        .forEach(place -> check.fault(Kind.INSERTED, last, which(place) + " was not entered so"));
  }

  private String which(long place) {
    return "Entry " + place + " of the log of the " + log.name();
  }
}

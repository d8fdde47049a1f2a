package org.standproud.audit.chain;

import java.util.List;

/**
 * The result of a chain check.
 *
 * @param intact number of intact records
 * @param last position of the last of them
 * @param faults every break of the chain; empty if it is intact
 */
public record ChainReport(long intact, long last, List<ChainFault> faults) {

  /** Keeps the faults as they are now. */
  public ChainReport {
    faults = List.copyOf(faults);
  }

  /**
   * Whether the chain is intact.
   *
   * @return true for an intact chain
   */
  public boolean whole() {
    return faults.isEmpty();
  }
}

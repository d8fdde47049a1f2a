package org.standproud.audit.chain;

import java.util.List;

/**
 * What a check of a chain found.
 *
 * @param intact number of records that stand as they were written
 * @param last place of the last record that stands as it was written, 0 when there is none
 * @param faults every place where the chain is broken, none when it is whole
 */
public record ChainReport(long intact, long last, List<ChainFault> faults) {

  /** Keeps the faults as they are now. */
  public ChainReport {
    faults = List.copyOf(faults);
  }

  /**
   * Whether nothing was found.
   *
   * @return true for a whole chain
   */
  public boolean whole() {
    return faults.isEmpty();
  }
}

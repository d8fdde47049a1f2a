package org.standproud.audit.store;

/** What is written in the transaction of a record: both are on disk, or neither is. */
@FunctionalInterface
public interface Alongside {

  /** Nothing. */
  Alongside NOTHING = () -> {};

  /**
   * Writes through the data source of the records, in the thread it is called in. It is called anew
   * when the transaction is tried again.
   */
  void write();
}

package org.standproud.audit.records;

/** What is written in the transaction of a record: both are on disk, or neither is. */
@FunctionalInterface
public interface TransactionalWrite {

  /** Nothing. */
  TransactionalWrite NOTHING = () -> {};

  /**
   * Writes through the data source of the records, in the thread it is called in. It is called anew
   * when the transaction is tried again.
   */
  void write();
}

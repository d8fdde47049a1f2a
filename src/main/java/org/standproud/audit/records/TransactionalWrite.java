package org.standproud.audit.records;

/** A write in the transaction of a record: either both are stored or neither. */
@FunctionalInterface
public interface TransactionalWrite {

  /** Nothing. */
  TransactionalWrite NOTHING = () -> {};

  /**
   * Writes through the data source of the records, in the calling thread. It is called again when
   * the transaction is retried.
   */
  void write();
}

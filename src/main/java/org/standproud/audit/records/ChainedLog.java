package org.standproud.audit.records;

import java.util.SortedMap;

/** A log that lies beside the records and whose entries have their digests in the chain. */
public interface ChainedLog {

  /** What entries of the log are called in the chain. */
  String name();

  /** The digest of each entry as it now lies in the database, by its place, from 1. */
  SortedMap<Long, String> digests();
}

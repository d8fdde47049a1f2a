package org.standproud.audit.records;

import java.util.SortedMap;

/** A log outside the chain whose entries have their digests in the chain. */
public interface ChainedLog {

  /** Name of the log in the chain. */
  String name();

  /** The digest of each entry as stored now, by position, from 1. */
  SortedMap<Long, String> digests();
}

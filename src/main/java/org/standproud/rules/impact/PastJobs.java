package org.standproud.rules.impact;

import java.util.stream.Stream;

/** Where past jobs come from. */
@FunctionalInterface
public interface PastJobs {

  /** No past jobs. */
  PastJobs NONE = Stream::empty;

  /**
   * The jobs, read one after another while they are judged; the caller closes the stream. It is
   * drawn from by one thread at a time, though not always the same.
   */
  Stream<PastJob> open();
}

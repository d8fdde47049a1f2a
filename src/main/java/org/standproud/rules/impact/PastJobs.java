package org.standproud.rules.impact;

import java.util.stream.Stream;

/** The source of past jobs. */
@FunctionalInterface
public interface PastJobs {

  /** No past jobs. */
  PastJobs NONE = Stream::empty;

  /**
   * The jobs, read lazily while they are judged; the caller closes the stream. One thread at a time
   * reads it, not always the same.
   */
  Stream<PastJob> open();
}

package org.standproud.assessment;

import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;

/**
 * The trace-id of W3C Trace Context that the caller's request belongs to, as the log lines of this
 * thread carry it.
 */
public final class TraceId {

  private static final String IN_LOG = "traceId";

  private TraceId() {}

  /** The id, null outside of any request. */
  public static @Nullable String current() {
    return MDC.get(IN_LOG);
  }

  /**
   * Takes over the id of a request in a thread that works for it.
   *
   * @param id the id there, null for none
   * @return gives the thread its own again
   */
  public static MDC.MDCCloseable in(@Nullable String id) {
    return MDC.putCloseable(IN_LOG, id);
  }
}

package org.standproud.assessment;

import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;

/** The W3C Trace Context trace-id of the caller's request, as in the log lines of this thread. */
public final class TraceId {

  private static final String IN_LOG = "traceId";

  private TraceId() {}

  /** The id; null outside a request. */
  public static @Nullable String current() {
    return MDC.get(IN_LOG);
  }

  /**
   * Sets the id of a request in a thread that works for it.
   *
   * @param id the id there, null for none
   * @return restores the thread's own id
   */
  public static MDC.MDCCloseable in(@Nullable String id) {
    return MDC.putCloseable(IN_LOG, id);
  }
}

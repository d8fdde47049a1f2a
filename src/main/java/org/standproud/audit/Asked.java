package org.standproud.audit;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * The caller and the job of a request, in ISA-95 terms.
 *
 * @param caller the caller
 * @param jobOrder job order, or null
 * @param workMaster work master, or null
 * @param operation operation of the job, or null
 * @param machine machine name, or null
 * @param trace trace-id of W3C Trace Context, or null; null is left out of the text, as in records
 *     from before it was added
 */
public record Asked(
    String caller,
    @Nullable String jobOrder,
    @Nullable String workMaster,
    @Nullable String operation,
    @Nullable String machine,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String trace) {

  /** Refuses words that cannot be searched for. */
  public Asked {
    Words.required("caller", caller);
    Words.optional("job order", jobOrder);
    Words.optional("work master", workMaster);
    Words.optional("operation", operation);
    Words.optional("machine", machine);
    Words.optional("trace", trace);
  }

  /**
   * A request without a trace.
   *
   * @param caller the caller
   * @param jobOrder job order, or null
   * @param workMaster work master, or null
   * @param operation operation of the job, or null
   * @param machine machine name, or null
   */
  public Asked(
      String caller,
      @Nullable String jobOrder,
      @Nullable String workMaster,
      @Nullable String operation,
      @Nullable String machine) {
    this(caller, jobOrder, workMaster, operation, machine, null);
  }
}

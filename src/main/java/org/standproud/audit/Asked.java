package org.standproud.audit;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * Who asked, and about which job; job words as in ISA-95.
 *
 * @param caller who asked
 * @param jobOrder job order, null when the caller named none
 * @param workMaster work master, null when the caller named none
 * @param operation operation of the job, null when the caller named none
 * @param machine machine name, null when the caller named none
 * @param trace trace-id of W3C Trace Context, null when there is none; left out of the text then,
 *     as it was before there was one
 */
public record Asked(
    String caller,
    @Nullable String jobOrder,
    @Nullable String workMaster,
    @Nullable String operation,
    @Nullable String machine,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String trace) {

  /** Refuses words that could not be searched for. */
  public Asked {
    Words.required("caller", caller);
    Words.optional("job order", jobOrder);
    Words.optional("work master", workMaster);
    Words.optional("operation", operation);
    Words.optional("machine", machine);
    Words.optional("trace", trace);
  }

  /**
   * A request outside of any trace.
   *
   * @param caller who asked
   * @param jobOrder job order, null when the caller named none
   * @param workMaster work master, null when the caller named none
   * @param operation operation of the job, null when the caller named none
   * @param machine machine name, null when the caller named none
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

package org.standproud.assessment.job;

import java.util.List;
import java.util.Map;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.request.Problem;

/** A request that does not describe a job that can be planned. */
public final class JobRejectedException extends Refusal {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * Lists the problems.
   *
   * @param problems every problem, at least one
   */
  public JobRejectedException(List<Problem> problems) {
    super(
        RefusalKind.JOB_REFUSED,
        problems.size() == 1
            ? "One thing is wrong with the job"
            : problems.size() + " things are wrong with the job",
        Map.of("errors", List.copyOf(problems)));
    this.problems = List.copyOf(problems);
  }

  /** Every problem. */
  public List<Problem> problems() {
    return problems;
  }
}

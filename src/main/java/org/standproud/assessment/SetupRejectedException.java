package org.standproud.assessment;

import java.util.List;
import java.util.Map;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.request.Problem;

/** A request that does not describe a set-up. */
public final class SetupRejectedException extends Refusal {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * Lists the problems.
   *
   * @param problems every problem, at least one
   */
  public SetupRejectedException(List<Problem> problems) {
    super(
        RefusalKind.SETUP_REFUSED,
        problems.size() == 1
            ? "One thing is wrong with the set-up"
            : problems.size() + " things are wrong with the set-up",
        Map.of("errors", List.copyOf(problems)));
    this.problems = List.copyOf(problems);
  }

  /** Every problem. */
  public List<Problem> problems() {
    return problems;
  }
}

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
   * Lists what is wrong.
   *
   * @param problems everything that is wrong with it, at least one
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

  /** Everything that is wrong with it. */
  public List<Problem> problems() {
    return problems;
  }
}

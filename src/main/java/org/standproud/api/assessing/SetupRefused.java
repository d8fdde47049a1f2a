package org.standproud.api.assessing;

import java.util.List;
import org.standproud.setup.reading.Problem;

/** A request that says no set-up. */
public final class SetupRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * Says what is wrong.
   *
   * @param problems everything that is wrong with it, at least one
   */
  public SetupRefused(List<Problem> problems) {
    super(
        problems.size() == 1
            ? "One thing is wrong with the set-up"
            : problems.size() + " things are wrong with the set-up");
    this.problems = List.copyOf(problems);
  }

  /** Everything that is wrong with it. */
  public List<Problem> problems() {
    return problems;
  }
}

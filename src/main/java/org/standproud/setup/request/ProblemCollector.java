package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong, up to a bound: a request full of faults must not make a huge answer. */
final class ProblemCollector {

  /** As many problems as one answer lists. */
  static final int GREATEST_COUNT = 200;

  private final List<Problem> problems = new ArrayList<>();
  private boolean more;

  void add(Problem problem) {
    if (problems.size() < GREATEST_COUNT) {
      problems.add(problem);
    } else {
      more = true;
    }
  }

  boolean none() {
    return problems.isEmpty();
  }

  List<Problem> list() {
    List<Problem> all = new ArrayList<>(problems);
    if (more) {
      all.add(
          new Problem("", null, "there are more problems than are listed here", null, null, null));
    }
    return List.copyOf(all);
  }
}

package org.standproud.setup.request;

import java.util.List;
import org.standproud.setup.Setup;

/** What came of reading a request. */
public sealed interface Reading {

  /**
   * The request describes a set-up.
   *
   * @param setup the set-up in SI units
   */
  record Accepted(Setup setup) implements Reading {}

  /**
   * The request cannot be read as a set-up.
   *
   * @param problems everything that is wrong with it, at least one
   */
  record Refused(List<Problem> problems) implements Reading {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}

package org.standproud.setup.request;

import java.util.List;
import org.standproud.setup.MillingJob;

/** The result of reading a job. */
public sealed interface JobReading {

  /**
   * The request describes a job.
   *
   * @param job the job in SI units
   */
  record Accepted(MillingJob job) implements JobReading {}

  /**
   * The request cannot be read as a job.
   *
   * @param problems everything that is wrong with it, at least one
   */
  record Refused(List<Problem> problems) implements JobReading {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}

package org.standproud.rules.publishing;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.impact.ImpactReport;

/**
 * The last complete work on past jobs, so that who looked at what a draft changes does not wait for
 * the same again when it is published. It serves for the same cards over the same revision, and for
 * ten minutes only: jobs judged since are not in it.
 */
final class RecentImpact {

  /** Common practice, no source: time to read a report, not to fill the records. */
  static final Duration KEPT = Duration.ofMinutes(10);

  private @Nullable Worked last;

  /**
   * Which work it was.
   *
   * @param contentHash of the cards that judged
   * @param parent the latest revision then, or null if there was none
   */
  record Question(String contentHash, @Nullable String parent) {}

  private record Worked(Question question, ImpactReport report, Instant begun) {}

  /**
   * Keeps a report; one that was ended early is let go.
   *
   * @param question what was asked
   * @param report what came of it
   * @param begun when the records began to be read
   */
  synchronized void keep(Question question, ImpactReport report, Instant begun) {
    if (report.complete()) {
      last = new Worked(question, report, begun);
    }
  }

  /**
   * What was found, if it was just asked.
   *
   * @param question what is asked
   * @param now when
   */
  synchronized Optional<ImpactReport> find(Question question, Instant now) {
    Worked worked = last;
    return worked != null
            && worked.question.equals(question)
            && now.isBefore(worked.begun.plus(KEPT))
        ? Optional.of(worked.report)
        : Optional.empty();
  }
}

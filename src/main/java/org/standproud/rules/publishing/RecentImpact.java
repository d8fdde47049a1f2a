package org.standproud.rules.publishing;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.impact.ImpactReport;

/**
 * The last complete impact report, so that publishing does not repeat the work just done for a
 * draft. It is valid for the same cards over the same revision, and for ten minutes only: jobs
 * judged since are not in it.
 */
final class RecentImpact {

  /** Common practice, no source: time to read a report. */
  static final Duration KEPT = Duration.ofMinutes(10);

  private @Nullable Worked last;

  /**
   * The key of a report.
   *
   * @param contentHash hash of the cards
   * @param parent the latest revision then, or null
   */
  record Question(String contentHash, @Nullable String parent) {}

  private record Worked(Question question, ImpactReport report, Instant begun) {}

  /**
   * Stores a report, unless it was cancelled.
   *
   * @param question the key
   * @param report the report
   * @param begun when reading of the records began
   */
  synchronized void keep(Question question, ImpactReport report, Instant begun) {
    if (report.complete()) {
      last = new Worked(question, report, begun);
    }
  }

  /**
   * The report, if it is recent.
   *
   * @param question the key
   * @param now the time
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

package org.standproud.rules.impact;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What would change for past jobs. Their recorded evidence is judged again; it is not computed
 * again.
 *
 * @param revision the revision used
 * @param jobs number of jobs judged
 * @param complete false if the work was cancelled before the last job
 * @param verdicts number of jobs by change of verdict, such as "run -&gt; do not run"
 * @param changed the first jobs whose verdict changes, at most 1000
 * @param byCard the changes by card, for cards with a change
 * @param unreadable records whose evidence this program cannot read, at most 1000
 */
public record ImpactReport(
    String revision,
    long jobs,
    boolean complete,
    Map<String, Long> verdicts,
    List<VerdictChange> changed,
    Map<String, CardImpact> byCard,
    List<String> unreadable) {

  /** Most jobs named in a report. */
  public static final int MOST_NAMED = 1000;

  /** Most jobs named for one card. */
  public static final int MOST_NAMED_A_CARD = 20;

  /** Copies the collections. */
  public ImpactReport {
    verdicts = Collections.unmodifiableMap(new TreeMap<>(verdicts));
    changed = List.copyOf(changed);
    byCard = Collections.unmodifiableMap(new TreeMap<>(byCard));
    unreadable = List.copyOf(unreadable);
  }

  /**
   * The same report for a revision with the same cards: a draft gets an author when it is
   * published.
   *
   * @param published id of that revision
   */
  public ImpactReport under(String published) {
    return new ImpactReport(published, jobs, complete, verdicts, changed, byCard, unreadable);
  }

  /** Number of jobs with another verdict. */
  public long changedVerdicts() {
    return verdicts.values().stream().mapToLong(Long::longValue).sum();
  }

  /**
   * A job that would get another verdict.
   *
   * @param record id of its assessment
   * @param jobOrder its ISA-95 job order
   * @param from the verdict it got
   * @param to the verdict it would get
   */
  public record VerdictChange(String record, @Nullable String jobOrder, String from, String to) {}

  /**
   * The changes for one card.
   *
   * @param appears number of jobs in which its finding is new
   * @param vanishes number of jobs in which its finding disappears
   * @param changes number of jobs in which its finding has another severity, or changes between
   *     open and fail
   * @param records the first of these assessments, at most 20
   */
  public record CardImpact(long appears, long vanishes, long changes, List<String> records) {
    /** Copies the list. */
    public CardImpact {
      records = List.copyOf(records);
    }
  }
}

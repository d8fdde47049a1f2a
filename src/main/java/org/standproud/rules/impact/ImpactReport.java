package org.standproud.rules.impact;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What would change for past jobs.
 *
 * @param revision the revision they were judged under
 * @param jobs how many were judged
 * @param complete false if the work was cancelled before the last job
 * @param verdicts how many went from one verdict to another, such as "run -> do not run"
 * @param changed the first jobs whose verdict changes, at most {@link #MOST_NAMED}, by record
 * @param byCard what changes for each card for which something does
 * @param unreadable records whose evidence does not fit the vocabulary, at most {@link #MOST_NAMED}
 */
public record ImpactReport(
    String revision,
    long jobs,
    boolean complete,
    Map<String, Long> verdicts,
    List<VerdictChange> changed,
    Map<String, CardImpact> byCard,
    List<String> unreadable) {

  /** Jobs named in a report. */
  public static final int MOST_NAMED = 1000;

  /** Jobs named for one card. */
  public static final int MOST_NAMED_A_CARD = 20;

  /** Copies the collections. */
  public ImpactReport {
    verdicts = Collections.unmodifiableMap(new TreeMap<>(verdicts));
    changed = List.copyOf(changed);
    byCard = Collections.unmodifiableMap(new TreeMap<>(byCard));
    unreadable = List.copyOf(unreadable);
  }

  /**
   * The same for a revision with the same cards: what a draft would do, once it has an author.
   *
   * @param published id of that revision
   */
  public ImpactReport under(String published) {
    return new ImpactReport(published, jobs, complete, verdicts, changed, byCard, unreadable);
  }

  /** How many jobs would get another verdict. */
  public long changedVerdicts() {
    return verdicts.values().stream().mapToLong(Long::longValue).sum();
  }

  /**
   * A job that would get another verdict.
   *
   * @param record id of its record
   * @param jobOrder the job order, or null if none was given
   * @param from the verdict it got
   * @param to the verdict it would get
   */
  public record VerdictChange(String record, @Nullable String jobOrder, String from, String to) {}

  /**
   * What changes for one card.
   *
   * @param appears jobs in which its finding is new
   * @param vanishes jobs in which its finding is gone
   * @param changes jobs in which its finding has another severity, or was open and fails, or failed
   *     and is open
   * @param records the first of these jobs by record, at most {@link #MOST_NAMED_A_CARD}
   */
  public record CardImpact(long appears, long vanishes, long changes, List<String> records) {
    /** Copies the list. */
    public CardImpact {
      records = List.copyOf(records);
    }
  }
}

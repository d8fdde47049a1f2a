package org.standproud.rules.impact;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.standproud.rules.impact.ImpactReport.CardImpact;
import org.standproud.rules.impact.ImpactReport.VerdictChange;
import org.standproud.rules.impact.PastJob.Found;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.RuleKinds;

/** Counts changes for the jobs of one worker; the tallies of all workers are added up. */
final class ImpactTally {

  private static final class CardCount {
    long appears;
    long vanishes;
    long changes;
    final TreeSet<String> records = new TreeSet<>();

    void note(String record) {
      records.add(record);
      if (records.size() > ImpactReport.MOST_NAMED_A_CARD) {
        records.pollLast();
      }
    }
  }

  private long jobs;
  private final Map<String, Long> verdicts = new HashMap<>();
  private final TreeSet<VerdictChange> changed =
      new TreeSet<>(Comparator.comparing(VerdictChange::record));
  private final TreeSet<String> unreadable = new TreeSet<>();
  private final Map<String, CardCount> cards = new HashMap<>();

  void add(PastJob job, RuleKinds now, String verdict) {
    jobs++;
    if (!verdict.equals(job.verdict())) {
      verdicts.merge(job.verdict() + " -> " + verdict, 1L, Long::sum);
      changed.add(new VerdictChange(job.record(), job.jobOrder(), job.verdict(), verdict));
      trim(changed);
    }
    Map<String, Found> gone = new HashMap<>(job.findings());
    for (CardKind card : now.cards()) {
      if (card.isFinding()) {
        Found before = gone.remove(card.id());
        if (before == null) {
          count(card.id(), job).appears++;
        } else if (!before.equals(Found.of(card))) {
          count(card.id(), job).changes++;
        }
      }
    }
    gone.keySet().forEach(id -> count(id, job).vanishes++);
  }

  private CardCount count(String card, PastJob job) {
    CardCount count = cards.computeIfAbsent(card, c -> new CardCount());
    count.note(job.record());
    return count;
  }

  void addUnreadable(PastJob job) {
    jobs++;
    unreadable.add(job.record());
    trim(unreadable);
  }

  void add(ImpactTally other) {
    jobs += other.jobs;
    other.verdicts.forEach((change, count) -> verdicts.merge(change, count, Long::sum));
    changed.addAll(other.changed);
    trim(changed);
    unreadable.addAll(other.unreadable);
    trim(unreadable);
    other.cards.forEach(
        (id, theirs) -> {
          CardCount ours = cards.computeIfAbsent(id, c -> new CardCount());
          ours.appears += theirs.appears;
          ours.vanishes += theirs.vanishes;
          ours.changes += theirs.changes;
          theirs.records.forEach(ours::note);
        });
  }

  private static void trim(TreeSet<?> set) {
    while (set.size() > ImpactReport.MOST_NAMED) {
      set.pollLast();
    }
  }

  ImpactReport report(String revision, boolean complete) {
    Map<String, CardImpact> byCard = new TreeMap<>();
    cards.forEach(
        (id, c) ->
            byCard.put(
                id, new CardImpact(c.appears, c.vanishes, c.changes, c.records.stream().toList())));
    return new ImpactReport(
        revision,
        jobs,
        complete,
        verdicts,
        changed.stream().toList(),
        byCard,
        unreadable.stream().toList());
  }
}

package org.standproud.rules.impact;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleKinds;

/**
 * Judges past jobs again, from their stored evidence and without computing any mechanics, on all
 * cores. The verdict of findings is not known here and is passed in.
 */
public final class Impact {

  private static final int JOBS_AT_ONCE = 64;

  private final Verdicts verdicts;
  private final int workers;

  /**
   * On all cores.
   *
   * @param verdicts the verdict of findings
   */
  public Impact(Verdicts verdicts) {
    this(verdicts, Runtime.getRuntime().availableProcessors());
  }

  /**
   * On some cores.
   *
   * @param verdicts the verdict of findings
   * @param workers number of concurrent jobs, at least one
   */
  public Impact(Verdicts verdicts, int workers) {
    this.verdicts = verdicts;
    this.workers = workers;
  }

  /** The verdict of findings; called from several threads. */
  @FunctionalInterface
  public interface Verdicts {

    /**
     * The verdict, in words.
     *
     * @param ruleBase the rule base
     * @param kinds the outcomes of its cards
     * @param evidence the evidence
     */
    String of(RuleBase ruleBase, RuleKinds kinds, Evidence evidence);
  }

  /** Observes the work and may cancel it. */
  public interface Progress {

    /** Does nothing. */
    Progress UNWATCHED = done -> {};

    /**
     * Called now and then from the worker threads.
     *
     * @param jobs number of jobs done
     */
    void done(long jobs);

    /** Whether to cancel the work. */
    default boolean cancelled() {
      return false;
    }
  }

  /**
   * What would change for past jobs.
   *
   * @param candidate the cards to judge them with
   * @param past the jobs
   * @param progress observes the work and may cancel it; an interruption of the calling thread
   *     cancels it as well
   */
  public ImpactReport of(RuleBase candidate, PastJobs past, Progress progress) {
    try (Stream<PastJob> jobs = past.open()) {
      return new Run(candidate, jobs.iterator(), progress).report();
    }
  }

  private final class Run {
    private final RuleBase candidate;
    private final Iterator<PastJob> jobs;
    private final Progress progress;
    private final AtomicBoolean ended = new AtomicBoolean();
    private long done;

    Run(RuleBase candidate, Iterator<PastJob> jobs, Progress progress) {
      this.candidate = candidate;
      this.jobs = jobs;
      this.progress = progress;
    }

    ImpactReport report() {
      ExecutorService threads = Executors.newFixedThreadPool(workers);
      ImpactTally sum = new ImpactTally();
      try {
        List<Future<ImpactTally>> parts = new ArrayList<>();
        for (int i = 0; i < workers; i++) {
          parts.add(threads.submit(this::work));
        }
        for (Future<ImpactTally> part : parts) {
          sum.add(finished(part));
        }
      } finally {
        threads.shutdownNow();
      }
      return sum.report(candidate.revision().id(), !ended.get());
    }

    private ImpactTally finished(Future<ImpactTally> part) {
      boolean interrupted = false;
      try {
        while (true) {
          try {
            return part.get();
          } catch (InterruptedException e) {
            interrupted = true;
            ended.set(true);
          }
        }
      } catch (ExecutionException e) {
        ended.set(true);
        throw new IllegalStateException("past jobs could not be judged again", e.getCause());
      } finally {
        if (interrupted) {
          Thread.currentThread().interrupt();
        }
      }
    }

    private ImpactTally work() {
      ImpactTally tally = new ImpactTally();
      for (List<PastJob> some = next(0); !some.isEmpty(); some = next(some.size())) {
        some.forEach(job -> judge(job, tally));
      }
      return tally;
    }

    private void judge(PastJob job, ImpactTally tally) {
      Evidence evidence;
      RuleKinds kinds;
      try {
        evidence = job.evidence().get();
        kinds = candidate.kinds(evidence);
      } catch (IllegalArgumentException e) {
        tally.addUnreadable(job);
        return;
      }
      tally.add(job, kinds, verdicts.of(candidate, kinds, evidence));
    }

    private synchronized List<PastJob> next(int justDone) {
      done += justDone;
      if (justDone > 0) {
        progress.done(done);
      }
      List<PastJob> some = new ArrayList<>();
      while (some.size() < JOBS_AT_ONCE && jobs.hasNext()) {
        if (ended.get() || progress.cancelled()) {
          ended.set(true);
          return List.of();
        }
        some.add(jobs.next());
      }
      return some;
    }
  }
}

package org.standproud.shop.impact;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoreBusy;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.publishing.CardEdit;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.shop.CardsRejectedException;
import org.standproud.shop.RulesProperties;

/** Judges past jobs again in the background, one change of cards after another. */
@Component
public final class ImpactJobs implements DisposableBean {

  private static final Logger LOG = LoggerFactory.getLogger(ImpactJobs.class);
  private static final int MOST_WAITING = 8;
  private static final int MOST_KEPT = 50;

  private final RuleBasePublisher desk;
  private final Records records;
  private final long mostRecords;
  private final Map<UUID, ImpactJob> jobs = new LinkedHashMap<>();
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(task -> new Thread(task, "impact"));

  ImpactJobs(RuleBasePublisher desk, Records records, RulesProperties properties) {
    this.desk = desk;
    this.records = records;
    this.mostRecords = properties.impact().mostRecords();
  }

  /**
   * Starts a run.
   *
   * @param edit the change of cards; must pass the gate
   * @param author who started it
   * @throws CardsRejectedException if the cards do not pass
   * @throws StoreBusy if too many runs wait
   */
  public ImpactJob start(CardEdit edit, String author) {
    RuleBase candidate = passed(desk.validate(edit));
    long total = Math.min(mostRecords, records.count(RecordQuery.all()));
    ImpactJob job = new ImpactJob(author, candidate, Clock.systemUTC().instant(), total);
    keep(job);
    worker.execute(() -> work(job));
    return job;
  }

  private static RuleBase passed(GateResult result) {
    if (result instanceof GateResult.Published published) {
      return published.ruleBase();
    }
    throw new CardsRejectedException(((GateResult.Rejected) result).errors());
  }

  private synchronized void keep(ImpactJob job) {
    long waiting = jobs.values().stream().filter(j -> !j.account().ended()).count();
    if (waiting >= MOST_WAITING) {
      throw new StoreBusy();
    }
    jobs.put(job.id(), job);
    if (jobs.size() > MOST_KEPT) {
      jobs.values().stream()
          .filter(j -> j.account().ended())
          .findFirst()
          .ifPresent(oldest -> jobs.remove(oldest.id()));
    }
  }

  private void work(ImpactJob job) {
    if (!job.begin()) {
      return;
    }
    try {
      ImpactReport report = desk.impact(job.candidate(), job);
      job.end(report.complete() ? ImpactJob.State.DONE : ImpactJob.State.CANCELLED, report);
    } catch (RuntimeException e) {
      LOG.error("Past jobs could not be judged again", e);
      job.end(ImpactJob.State.FAILED, null);
    }
  }

  /**
   * A run, until fifty others have started after it.
   *
   * @param id its id
   */
  public synchronized Optional<ImpactJob> find(UUID id) {
    return Optional.ofNullable(jobs.get(id));
  }

  /** Recent runs, oldest first. */
  public synchronized List<ImpactJob> all() {
    return List.copyOf(jobs.values());
  }

  /** Cancels the current run and those waiting. */
  @Override
  public void destroy() {
    all().forEach(ImpactJob::cancel);
    worker.shutdownNow();
  }
}

package org.standproud.assessment;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import java.util.function.Supplier;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordPayload;
import org.standproud.audit.Results;
import org.standproud.audit.Versions;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.audit.replay.AssessmentResult;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/**
 * The one path from a request to an answer: read, compute the evidence, judge, advise, and store.
 * It returns what was stored.
 */
public final class Assessor {

  private final Supplier<Catalogue> catalogue;
  private final Supplier<RuleBase> ruleBase;
  private final Function<String, List<Acceptance>> acceptances;
  private final RecordKeeping records;
  private final String engine;
  private final Clock clock;
  private final AssessmentMetrics watch;
  private final AssessmentPipeline making;

  /**
   * Concurrent assessments are limited to the processors: more would not finish sooner, and their
   * half-built objects would only load the garbage collector.
   */
  private final Semaphore turns = new Semaphore(Runtime.getRuntime().availableProcessors(), true);

  /** Stores answers. */
  @FunctionalInterface
  public interface RecordKeeping {

    /**
     * Returns once the record is on disk.
     *
     * @param record the record
     * @param numbers its digest, built while the evidence is in memory
     * @throws InterruptedException if interrupted; the record may be stored nevertheless
     */
    void append(AuditRecord record, byte[] numbers) throws InterruptedException;
  }

  /**
   * Creates an assessor without metrics.
   *
   * @param catalogue returns the catalogue, or throws {@link NotReadyException}
   * @param ruleBase returns the rule base in service, or throws {@link NotReadyException}
   * @param acceptances returns the acceptances of a job order
   * @param records stores answers
   * @param engine version of this program
   * @param clock clock for the time of answers
   */
  public Assessor(
      Supplier<Catalogue> catalogue,
      Supplier<RuleBase> ruleBase,
      Function<String, List<Acceptance>> acceptances,
      RecordKeeping records,
      String engine,
      Clock clock) {
    this(catalogue, ruleBase, acceptances, records, engine, clock, AssessmentMetrics.NONE);
  }

  /**
   * Creates an assessor.
   *
   * @param catalogue returns the catalogue, or throws {@link NotReadyException}
   * @param ruleBase returns the rule base in service, or throws {@link NotReadyException}
   * @param acceptances returns the acceptances of a job order
   * @param records stores answers
   * @param engine version of this program
   * @param clock clock for the time of answers
   * @param watch observes the stages
   */
  public Assessor(
      Supplier<Catalogue> catalogue,
      Supplier<RuleBase> ruleBase,
      Function<String, List<Acceptance>> acceptances,
      RecordKeeping records,
      String engine,
      Clock clock,
      AssessmentMetrics watch) {
    this.catalogue = catalogue;
    this.ruleBase = ruleBase;
    this.acceptances = acceptances;
    this.records = records;
    this.engine = engine;
    this.clock = clock;
    this.watch = watch;
    this.making = new AssessmentPipeline(EvidenceGathering::jointly, watch);
  }

  /**
   * An answer that is on disk.
   *
   * @param record its record
   */
  public record Answered(AuditRecord record) {

    /** Its id. */
    public UUID id() {
      return record.id();
    }

    /** The stored text. */
    public CanonicalJson json() {
      return record.account().answer();
    }
  }

  /**
   * Answers a request.
   *
   * @param json the request
   * @param caller the caller
   * @throws MalformedRequestException if the request is not JSON
   */
  public Answered assess(String json, String caller) throws InterruptedException {
    return assess(SetupRequest.of(json), caller, records);
  }

  /**
   * Answers a request with a given way to store the record.
   *
   * @param request the request
   * @param caller the caller
   * @param keeping stores the record
   * @throws NotReadyException if there is no catalogue or no rule base
   * @throws SetupRejectedException if it does not describe a set-up
   * @throws org.standproud.audit.records.RecordNotStored if the answer could not be stored
   * @throws InterruptedException if interrupted before the answer was known to be on disk
   */
  public Answered assess(SetupRequest request, String caller, RecordKeeping keeping)
      throws InterruptedException {
    // Read once: the assessment finishes on the revisions it began with.
    RuleBase rules = ruleBase.get();
    Catalogue shelves = catalogue.get();
    Setup setup =
        watch.stage(
            AssessmentMetrics.Stage.READING,
            () -> accepted(new SetupReader(shelves).read(request.tree())));
    CanonicalJson asked = request.canonical();
    Versions versions = new Versions(rules.revision().id(), shelves.revision(), engine);
    UUID id = AuditRecord.newId();
    Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
    List<Acceptance> accepted = acceptances.apply(setup.job().jobOrder());
    AssessmentResult made = made(setup, rules, new AssessmentContext(id, now, versions, accepted));
    AuditRecord record =
        new AuditRecord(
            id,
            now,
            asked(caller, setup),
            made.judged(),
            versions,
            new RecordPayload(
                asked, made.setup(), new Results.Short(made.results()), made.answer()),
            made.findings());
    try (AssessmentMetrics.Lap lap = watch.begin(AssessmentMetrics.Stage.STORING)) {
      keeping.append(record, made.numbers());
    }
    watch.answered(record);
    return new Answered(record);
  }

  /** Waits for a permit, first come first served. */
  private AssessmentResult made(Setup setup, RuleBase rules, AssessmentContext occasion)
      throws InterruptedException {
    turns.acquire();
    try {
      return making.make(setup, rules, occasion);
    } finally {
      turns.release();
    }
  }

  private static Setup accepted(Reading reading) {
    if (reading instanceof Reading.Accepted accepted) {
      return accepted.setup();
    }
    throw new SetupRejectedException(((Reading.Refused) reading).problems());
  }

  private static Asked asked(String caller, Setup setup) {
    return new Asked(
        caller,
        setup.job().jobOrder(),
        setup.job().workMaster(),
        setup.job().operation(),
        setup.machine().name(),
        TraceId.current());
  }
}

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
 * The one path from a request to an answer: read, work out the evidence, let the cards judge it,
 * advise, and put all of it on disk. What is returned is what was stored.
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
   * As many answers are made at a time as there are processors: more would be made no sooner, and
   * what each of them holds half made would have to be moved by every collection of garbage.
   */
  private final Semaphore turns = new Semaphore(Runtime.getRuntime().availableProcessors(), true);

  /** Where answers are put on disk. */
  @FunctionalInterface
  public interface RecordKeeping {

    /**
     * Returns once the record is on disk.
     *
     * @param record the record
     * @param numbers the record in short, made while it was at hand
     * @throws InterruptedException if interrupted; the record may be stored nevertheless
     */
    void append(AuditRecord record, byte[] numbers) throws InterruptedException;
  }

  /**
   * Brings together what answers are made with, without metrics.
   *
   * @param catalogue gives the catalogue, or throws {@link NotReadyException}
   * @param ruleBase gives the rule base in service, or throws {@link NotReadyException}
   * @param acceptances what people accepted for a job order
   * @param records where answers are put on disk
   * @param engine version of this program
   * @param clock gives the time of answers
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
   * Brings together what answers are made with.
   *
   * @param catalogue gives the catalogue, or throws {@link NotReadyException}
   * @param ruleBase gives the rule base in service, or throws {@link NotReadyException}
   * @param acceptances what people accepted for a job order
   * @param records where answers are put on disk
   * @param engine version of this program
   * @param clock gives the time of answers
   * @param watch sees them being made
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
   * @param record what was stored
   */
  public record Answered(AuditRecord record) {

    /** Its id. */
    public UUID id() {
      return record.id();
    }

    /** The very text that was stored. */
    public CanonicalJson json() {
      return record.account().answer();
    }
  }

  /**
   * Answers a request.
   *
   * @param json the request
   * @param caller who asks
   * @throws MalformedRequestException if the request is not JSON
   */
  public Answered assess(String json, String caller) throws InterruptedException {
    return assess(SetupRequest.of(json), caller, records);
  }

  /**
   * Answers a request, and puts the record on disk in a way of the caller's own.
   *
   * @param request the request
   * @param caller who asks
   * @param keeping puts the record on disk
   * @throws NotReadyException if there is no catalogue or no rule base
   * @throws SetupRejectedException if it does not describe a set-up
   * @throws org.standproud.audit.records.RecordNotStored if the answer could not be put on disk
   * @throws InterruptedException if interrupted before the answer was known to be on disk
   */
  public Answered assess(SetupRequest request, String caller, RecordKeeping keeping)
      throws InterruptedException {
    // Taken once: the assessment finishes on the revisions it began with.
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
            new RecordPayload(asked, made.setup(), made.evidence(), made.trace(), made.answer()),
            made.findings());
    try (AssessmentMetrics.Lap lap = watch.begin(AssessmentMetrics.Stage.STORING)) {
      keeping.append(record, made.numbers());
    }
    watch.answered(record);
    return new Answered(record);
  }

  /** In its turn, first come first served. */
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

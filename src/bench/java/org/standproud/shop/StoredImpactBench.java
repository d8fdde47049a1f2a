package org.standproud.shop;

import com.sun.management.OperatingSystemMXBean;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.standproud.advice.Adviser;
import org.standproud.assessment.AssessmentPipeline;
import org.standproud.assessment.SetupInShort;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordPayload;
import org.standproud.audit.Versions;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.records.AppendListener;
import org.standproud.audit.records.ChainKeys;
import org.standproud.audit.records.Records;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.audit.replay.AssessmentResult;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/**
 * How long it takes to judge stored answers again under other cards, read from the database. A
 * plain main, because the records have to be stored first; arguments: how many (100,000), runs (3),
 * {@code h2} or {@code postgres}. The records are answers to the demonstration set-ups with their
 * whole evidence and its numbers; setup, trace and answer are left out of their texts, which are
 * not read, so that the disk need not hold twenty gigabytes.
 */
public final class StoredImpactBench {

  private static final Authorship BY = new Authorship("bench", "bench", Instant.EPOCH, null);
  private static final CanonicalJson LEFT_OUT = CanonicalJson.parse("\"left out\"");

  private static final OperatingSystemMXBean PROCESS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private StoredImpactBench() {}

  /**
   * Stores and judges.
   *
   * @param arguments how many, runs, kind of database
   */
  public static void main(String[] arguments) throws Exception {
    int many = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
    int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 3;
    boolean postgres = arguments.length > 2 && arguments[2].equals("postgres");
    if (postgres) {
      try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
        measure("postgres", server.getPostgresDatabase(), many, runs);
      }
    } else {
      measure("h2", h2(), many, runs);
    }
    System.exit(0);
  }

  private static void measure(String name, DataSource database, int many, int runs)
      throws Exception {
    Flyway.configure().dataSource(database).load().migrate();
    KeyPlaces keys = new KeyPlaces(Files.createTempDirectory("bench"));
    ChainKeys seal = new ChainKeys(keys.chain().open(), keys.signing().open());
    RuleBase cards = cards();
    try (Records records =
        new Records(
            database,
            seal,
            keys.checkpoints(),
            Clock.systemUTC(),
            AppendListener.NOTHING,
            new SetupInShort())) {
      store(records, answers(cards), many);
      for (int run = 1; run <= runs; run++) {
        long begun = System.nanoTime();
        long worked = PROCESS.getProcessCpuTime();
        ImpactReport report =
            new Impact((base, kinds, facts) -> Adviser.verdict(base, kinds, facts).words())
                .of(cards, new RecordedJobs(records, many), Impact.Progress.UNWATCHED);
        double seconds = (System.nanoTime() - begun) / 1e9;
        if (report.jobs() != many || report.changedVerdicts() != 0) {
          throw new IllegalStateException("judged otherwise: " + report.verdicts());
        }
        System.out.printf(
            "impact.%s.records=%d impact.%s.seconds=%.1f impact.%s.cpu.seconds=%.1f run=%d%n",
            name, many, name, seconds, name, (PROCESS.getProcessCpuTime() - worked) / 1e9, run);
      }
    }
  }

  private static void store(Records records, List<AuditRecord> answers, int many) throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(64);
    List<Callable<Object>> work = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      AuditRecord answer = answers.get(i % answers.size());
      work.add(() -> records.append(again(answer)));
    }
    for (Future<Object> one : callers.invokeAll(work)) {
      one.get();
    }
    callers.shutdown();
  }

  private static AuditRecord again(AuditRecord answer) {
    return new AuditRecord(
        AuditRecord.newId(),
        answer.time(),
        answer.asked(),
        answer.judged(),
        answer.versions(),
        answer.account(),
        answer.findings());
  }

  private static List<AuditRecord> answers(RuleBase cards) throws IOException {
    Catalogue shelves =
        ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    AssessmentPipeline making = new AssessmentPipeline(EvidenceGathering::jointly);
    List<AuditRecord> answers = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("seeds/setups"))) {
      for (Path file : files.sorted().toList()) {
        Reading read = new SetupReader(shelves).readJson(Files.readString(file));
        answers.add(answer(making, cards, ((Reading.Accepted) read).setup()));
      }
    }
    return answers;
  }

  private static AuditRecord answer(AssessmentPipeline making, RuleBase cards, Setup setup) {
    Versions versions = new Versions(cards.revision().id(), "bench", "bench");
    AssessmentContext occasion =
        new AssessmentContext(AuditRecord.newId(), Instant.EPOCH, versions, List.of());
    AssessmentResult made = making.make(setup, cards, occasion);
    return new AuditRecord(
        occasion.id(),
        Instant.EPOCH,
        new Asked("bench", "J-1", null, null, null),
        made.judged(),
        versions,
        new RecordPayload(LEFT_OUT, LEFT_OUT, made.evidence(), LEFT_OUT, LEFT_OUT),
        made.findings());
  }

  private static RuleBase cards() throws IOException {
    Gate gate =
        new Gate(
            Vocabulary.all(), new QuantityText(), name -> Optional.empty(), Coverage.Demand.REFUSE);
    return ((GateResult.Published) gate.check(CardFolder.read(Path.of("rules")).files(), BY))
        .ruleBase();
  }

  private static DataSource h2() throws IOException {
    Path directory = Files.createTempDirectory("bench");
    return JdbcConnectionPool.create(
        "jdbc:h2:file:" + directory.resolve("standproud") + ";WRITE_DELAY=0", "", "");
  }
}

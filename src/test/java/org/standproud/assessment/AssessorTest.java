package org.standproud.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.records.StoreBusy;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CanonicalText;
import org.standproud.shop.SeedCatalogue;

/** The path from request to answer, without a server. */
class AssessorTest {

  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00.123456789Z"), ZoneOffset.UTC);

  private static Catalogue catalogue;
  private static RuleBase rules;
  private static String request;

  @BeforeAll
  static void readTheShop() throws IOException {
    catalogue = SeedCatalogue.read(Path.of("seeds")).get().orElseThrow();
    Gate gate =
        new Gate(
            Vocabulary.all(), new QuantityText(), name -> Optional.empty(), Coverage.Demand.REFUSE);
    Authorship by = new Authorship("engineer", "note", Instant.EPOCH, null);
    rules = ((GateResult.Published) gate.check(Path.of("rules"), by)).ruleBase();
    request = Files.readString(Path.of("seeds/setups/03-tall-plate-barely-gripped.json"));
  }

  @Test
  void whatIsAnsweredIsWhatWasStoredWithAllItStoodOn() throws InterruptedException {
    List<AuditRecord> kept = new ArrayList<>();
    Assessor.Answered answered =
        assessor((record, numbers) -> kept.add(record)).assess(request, "traveler");

    AuditRecord record = kept.get(0);
    assertThat(record.account().answer()).isEqualTo(answered.json());
    assertThat(record.id()).isEqualTo(answered.id());
    assertThat(record.asked().jobOrder()).isEqualTo("TLW-0103");
    assertThat(record.asked().machine()).isEqualTo("large knee mill");
    assertThat(record.versions().ruleBase()).isEqualTo(rules.revision().id());
    assertThat(record.versions().catalogue()).isEqualTo(catalogue.revision());
    assertThat(record.account().request().tree().get("note").stringValue()).startsWith("A plate");
    assertThat(CanonicalText.setup(record.account().setup().text()).stock().heightM())
        .isEqualTo(0.1);
    assertThat(AuditRecord.from(record.body())).isEqualTo(record);
    List<String> expected =
        answered
            .json()
            .tree()
            .get("findings")
            .valueStream()
            .map(finding -> finding.get("card").stringValue())
            .toList();
    assertThat(record.findings()).extracting(RecordedFinding::cardId).isEqualTo(expected);
  }

  @Test
  void anAnswerThatCannotBeStoredIsNotGiven() {
    Assessor assessor =
        assessor(
            (record, numbers) -> {
              throw new StoreBusy();
            });
    assertThatThrownBy(() -> assessor.assess(request, "traveler")).isInstanceOf(StoreBusy.class);
  }

  @Test
  void whatIsRefusedLeavesNoRecord() {
    List<AuditRecord> kept = new ArrayList<>();
    Assessor assessor = assessor((record, numbers) -> kept.add(record));
    assertThatThrownBy(() -> assessor.assess("{}", "traveler"))
        .isInstanceOf(SetupRejectedException.class);
    assertThatThrownBy(() -> assessor.assess("{", "traveler"))
        .isInstanceOf(MalformedRequestException.class);
    assertThat(kept).isEmpty();
  }

  @Test
  void theSameRequestOnTheSameRevisionsIsJudgedTheSame() throws InterruptedException {
    List<AuditRecord> kept = new ArrayList<>();
    Assessor assessor = assessor((record, numbers) -> kept.add(record));
    assessor.assess(request, "traveler");
    assessor.assess(request, "traveler");
    assertThat(kept.get(1).account().results()).isEqualTo(kept.get(0).account().results());
    String first = kept.get(0).id().toString();
    String second = kept.get(1).id().toString();
    assertThat(kept.get(1).account().answer().text().replace(second, first))
        .isEqualTo(kept.get(0).account().answer().text());
  }

  @Test
  void whatIsMadeWithTheSetupAtHandIsWhatIsReadOutOfTheRecord() throws Exception {
    SetupInShort inShort = new SetupInShort();
    try (Stream<Path> setups = Files.list(Path.of("seeds/setups"))) {
      for (Path setup : setups.toList()) {
        assessor((record, numbers) -> assertThat(numbers).isEqualTo(inShort.of(record)))
            .assess(Files.readString(setup), "traveler");
      }
    }
  }

  @Test
  @Timeout(60)
  void asManyAreMadeAtATimeAsThereAreProcessorsAndTheOthersWait() throws InterruptedException {
    int processors = Runtime.getRuntime().availableProcessors();
    Set<Thread> begun = ConcurrentHashMap.newKeySet();
    CountDownLatch goOn = new CountDownLatch(1);
    List<AuditRecord> kept = Collections.synchronizedList(new ArrayList<>());
    Assessor assessor =
        watched(
            (record, numbers) -> kept.add(record),
            () -> {
              begun.add(Thread.currentThread());
              goOn.await();
            });
    List<Thread> callers = new ArrayList<>();
    for (int i = 0; i < processors + 2; i++) {
      callers.add(new Thread(() -> assessedOrInterrupted(assessor)));
    }
    callers.forEach(Thread::start);
    while (begun.size() < processors
        || callers.stream().anyMatch(caller -> caller.getState() != Thread.State.WAITING)) {
      Thread.onSpinWait();
    }
    assertThat(begun).hasSize(processors);

    List<Thread> waiting = callers.stream().filter(caller -> !begun.contains(caller)).toList();
    waiting.forEach(Thread::interrupt);
    join(waiting);
    assertThat(begun).as("who waited for a turn went without one").hasSize(processors);
    goOn.countDown();
    join(callers);
    assertThat(kept).hasSize(processors);
    assessor.assess(request, "traveler");
    assertThat(kept).hasSize(processors + 1);
  }

  private static void join(List<Thread> threads) throws InterruptedException {
    for (Thread thread : threads) {
      thread.join();
    }
  }

  private static void assessedOrInterrupted(Assessor assessor) {
    try {
      assessor.assess(request, "traveler");
    } catch (InterruptedException | CancellationException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static Assessor assessor(Assessor.RecordKeeping records) {
    return watched(records, () -> {});
  }

  /** What is done as the mechanics begin; if it is interrupted the making comes to nothing. */
  @FunctionalInterface
  private interface Doing {
    void run() throws InterruptedException;
  }

  private static Assessor watched(Assessor.RecordKeeping records, Doing mechanics) {
    AssessmentMetrics watch =
        new AssessmentMetrics() {
          @Override
          public Lap begin(Stage stage) {
            if (stage == Stage.MECHANICS) {
              try {
                mechanics.run();
              } catch (InterruptedException e) {
                throw new CancellationException();
              }
            }
            return () -> {};
          }

          @Override
          public void answered(AuditRecord record) {}
        };
    return new Assessor(
        () -> catalogue, () -> rules, jobOrder -> List.of(), records, "0.1.0", NOON, watch);
  }
}

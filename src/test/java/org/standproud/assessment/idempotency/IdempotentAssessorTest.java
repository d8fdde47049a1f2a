package org.standproud.assessment.idempotency;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.assessment.Assessor;
import org.standproud.assessment.SetupRequest;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.records.ChainKeys;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.Records;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.shop.SeedCatalogue;

/** Keys at the moments that HTTP cannot bring about at will: in progress, two replicas, expiry. */
class IdempotentAssessorTest {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final IdempotencyKey KEY = new IdempotencyKey("traveler", "k-1");
  private static final Catalogue SHELVES = SeedCatalogue.read(Path.of("seeds")).get().orElseThrow();
  private static final RuleBase CARDS = cards();

  private final SetupRequest request = request("03-tall-plate-barely-gripped");
  private @TempDir Path directory;
  private JdbcConnectionPool database;
  private Records records;

  @BeforeEach
  void open() {
    database = JdbcConnectionPool.create("jdbc:h2:mem:once;DB_CLOSE_DELAY=-1", "", "");
    Flyway.configure().dataSource(database).load().migrate();
    KeyPlaces keys = new KeyPlaces(directory);
    records =
        new Records(
            database,
            new ChainKeys(keys.chain().open(), keys.signing().open()),
            keys.checkpoints(),
            at(SEVEN));
  }

  @AfterEach
  void close() throws Exception {
    records.close();
    try (var connection = database.getConnection();
        var end = connection.createStatement()) {
      end.execute("shutdown");
    }
  }

  @Test
  void whileTheFirstIsBeingAnsweredTheSecondGetsRetryAfter() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    IdempotentAssessor once =
        service(
            () -> {
              begun.countDown();
              goOn.await();
            });
    ExecutorService first = Executors.newSingleThreadExecutor();
    try {
      Future<Assessor.Answered> answer = first.submit(() -> once.assess(request, "traveler", KEY));
      begun.await();
      assertThatThrownBy(() -> once.assess(request, "traveler", KEY))
          .isInstanceOf(KeyInUseException.class);
      goOn.countDown();
      assertThat(once.assess(request, "traveler", afterAnswer(answer)).id())
          .isEqualTo(answer.get().id());
    } finally {
      first.shutdown();
    }
  }

  private static IdempotencyKey afterAnswer(Future<?> answer) throws Exception {
    answer.get();
    return KEY;
  }

  @Test
  void ofTwoReplicasThatJudgeTheSameAtOnceTheSlowerGivesTheAnswerOfTheFaster() throws Exception {
    IdempotentAssessor faster = service(() -> {});
    Assessor.Answered[] first = new Assessor.Answered[1];
    IdempotentAssessor slower = service(() -> first[0] = faster.assess(request, "traveler", KEY));

    Assessor.Answered second = slower.assess(request, "traveler", KEY);

    assertThat(second.json()).isEqualTo(first[0].json());
    assertThat(records.search(RecordQuery.all(), 10, null).records()).hasSize(1);
    assertThat(records.verify().whole()).isTrue();
  }

  @Test
  void theKeysOfTwoCallersNeverMeet() throws Exception {
    IdempotentAssessor once = service(() -> {});
    Assessor.Answered mine = once.assess(request, "traveler", KEY);
    Assessor.Answered theirs =
        once.assess(
            request("01-top-edge-wire-and-stop"), "other", new IdempotencyKey("other", "k-1"));
    assertThat(theirs.id()).isNotEqualTo(mine.id());
  }

  @Test
  void aKeyThatHasExpiredNamesANewRequestAndIsForgottenInTime() throws Exception {
    IdempotentAssessor once = service(() -> {});
    once.assess(request, "traveler", KEY);
    SetupRequest other = request("01-top-edge-wire-and-stop");
    assertThatThrownBy(() -> once.assess(other, "traveler", KEY))
        .isInstanceOf(KeyReusedException.class);

    IdempotencyKeyRepository later = keys(SEVEN.plus(Duration.ofDays(1)));
    assertThat(later.find(KEY)).isEmpty();
    new IdempotentAssessor(assessor(() -> {}), records, later).assess(other, "traveler", KEY);
    assertThat(records.search(RecordQuery.all(), 10, null).records()).hasSize(2);
    assertThat(later.forgetExpired()).isZero();
    assertThat(keys(SEVEN.plus(Duration.ofDays(2))).forgetExpired()).isEqualTo(1);
  }

  /** Something that happens while the set-up is being judged. */
  private interface Meanwhile {
    void happen() throws Exception;
  }

  private IdempotentAssessor service(Meanwhile meanwhile) {
    return new IdempotentAssessor(assessor(meanwhile), records, keys(SEVEN));
  }

  private Assessor assessor(Meanwhile meanwhile) {
    return new Assessor(
        () -> SHELVES,
        () -> {
          try {
            meanwhile.happen();
          } catch (Exception e) {
            throw new IllegalStateException(e);
          }
          return CARDS;
        },
        jobOrder -> List.of(),
        records::append,
        "0.1.0",
        at(SEVEN));
  }

  private IdempotencyKeyRepository keys(Instant now) {
    return new IdempotencyKeyRepository(database, Duration.ofDays(1), at(now));
  }

  private static Clock at(Instant now) {
    return Clock.fixed(now, ZoneOffset.UTC);
  }

  private static SetupRequest request(String file) {
    try {
      return SetupRequest.of(Files.readString(Path.of("seeds/setups/" + file + ".json")));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static RuleBase cards() {
    Gate gate =
        new Gate(
            Vocabulary.all(), new QuantityText(), name -> Optional.empty(), Coverage.Demand.REFUSE);
    Authorship by = new Authorship("engineer", "note", Instant.EPOCH, null);
    return ((GateResult.Published) gate.check(Path.of("rules"), by)).ruleBase();
  }
}

package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Judged;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.chain.ChainCheck;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.ChainFault;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.ChainKeyFile;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.ChainVerifier;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.chain.PublicCheck;
import org.standproud.audit.chain.VerifyingKey;
import org.standproud.audit.records.RecordQuery.By;

/** What every database that keeps the records must do; run on each of them. */
abstract class RecordsContract {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Clock CLOCK = Clock.fixed(SEVEN, ZoneOffset.UTC);

  @TempDir Path directory;
  private DataSource dataSource;
  private JdbcClient sql;
  private ChainKeys key;
  private CheckpointFile outside;
  private Records records;

  /** An empty database of the kind under test. */
  abstract DataSource emptyDatabase() throws Exception;

  @BeforeEach
  void open() throws Exception {
    dataSource = emptyDatabase();
    Flyway.configure().dataSource(dataSource).load().migrate();
    sql = JdbcClient.create(dataSource);
    KeyPlaces keys = new KeyPlaces(directory);
    key = new ChainKeys(keys.chain().open(), keys.signing().open());
    outside = new CheckpointFile(directory.resolve("checkpoints.ndjson"));
    records = new Records(dataSource, key, outside, CLOCK);
  }

  @AfterEach
  void close() {
    records.close();
  }

  /** The text of the evidence stands for its numbers. */
  private static final EvidenceDigest TEXT =
      new EvidenceDigest() {
        @Override
        public byte @Nullable [] of(AuditRecord record) {
          return record.account().equals(Mask.NO_ACCOUNT)
              ? null
              : record.account().results().toString().getBytes(StandardCharsets.UTF_8);
        }
      };

  private Records withNumbers() {
    return new Records(dataSource, key, outside, CLOCK, AppendListener.NOTHING, TEXT);
  }

  private long numbersKept() {
    return sql.sql("select count(*) from audit_short").query(Long.class).single();
  }

  @Test
  void numbersLieBesideEveryAnswerAndAreReadNewestFirst() throws Exception {
    try (Records shop = withNumbers()) {
      AuditRecord first = SampleRecords.stopped("J-1", SEVEN);
      AuditRecord second = SampleRecords.passed(SEVEN);
      shop.append(first);
      shop.append(second);
      assertThat(numbersKept()).isEqualTo(2);

      List<DigestRecord> read = shop.digests().toList();
      assertThat(read).extracting(DigestRecord::id).containsExactly(second.id(), first.id());
      assertThat(read.get(1).jobOrder()).isEqualTo("J-1");
      assertThat(read.get(1).verdict()).isEqualTo("do not run");
      assertThat(read.get(1).findings()).isEqualTo(first.findings());
      assertThat(read.get(1).numbers()).isEqualTo(TEXT.of(first));
      assertThat(shop.verify().whole()).isTrue();
    }
  }

  @Test
  void anAnswerOfBeforeGetsItsNumbersWhenTheyAreFirstNeeded() throws Exception {
    AuditRecord before = SampleRecords.stopped("J-1", SEVEN);
    records.append(before);
    assertThat(numbersKept()).isZero();
    try (Records shop = withNumbers()) {
      assertThat(shop.digests()).singleElement().matches(r -> r.id().equals(before.id()));
      assertThat(numbersKept()).isEqualTo(1);
      assertThat(shop.digests().toList().get(0).numbers()).isEqualTo(TEXT.of(before));
    }
  }

  @Test
  void numbersGoWithTheAccountAndStayWhenOnlyNamesAreTaken() throws Exception {
    try (Records shop = withNumbers()) {
      shop.append(SampleRecords.stopped("J-1", SEVEN));
      Retention retention = new Retention(shop, CLOCK);
      Person auditor = new Person("A. Ash", "auditor", "page");
      retention.withhold(RecordQuery.all(), Mask.CALLER_AND_JOB, auditor, "asked for");
      assertThat(shop.digests()).singleElement().matches(r -> "withheld".equals(r.jobOrder()));
      retention.withhold(RecordQuery.all(), Mask.ACCOUNT, auditor, "old");
      assertThat(numbersKept()).isZero();
      assertThat(shop.digests()).isEmpty();
      assertThat(numbersKept()).isZero();
      assertThat(shop.verify().whole()).isTrue();
    }
  }

  @Test
  void numbersThatAreNotThoseOfTheirRecordAreLocated() throws Exception {
    try (Records shop = withNumbers()) {
      shop.append(SampleRecords.stopped("J-1", SEVEN));
      shop.append(SampleRecords.stopped("J-2", SEVEN));
      sql.sql(
              "update audit_short set body = (select body from audit_short where sequence = 1)"
                  + " where sequence = 2")
          .update();
      assertThat(shop.verify().whole()).isTrue(); // the same numbers
      sql.sql("update audit_short set body = ? where sequence = 2").param(new byte[] {7}).update();
      assertThat(shop.verify().faults())
          .singleElement()
          .matches(fault -> fault.first() == 2 && fault.kind() == ChainFault.Kind.EDITED);
      sql.sql("delete from audit_short where sequence = 2").update();
      sql.sql("update audit_short set verdict = 'run' where sequence = 1").update();
      assertThat(shop.verify().faults()).singleElement().matches(fault -> fault.first() == 1);
    }
  }

  @Test
  void whatCannotBeWrittenAlongsideARecordKeepsTheRecordOutAndSpoilsNoOther() throws Exception {
    AuditRecord kept = SampleRecords.stopped("J-1", SEVEN);
    AuditRecord lost = SampleRecords.stopped("J-2", SEVEN);
    records.append(kept, () -> key("k", kept));
    assertThatThrownBy(() -> records.append(lost, () -> key("k", lost)))
        .isInstanceOf(RecordNotStored.class);

    assertThat(records.find(lost.id())).isEmpty();
    records.append(lost, () -> key("l", lost));
    assertThat(records.verify()).isEqualTo(new ChainReport(2, 2, List.of()));
    assertThat(sql.sql("select count(*) from idempotency_key").query(Long.class).single())
        .isEqualTo(2);
  }

  @Test
  void aRecordLiesPackedAndNoSecondTextCanStandBesideIt() throws Exception {
    AuditRecord record = SampleRecords.stopped("J-1", SEVEN);
    records.append(record);

    assertThat(StoredTexts.at(sql, 1)).isEqualTo(record.body().text());
    assertThatThrownBy(
            () -> sql.sql("update audit_record set body = 'another' where sequence = 1").update())
        .isInstanceOf(DataIntegrityViolationException.class);
  }

  @Test
  void numbersMadeWithTheEvidenceAtHandLieBesideTheAnswer() throws Exception {
    try (Records shop = withNumbers()) {
      AuditRecord record = SampleRecords.stopped("J-1", SEVEN);
      shop.append(record, Objects.requireNonNull(TEXT.of(record)));
      assertThat(shop.digests().toList().get(0).numbers()).isEqualTo(TEXT.of(record));
      assertThat(shop.verify().whole()).isTrue();
      shop.append(SampleRecords.stopped("J-2", SEVEN), new byte[] {7});
      assertThat(places(shop.verify())).containsExactly("EDITED 2");
    }
    records.append(SampleRecords.stopped("J-3", SEVEN), new byte[] {7}); // wants no numbers
    assertThat(numbersKept()).isEqualTo(2);
  }

  private void key(String key, AuditRecord record) {
    sql.sql("insert into idempotency_key values ('traveler', ?, 'f', ?, current_timestamp)")
        .params(key, record.id())
        .update();
  }

  @Test
  void aRecordIsFoundByItsIdJustAsItWasAppended() throws Exception {
    AuditRecord record = SampleRecords.stopped("J-1", SEVEN);
    Stored stored = records.append(record);

    assertThat(stored.sequence()).isEqualTo(1);
    assertThat(records.find(record.id())).contains(new StoredRecord(stored, record, true));
    assertThat(records.find(AuditRecord.newId())).isEmpty();
  }

  @Test
  void appendingTheSameRecordAgainGivesThePlaceItHasAlready() throws Exception {
    AuditRecord record = SampleRecords.stopped("J-1", SEVEN);
    Stored first = records.append(record);
    records.append(SampleRecords.passed(SEVEN));

    assertThat(records.append(record)).isEqualTo(first);
    assertThat(records.verify().intact()).isEqualTo(2);
  }

  @Test
  void anotherRecordUnderAGivenIdIsRefusedAndNoneIsLost() throws Exception {
    AuditRecord first = SampleRecords.stopped("J-1", SEVEN);
    Stored stored = records.append(first);
    AuditRecord other =
        SampleRecords.record(
            first.id(), SEVEN, first.asked(), new Judged("run", 99.0), first.findings());

    assertThatThrownBy(() -> records.append(other))
        .isInstanceOf(RecordNotStored.class)
        .hasRootCauseInstanceOf(java.sql.SQLException.class);
    assertThat(records.find(first.id())).contains(new StoredRecord(stored, first, true));
    assertThat(records.append(SampleRecords.passed(SEVEN)).sequence()).isEqualTo(2);
    assertThat(records.verify().whole()).isTrue();
  }

  @Test
  void manyCallersAtOnceWriteOneUnbrokenChain() throws Exception {
    List<Stored> stored = appendFromManyThreads(List.of(records), 200);

    assertThat(stored).extracting(Stored::sequence).doesNotHaveDuplicates().hasSize(200);
    assertThat(records.verify()).isEqualTo(new ChainReport(200, 200, List.of()));
  }

  @Test
  void twoServicesOnOneDatabaseWriteOneUnbrokenChain() throws Exception {
    CheckpointFile own = new CheckpointFile(directory.resolve("second.ndjson"));
    try (Records second = new Records(dataSource, key, own, CLOCK)) {
      List<Stored> stored = appendFromManyThreads(List.of(records, second), 200);

      assertThat(stored).extracting(Stored::sequence).doesNotHaveDuplicates().hasSize(200);
      assertThat(second.verify()).isEqualTo(new ChainReport(200, 200, List.of()));
    }
  }

  @Test
  void recordsAreFoundByEveryWordTheyAreFiledUnder() throws Exception {
    AuditRecord stopped = SampleRecords.stopped("J-1", SEVEN);
    records.append(stopped);
    records.append(SampleRecords.passed(SEVEN));

    assertThat(found(RecordQuery.all())).hasSize(2);
    for (RecordQuery query :
        List.of(
            RecordQuery.all().with(By.JOB_ORDER, "J-1"),
            RecordQuery.all().with(By.WORK_MASTER, "WM-7"),
            RecordQuery.all().with(By.OPERATION, "20"),
            RecordQuery.all().with(By.MACHINE, "knee mill 2"),
            RecordQuery.all().with(By.CALLER, "traveler").with(By.RULE_BASE, "rules-1"),
            RecordQuery.all().with(By.VERDICT, "do not run").with(By.CATALOGUE, "catalogue-1"),
            RecordQuery.all().with(By.CARD, "holding-tall-plate").with(By.KIND, "fail"),
            RecordQuery.all().with(By.SEVERITY, "caution"))) {
      assertThat(found(query)).as("%s", query).containsExactly(stopped.id());
    }
    assertThat(found(RecordQuery.all().with(By.CALLER, "x' or '1'='1"))).isEmpty();
  }

  @Test
  void cardAndSeverityMustHoldForOneAndTheSameFinding() throws Exception {
    records.append(SampleRecords.stopped("J-1", SEVEN));

    assertThat(
            found(
                RecordQuery.all()
                    .with(By.CARD, "direction-lengthwise-bite")
                    .with(By.SEVERITY, "stop")))
        .isEmpty();
  }

  @Test
  void aSpanOfTimeHoldsItsBeginningButNotItsEnd() throws Exception {
    AuditRecord early = SampleRecords.passed(SEVEN);
    AuditRecord late = SampleRecords.passed(SEVEN.plusSeconds(60));
    records.append(early);
    records.append(late);

    assertThat(found(RecordQuery.all().between(SEVEN, SEVEN.plusSeconds(60))))
        .containsExactly(early.id());
    assertThat(found(RecordQuery.all().between(SEVEN.plusSeconds(60), null)))
        .containsExactly(late.id());
  }

  @Test
  void pagesShowEveryRecordOnceNewestFirstThoughRecordsArriveMeanwhile() throws Exception {
    for (int i = 0; i < 7; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN));
    }
    RecordQuery stops = RecordQuery.all().with(By.SEVERITY, "stop");
    List<Long> seen = new ArrayList<>();
    String cursor = null;
    do {
      RecordPage page = records.search(stops, 3, cursor);
      page.records().forEach(r -> seen.add(r.stored().sequence()));
      cursor = page.next();
      records.append(SampleRecords.stopped("later", SEVEN));
    } while (cursor != null);

    assertThat(seen).containsExactly(7L, 6L, 5L, 4L, 3L, 2L, 1L);
  }

  @Test
  void aPageAsLongAsWhatIsLeftIsTheLast() throws Exception {
    records.append(SampleRecords.passed(SEVEN));

    assertThat(records.search(RecordQuery.all(), 1, null).next()).isNull();
  }

  @Test
  void aCursorOrLimitOfTheCallersOwnMakingIsRefused() {
    for (String cursor : List.of("5", "YmVmb3JlOng", "%%%", "")) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> records.search(RecordQuery.all(), 10, cursor))
          .withMessageContaining("cursor");
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> records.search(RecordQuery.all(), 501, null));
  }

  @Test
  void cardsAreCountedDayByDay() throws Exception {
    records.append(SampleRecords.stopped("J-1", SEVEN));
    records.append(SampleRecords.stopped("J-2", SEVEN.plus(Duration.ofHours(16))));
    records.append(SampleRecords.stopped("J-3", SEVEN.plus(Duration.ofHours(17))));
    records.append(SampleRecords.passed(SEVEN));
    Instant monday = Instant.parse("2026-03-02T00:00:00Z");
    Instant tuesday = Instant.parse("2026-03-03T00:00:00Z");

    assertThat(
            records.countByRule(
                RecordQuery.all().with(By.CARD, "holding-tall-plate"), Duration.ofDays(1)))
        .containsExactly(
            new RuleCount("holding-tall-plate", "stop", "fail", monday, 2),
            new RuleCount("holding-tall-plate", "stop", "fail", tuesday, 1),
            new RuleCount("holding-tall-plate", "stop", "pass", monday, 1));
    assertThat(
            records.countByRule(
                RecordQuery.all().with(By.JOB_ORDER, "J-3").between(monday, null),
                Duration.ofHours(1)))
        .extracting(RuleCount::count)
        .containsExactly(1L, 1L);
  }

  @Test
  void everyKindOfTamperingInTheDatabaseIsLocated() throws Exception {
    for (int i = 1; i <= 12; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN));
    }
    StoredTexts.change(sql, 2, text -> text.replace("do not run", "run"));
    StoredTexts.cut(sql, 3, 60);
    sql.sql("update audit_record set verdict = 'run' where sequence = 4").update();
    sql.sql("update audit_finding set severity = 'note' where sequence = 5 and place = 0").update();
    sql.sql("delete from audit_finding where sequence in (6, 8, 9, 12)").update();
    sql.sql("delete from audit_record where sequence in (8, 12)").update();
    sql.sql("update audit_record set sequence = 8 where sequence = 9").update();

    assertThat(places(records.verify()))
        .containsExactlyInAnyOrder(
            "EDITED 2",
            "EDITED 3",
            "EDITED 4",
            "EDITED 5",
            "EDITED 6",
            "REORDERED 9",
            "DELETED 8",
            "TRUNCATED 12");
  }

  @Test
  void anEndCutOffTogetherWithTheHeadIsCaughtByTheCheckpointOutside() throws Exception {
    for (int i = 1; i <= 5; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN));
    }
    records.checkpoint();
    cutAfter(3);

    assertThat(places(records.verify())).containsExactly("TRUNCATED 4-5");
    assertThatThrownBy(() -> new Records(dataSource, key, outside, CLOCK))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("ends at record 3");
  }

  @Test
  void aChainCutAndContinuedByTheServiceIsCaughtByTheCheckpointOutside() throws Exception {
    for (int i = 1; i <= 5; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN));
    }
    records.checkpoint();
    cutAfter(3);
    for (int i = 6; i <= 9; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN));
    }

    assertThat(places(records.verify())).containsExactly("REWRITTEN 5");
  }

  @Test
  void anotherKeyIsRefusedBeforeItBreaksTheChain() throws Exception {
    records.append(SampleRecords.passed(SEVEN));
    ChainKey sealing = new ChainKeyFile(directory.resolve("other.key")).open();
    ChainKeys other = new ChainKeys(sealing, key.signing());

    assertThatThrownBy(() -> new Records(dataSource, other, outside, CLOCK))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(key.key().id());
  }

  @Test
  void anExportOfTheDatabaseIsWholeWhenCheckedAway() throws Exception {
    for (int i = 1; i <= 5; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN));
    }
    StringWriter text = new StringWriter();
    records.export(text);
    Path file = Files.writeString(directory.resolve("export.ndjson"), text.toString());

    List<VerifyingKey> signers = List.of(key.signing().verifying());
    for (ChainCheck check :
        List.of(new ChainVerifier(key.key(), signers), new PublicCheck(signers))) {
      assertThat(ChainExport.verify(file, check, outside.lines()))
          .isEqualTo(new ChainReport(5, 5, List.of()));
    }
  }

  @Test
  void closingStatesTheEndOutsideAndTakesNoMore() throws Exception {
    records.append(SampleRecords.passed(SEVEN));
    records.close();

    assertThat(outside.lines()).singleElement().asString().contains("\"sequence\":1");
    assertThatThrownBy(() -> records.append(SampleRecords.passed(SEVEN)))
        .isInstanceOf(RecordNotStored.class)
        .hasMessageContaining("closed");
  }

  @Test
  void aRecordWithALongTraceAndManyFindingsIsKeptWhole() throws Exception {
    List<RecordedFinding> many = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      many.add(new RecordedFinding("card-" + i, "note", "open"));
    }
    AuditRecord record =
        SampleRecords.record(
            AuditRecord.newId(),
            SEVEN,
            new Asked("\u00d8rsted \ud83d\udee0", null, null, null, null),
            new Judged("not judged", null),
            many);
    Stored stored = records.append(record);

    assertThat(records.find(record.id())).contains(new StoredRecord(stored, record, true));
    assertThat(records.verify().whole()).isTrue();
  }

  private void cutAfter(long place) {
    sql.sql("delete from audit_finding where sequence > ?").param(place).update();
    sql.sql("delete from audit_record where sequence > ?").param(place).update();
    sql.sql(
            "update audit_chain_head set sequence = ?,"
                + " seal = (select seal from audit_record where sequence = ?)")
        .params(place, place)
        .update();
  }

  private List<java.util.UUID> found(RecordQuery query) {
    return records.search(query, 100, null).records().stream().map(r -> r.stored().id()).toList();
  }

  private static List<Stored> appendFromManyThreads(List<Records> stores, int count)
      throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(16);
    try {
      List<Callable<Stored>> appends = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        Records store = stores.get(i % stores.size());
        String job = "J-" + i;
        appends.add(() -> store.append(SampleRecords.stopped(job, SEVEN)));
      }
      List<Stored> stored = new ArrayList<>();
      for (Future<Stored> one : callers.invokeAll(appends)) {
        stored.add(one.get());
      }
      return stored;
    } finally {
      callers.shutdownNow();
    }
  }

  private static List<String> places(ChainReport report) {
    return report.faults().stream()
        .map(f -> f.kind() + " " + f.first() + (f.first() == f.last() ? "" : "-" + f.last()))
        .toList();
  }
}

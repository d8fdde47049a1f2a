package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.Withdrawal;
import org.standproud.audit.Withholding;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.ChainVerifier;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.chain.PublicCheck;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.rules.engine.Revision;

/** Decisions, texts withheld, and chains carried over; run on each database. */
abstract class PeopleAndRetentionContract {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Clock CLOCK = Clock.fixed(SEVEN, ZoneOffset.UTC);
  private static final Person AUDITOR = new Person("R. Reed", "auditor");

  @TempDir Path directory;
  private DataSource dataSource;
  private JdbcClient sql;
  private ChainKeys seal;
  private KeyPlaces keys;
  private Records records;

  /** An empty database of the kind under test. */
  abstract DataSource emptyDatabase() throws Exception;

  @BeforeEach
  void open() throws Exception {
    dataSource = migrated();
    sql = JdbcClient.create(dataSource);
    keys = new KeyPlaces(directory);
    seal = new ChainKeys(keys.chain().open(), keys.signing().open());
    records = new Records(dataSource, seal, keys.checkpoints(), CLOCK);
  }

  @AfterEach
  void close() {
    records.close();
  }

  @Test
  void anAcceptanceStandsInTheSameChainAndIsFoundForItsJobOrder() throws Exception {
    AuditRecord answer = SampleRecords.stopped("J-1", SEVEN);
    records.append(answer);
    Acceptance forJob = accepted(answer, true);
    Acceptance forOne = accepted(answer, false);
    assertThat(records.append(forJob).sequence()).isEqualTo(2);
    records.append(forOne);
    AcceptanceBook book = new AcceptanceBook(records);

    assertThat(book.forNew("J-1")).containsExactly(forJob);
    assertThat(book.forNew("J-2")).isEmpty();
    assertThat(book.forNew(null)).isEmpty();
    assertThat(book.about(answer.id(), "J-1"))
        .extracting(AcceptanceBook.Decision::acceptance)
        .containsExactly(forJob, forOne);
    UUID later = AuditRecord.newId();
    assertThat(book.about(later, "J-1"))
        .extracting(AcceptanceBook.Decision::acceptance)
        .containsExactly(forJob);
    assertThat(book.find(forOne.id())).contains(forOne);
    assertThat(records.verify()).isEqualTo(new ChainReport(3, 3, List.of()));
    assertThat(records.search(RecordQuery.all(), 10, null).records())
        .extracting(r -> r.stored().id())
        .containsExactly(answer.id());
  }

  @Test
  void anAcceptanceTakenBackNoLongerSpeaksAndIsStillThere() throws Exception {
    AuditRecord answer = SampleRecords.stopped("J-1", SEVEN);
    records.append(answer);
    Acceptance given = accepted(answer, true);
    records.append(given);
    Withdrawal back =
        new Withdrawal(AuditRecord.newId(), SEVEN, given.id(), AUDITOR, "Given in error.");
    records.append(back);
    AcceptanceBook book = new AcceptanceBook(records);

    assertThat(book.forNew("J-1")).isEmpty();
    assertThat(book.about(answer.id(), "J-1"))
        .containsExactly(new AcceptanceBook.Decision(given, back));
    assertThat(records.verify().whole()).isTrue();
  }

  @Test
  void anAcceptanceChangedInTheDatabaseIsLocated() throws Exception {
    AuditRecord answer = SampleRecords.stopped("J-1", SEVEN);
    records.append(answer);
    records.append(accepted(answer, true));
    records.append(accepted(answer, true));
    StoredTexts.change(sql, 2, text -> text.replace("R. Reed", "A. Ash"));
    sql.sql("update audit_record set job_order = 'J-9' where sequence = 3").update();

    assertThat(places(records.verify())).containsExactlyInAnyOrder("EDITED 2", "EDITED 3");
  }

  @Test
  void cardsThatNeverSpokeAndCardsThatAreOverriddenAreCounted() throws Exception {
    AuditRecord answer = SampleRecords.stopped("J-1", SEVEN);
    records.append(answer);
    records.append(SampleRecords.stopped("J-2", SEVEN.plusSeconds(60)));
    records.append(accepted(answer, true));

    assertThat(
            records.useOfRules(
                RecordQuery.all(), Set.of("holding-tall-plate", "vibration-never-heard")))
        .containsExactly(
            new RuleUse("direction-lengthwise-bite", false, 0, 0, 0, SEVEN.plusSeconds(60)),
            new RuleUse("holding-tall-plate", true, 2, 0, 1, SEVEN.plusSeconds(60)),
            new RuleUse("vibration-never-heard", true, 0, 0, 0, null));
    assertThat(records.countByRule(RecordQuery.all(), Duration.ofDays(1)))
        .extracting(RuleCount::kind)
        .doesNotContain("accepted");
  }

  @Test
  void callersOfOldRecordsAreMaskedAndTheChainSaysWhoDidItAndStaysWhole() throws Exception {
    AuditRecord old = SampleRecords.stopped("J-1", SEVEN.minus(Duration.ofDays(400)));
    AuditRecord young = SampleRecords.stopped("J-2", SEVEN);
    Stored place = records.append(old);
    records.append(young);

    assertThat(withhold(Mask.CALLER)).isEqualTo(1);
    StoredRecord left = records.find(old.id()).orElseThrow();
    assertThat(left.stored()).isEqualTo(place);
    assertThat(left.whole()).isFalse();
    assertThat(left.gone()).isFalse();
    assertThat(left.record().asked().caller()).isEqualTo(Mask.WITHHELD);
    assertThat(left.record().account()).isEqualTo(old.account());
    assertThat(records.find(young.id()).orElseThrow().record()).isEqualTo(young);
    assertThat(
            sql.sql("select count(*) from audit_record where caller = 'traveler'")
                .query(Long.class)
                .single())
        .isEqualTo(1);
    Withholding said = (Withholding) records.findAny(orders().get(0)).orElseThrow();
    assertThat(said.by()).isEqualTo(AUDITOR);
    assertThat(said.taken()).extracting(Withholding.Taken::record).containsExactly(old.id());
    assertThat(said.taken().get(0).digest()).isEqualTo(old.body().sha256());
    assertThat(records.verify()).isEqualTo(new ChainReport(3, 3, List.of()));
    assertThat(withhold(Mask.CALLER)).as("nothing left to mask").isZero();
  }

  @Test
  void anAccountTakenAwayLeavesVerdictAndFindingsToBeCounted() throws Exception {
    AuditRecord old = SampleRecords.stopped("J-1", SEVEN.minus(Duration.ofDays(400)));
    records.append(old);
    withhold(Mask.CALLER);
    assertThat(withhold(Mask.ACCOUNT)).isEqualTo(1);

    StoredRecord left = records.find(old.id()).orElseThrow();
    assertThat(left.gone()).isTrue();
    assertThat(left.record().judged()).isEqualTo(old.judged());
    assertThat(left.record().findings()).isEqualTo(old.findings());
    assertThat(
            sql.sql("select count(*) from audit_record where remainder like '%stick-out%'")
                .query(Long.class)
                .single())
        .isZero();
    assertThat(StoredTexts.all(sql)).noneMatch(text -> text.contains("stick-out"));
    assertThat(
            records
                .search(RecordQuery.all().with(RecordQuery.By.CARD, "holding-tall-plate"), 9, null)
                .records())
        .hasSize(1);
    assertThat(records.verify()).isEqualTo(new ChainReport(3, 3, List.of()));
  }

  @Test
  void namesOfThoseWhoDecidedAreMaskedAndTheChainStaysWhole() throws Exception {
    AuditRecord answer = SampleRecords.stopped("J-1", SEVEN);
    records.append(answer);
    Acceptance given = accepted(answer, true);
    records.append(given);
    Withdrawal back = new Withdrawal(AuditRecord.newId(), SEVEN, given.id(), AUDITOR, "In error.");
    records.append(back);
    Retention retention = new Retention(records, CLOCK);
    RecordQuery all = RecordQuery.all().between(null, SEVEN.plusSeconds(1));

    assertThat(retention.withhold(all, Mask.CALLER, AUDITOR, "Names for a day.")).isEqualTo(3);
    AcceptanceBook book = new AcceptanceBook(records);
    Acceptance left = book.find(given.id()).orElseThrow();
    assertThat(left.by().name()).isEqualTo(Mask.WITHHELD);
    assertThat(left.by().role()).isEqualTo(given.by().role());
    assertThat(left.reason()).isEqualTo(given.reason());
    assertThat(book.about(answer.id(), "J-1").get(0).withdrawal().by().name())
        .isEqualTo(Mask.WITHHELD);
    assertThat(records.verify()).isEqualTo(new ChainReport(5, 5, List.of()));

    assertThat(retention.withhold(all, Mask.CALLER_AND_JOB, AUDITOR, "Jobs too.")).isEqualTo(3);
    Acceptance bare = book.find(given.id()).orElseThrow();
    assertThat(bare.reason()).isEqualTo(Mask.WITHHELD);
    assertThat(bare.jobOrder()).isEqualTo(Mask.WITHHELD);
    assertThat(bare.said()).isEqualTo(given.said());
    assertThat(
            sql.sql("select count(*) from audit_record where job_order = 'J-1'")
                .query(Long.class)
                .single())
        .isZero();
    assertThat(retention.withhold(all, Mask.ACCOUNT, AUDITOR, "All.")).isEqualTo(2);
    assertThat(retention.withhold(all, Mask.ACCOUNT, AUDITOR, "All.")).isZero();
    assertThat(records.verify().whole()).isTrue();
    assertThat(
            records.useOfRules(RecordQuery.all(), Set.of()).stream()
                .filter(use -> use.cardId().equals(given.card()))
                .findFirst())
        .as("that the card was overridden is counted still")
        .hasValueSatisfying(use -> assertThat(use.accepted()).isEqualTo(1));
  }

  @Test
  void moreRecordsThanOneOrderNamesAreAllMasked() throws Exception {
    for (int i = 0; i < 205; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN.minus(Duration.ofDays(400))));
    }

    assertThat(withhold(Mask.CALLER_AND_JOB)).isEqualTo(205);
    assertThat(orders()).hasSize(2);
    assertThat(records.verify()).isEqualTo(new ChainReport(207, 207, List.of()));
  }

  @Test
  void aTextTakenAwayByHandOrChangedAfterwardsIsLocated() throws Exception {
    for (int i = 0; i < 3; i++) {
      records.append(SampleRecords.stopped("J-" + i, SEVEN.minus(Duration.ofDays(400))));
    }
    records.append(SampleRecords.stopped("J-4", SEVEN));
    withhold(Mask.CALLER);
    sql.sql(
            "update audit_record set remainder = replace(remainder, 'do not run', 'run'),"
                + " verdict = 'run' where sequence = 2")
        .update();
    AuditRecord left = Mask.CALLER.of(SampleRecords.stopped("J-4", SEVEN));
    sql.sql(
            "update audit_record set body_digest = ?, remainder = ?, packed = null where sequence = 4")
        .params(bodyDigest(4), left.body().text())
        .update();

    assertThat(places(records.verify())).contains("EDITED 2", "WITHHELD_SILENTLY 4");
    sql.sql(
            "update audit_record set packed = null, body_digest = null, remainder = null"
                + " where sequence = 3")
        .update();
    assertThat(places(records.verify())).contains("EDITED 3");
  }

  @Test
  void aChainIsCarriedToAnEmptyDatabaseAndGoesOnThere() throws Exception {
    AuditRecord old = SampleRecords.stopped("J-1", SEVEN.minus(Duration.ofDays(400)));
    AuditRecord young = SampleRecords.passed(SEVEN);
    records.append(old);
    records.append(young);
    records.append(accepted(old, true));
    withhold(Mask.ACCOUNT);
    KeptRuleBase rules = ruleBase();
    records.ruleBases().keep(rules);
    records.ruleBases().keep(rules);
    Path file = export();
    records.close();

    DataSource elsewhere = migrated();
    ChainReport read = new ChainImport(elsewhere, seal).read(file, keys.checkpoints().lines());
    assertThat(read).isEqualTo(new ChainReport(4, 4, List.of()));
    try (Records again = new Records(elsewhere, seal, keys.checkpoints(), CLOCK)) {
      assertThat(again.verify()).isEqualTo(new ChainReport(4, 4, List.of()));
      assertThat(again.find(young.id()).orElseThrow().record()).isEqualTo(young);
      assertThat(again.find(old.id()).orElseThrow().gone()).isTrue();
      assertThat(again.ruleBases().find(rules.revision().id())).contains(rules);
      assertThat(new AcceptanceBook(again).forNew("J-1")).hasSize(1);
      assertThat(again.append(SampleRecords.passed(SEVEN)).sequence()).isEqualTo(5);
      assertThat(again.verify()).isEqualTo(new ChainReport(5, 5, List.of()));
    }
    assertThatThrownBy(() -> new ChainImport(elsewhere, seal).read(file, List.of()))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void aBrokenExportIsNotTakenIn() throws Exception {
    records.append(SampleRecords.stopped("J-1", SEVEN));
    records.append(SampleRecords.stopped("J-2", SEVEN));
    Path file = export();
    Files.writeString(file, Files.readString(file).replaceFirst("do not run", "run"));
    DataSource elsewhere = migrated();

    assertThat(places(new ChainImport(elsewhere, seal).read(file, List.of())))
        .containsExactly("EDITED 1");
    assertThat(
            JdbcClient.create(elsewhere)
                .sql("select count(*) from audit_record")
                .query(Long.class)
                .single())
        .isZero();
  }

  @Test
  void anExportWithTextsWithheldIsIntactWithThePublicKey() throws Exception {
    records.append(SampleRecords.stopped("J-1", SEVEN.minus(Duration.ofDays(400))));
    withhold(Mask.ACCOUNT);
    Path file = export();

    assertThat(
            ChainExport.verify(
                    file, new PublicCheck(List.of(records.publicKey())), keys.checkpoints().lines())
                .whole())
        .isTrue();
    assertThat(
            ChainExport.verify(
                    file,
                    new ChainVerifier(seal.key(), List.of(records.publicKey())),
                    keys.checkpoints().lines())
                .whole())
        .isTrue();
  }

  private DataSource migrated() throws Exception {
    DataSource empty = emptyDatabase();
    Flyway.configure().dataSource(empty).load().migrate();
    return empty;
  }

  private long withhold(Mask mask) throws InterruptedException {
    RecordQuery old = RecordQuery.all().between(null, SEVEN.minus(Duration.ofDays(365)));
    return new Retention(records, CLOCK).withhold(old, mask, AUDITOR, "Kept a year, no longer.");
  }

  private List<UUID> orders() {
    return sql.sql(
            "select id from audit_record where record_type = 'withholding' order by sequence")
        .query(UUID.class)
        .list();
  }

  private String bodyDigest(long sequence) {
    return new CanonicalJson(StoredTexts.at(sql, sequence)).sha256();
  }

  private Path export() throws Exception {
    StringWriter text = new StringWriter();
    records.export(text);
    return Files.writeString(
        directory.resolve("export.ndjson"), text.toString(), StandardCharsets.UTF_8);
  }

  private static Acceptance accepted(AuditRecord answer, boolean forJobOrder) {
    return new Acceptance(
        AuditRecord.newId(),
        SEVEN,
        answer.id(),
        answer.asked().jobOrder(),
        "holding-tall-plate",
        "stop",
        CanonicalJson.parse("{\"card\":\"holding-tall-plate\",\"kind\":\"fail\"}"),
        AUDITOR,
        "A second clamp holds the top.",
        SEVEN.plus(Duration.ofDays(30)),
        forJobOrder);
  }

  private static KeptRuleBase ruleBase() {
    Revision revision =
        new Revision("ab".repeat(32), "cd".repeat(32), "tool room", "first", SEVEN, null);
    return new KeptRuleBase(revision, Map.of("holding/HOLD-001.yaml", "id: HOLD-001\n"));
  }

  private static List<String> places(ChainReport report) {
    return report.faults().stream()
        .map(f -> f.kind() + " " + f.first() + (f.first() == f.last() ? "" : "-" + f.last()))
        .collect(Collectors.toList());
  }
}

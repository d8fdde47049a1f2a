package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.ChainFault;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.chain.Link;
import org.standproud.audit.chain.PublicCheck;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.rules.engine.Revision;

/** A database that an earlier version wrote, opened by this one; run on each kind of database. */
abstract class UpgradeContract {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Clock CLOCK = Clock.fixed(SEVEN.plusSeconds(3600), ZoneOffset.UTC);

  private final List<AuditRecord> old = new ArrayList<>();
  @TempDir Path directory;
  private DataSource database;
  private KeyPlaces keys;
  private ChainKeys seal;

  /** An empty database of the kind under test. */
  abstract DataSource emptyDatabase() throws Exception;

  @BeforeEach
  void theFirstVersionKeepsThreeRecordsAndStatesThem() throws Exception {
    keys = new KeyPlaces(directory);
    seal = new ChainKeys(keys.chain().open(), keys.signing().open());
    database = emptyDatabase();
    Flyway.configure().dataSource(database).target("1").load().migrate();
    JdbcClient sql = JdbcClient.create(database);
    Link last = new Link(0, ChainKey.GENESIS, ChainKey.GENESIS, SampleRecords.passed(SEVEN).body());
    for (int place = 1; place <= 3; place++) {
      AuditRecord record = SampleRecords.stopped("J-" + place, SEVEN.plusSeconds(place));
      last = seal.key().seal(place, last.seal(), record.body());
      insertAsTheFirstVersionDid(sql, last, record);
      old.add(record);
    }
    sql.sql("update audit_chain_head set key_id = ?, sequence = 3, seal = ?")
        .params(seal.key().id(), last.seal())
        .update();
    Files.writeString(keys.checkpoints().path(), statementOfTheFirstVersion(3, last.seal()) + "\n");
  }

  @Test
  void everyOldRecordIsThereAndTheChainGoesOn() throws Exception {
    migrate();
    try (Records records = open()) {
      for (AuditRecord record : old) {
        assertThat(records.find(record.id()).orElseThrow().record()).isEqualTo(record);
      }
      assertThat(records.verify()).isEqualTo(new ChainReport(3, 3, List.of()));
      assertThat(records.append(SampleRecords.passed(SEVEN)).sequence()).isEqualTo(4);
      assertThat(records.verify()).isEqualTo(new ChainReport(4, 4, List.of()));
    }
    try (Records again = open()) {
      assertThat(again.verify().whole()).isTrue();
    }
  }

  @Test
  void oldRecordsAreProvedByThePublicKeyFromTheFirstStartOn() throws Exception {
    migrate();
    StringWriter text = new StringWriter();
    try (Records records = open()) {
      records.export(text);
    }
    Path export = directory.resolve("export.ndjson");
    Files.writeString(export, text.toString());
    PublicCheck check = new PublicCheck(List.of(seal.signing().verifying()));
    assertThat(ChainExport.verify(export, check, keys.checkpoints().lines()))
        .isEqualTo(new ChainReport(3, 3, List.of()));

    Files.writeString(export, text.toString().replaceFirst("do not run", "run"));
    PublicCheck again = new PublicCheck(List.of(seal.signing().verifying()));
    assertThat(ChainExport.verify(export, again, List.of()).whole()).isFalse();
  }

  @Test
  void whatTheVersionBeforeKeptIsWholeAfterTheUpgradeWithItsRuleBaseAndItsDecisions()
      throws Exception {
    migrate("3");
    Acceptance given = acceptance(old.get(0));
    JdbcClient sql = JdbcClient.create(database);
    new RuleBaseArchive(database, AppendListener.NOTHING).keep(ruleBase());
    insertAsTheVersionBeforeDid(sql, given);
    migrate();
    try (Records records = open()) {
      assertThat(records.verify()).isEqualTo(new ChainReport(4, 4, List.of()));
      assertThat(new AcceptanceBook(records).find(given.id())).hasValue(given);
      assertThat(records.ruleBases().find("r-1")).hasValue(ruleBase());
      AuditRecord next = SampleRecords.passed(SEVEN);
      records.append(next, () -> key(next));
      assertThat(records.verify()).isEqualTo(new ChainReport(5, 5, List.of()));
    }
  }

  @Test
  void aRecordKeptUnpackedIsStillProvedAndItsTextIsStillTaken() throws Exception {
    migrate();
    JdbcClient sql = JdbcClient.create(database);
    try (Records records = open()) {
      sql.sql(
              "update audit_record set body = replace(body, 'do not run', 'run') where sequence = 2")
          .update();
      assertThat(records.verify().faults())
          .singleElement()
          .matches(fault -> fault.first() == 2 && fault.kind() == ChainFault.Kind.EDITED);
      sql.sql("update audit_record set body = ? where sequence = 2")
          .param(old.get(1).body().text())
          .update();
      new Retention(records, CLOCK)
          .withhold(RecordQuery.all(), Mask.ACCOUNT, new Person("A. Ash", "auditor"), "old");
      assertThat(records.verify()).isEqualTo(new ChainReport(4, 4, List.of()));
      assertThat(
              sql.sql("select count(*) from audit_record where body is not null")
                  .query(Long.class)
                  .single())
          .isZero();
    }
  }

  private void key(AuditRecord record) {
    JdbcClient.create(database)
        .sql("insert into idempotency_key values ('traveler', 'k', 'f', ?, current_timestamp)")
        .param(record.id())
        .update();
  }

  private static Acceptance acceptance(AuditRecord of) {
    return new Acceptance(
        AuditRecord.newId(),
        SEVEN,
        of.id(),
        of.asked().jobOrder(),
        of.findings().get(0).cardId(),
        of.findings().get(0).severity(),
        CanonicalJson.parse("{}"),
        new Person("M. Weaver", "foreman"),
        "a second clamp holds the top",
        SEVEN.plusSeconds(86_400),
        false);
  }

  private static KeptRuleBase ruleBase() {
    return new KeptRuleBase(
        new Revision("r-1", "c-1", "tool room", "first", SEVEN, null), Map.of("a.yaml", "id: A"));
  }

  @Test
  void anEndCutOffBeforeTheUpgradeIsStillCaught() {
    JdbcClient sql = JdbcClient.create(database);
    sql.sql("delete from audit_finding where sequence = 3").update();
    sql.sql("delete from audit_record where sequence = 3").update();
    sql.sql(
            "update audit_chain_head set sequence = 2,"
                + " seal = (select seal from audit_record where sequence = 2)")
        .update();
    migrate();

    assertThatThrownBy(this::open)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("ends at record 2");
  }

  private void migrate() {
    migrate("latest");
  }

  private void migrate(String to) {
    Flyway.configure().dataSource(database).target(to).load().migrate();
  }

  private Records open() {
    return new Records(database, seal, keys.checkpoints(), CLOCK);
  }

  private static void insertAsTheFirstVersionDid(JdbcClient sql, Link link, AuditRecord r) {
    sql.sql(
            "insert into audit_record (sequence, previous, seal, id, recorded_at, caller,"
                + " job_order, work_master, operation, machine, verdict, score, rule_base,"
                + " catalogue, engine, body) values (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)")
        .params(
            link.sequence(),
            link.previous(),
            link.seal(),
            r.id(),
            r.time().atOffset(ZoneOffset.UTC),
            r.asked().caller(),
            r.asked().jobOrder(),
            r.asked().workMaster(),
            r.asked().operation(),
            r.asked().machine(),
            r.judged().verdict(),
            r.judged().score(),
            r.versions().ruleBase(),
            r.versions().catalogue(),
            r.versions().engine(),
            link.text().text())
        .update();
    int place = 0;
    for (RecordedFinding f : r.findings()) {
      sql.sql("insert into audit_finding values (?,?,?,?,?)")
          .params(link.sequence(), place++, f.cardId(), f.severity(), f.kind())
          .update();
    }
  }

  private void insertAsTheVersionBeforeDid(JdbcClient sql, Acceptance given) {
    String before =
        sql.sql("select seal from audit_chain_head where id = 1").query(String.class).single();
    Link link = seal.key().seal(4, before, given.body());
    sql.sql(
            "insert into audit_record (sequence, previous, seal, record_type, id, about,"
                + " recorded_at, job_order, body) values (4, ?, ?, 'acceptance', ?, ?, ?, ?, ?)")
        .params(
            link.previous(),
            link.seal(),
            given.id(),
            given.assessment(),
            given.time().atOffset(ZoneOffset.UTC),
            given.jobOrder(),
            link.text().text())
        .update();
    sql.sql("insert into audit_finding values (4, 0, ?, ?, 'accepted')")
        .params(given.card(), given.severity())
        .update();
    sql.sql("update audit_chain_head set sequence = 4, seal = ?").param(link.seal()).update();
  }

  /** The line the first version wrote: signed with the chain key, over a line a part. */
  private String statementOfTheFirstVersion(long place, String of) throws Exception {
    byte[] secret = Base64.getDecoder().decode(Files.readString(keys.chain().path()).strip());
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(new SecretKeySpec(secret, "HmacSHA256"));
    mac.update("standproud checkpoint 1\0".getBytes(StandardCharsets.UTF_8));
    String covered = place + "\n" + of + "\n" + SEVEN + "\n" + seal.key().id();
    String signature = HexFormat.of().formatHex(mac.doFinal(covered.getBytes()));
    return "{\"sequence\":%d,\"seal\":\"%s\",\"time\":\"%s\",\"keyId\":\"%s\",\"signature\":\"%s\"}"
        .formatted(place, of, SEVEN, seal.key().id(), signature);
  }
}

package org.standproud.audit.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.LogEntry;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.rules.engine.Revision;
import org.standproud.rules.publishing.Proposal;
import org.standproud.rules.publishing.RevisionStore;
import org.standproud.rules.publishing.StoredRevision;
import org.standproud.rules.publishing.TextHash;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The revisions in the order in which they went into service, in the database of the records,
 * shared by all replicas. Their cards are in the rule-base archive.
 */
public final class RevisionLog implements RevisionStore, ChainedLog {

  private static final String REVISIONS =
      "select l.number, l.publisher, l.note, l.parent, r.id, r.content_hash, r.author,"
          + " r.published_at from rule_base_log l join rule_base_revision r on r.id = l.revision";

  private static final String NAME = "rule base";

  private static final JsonMapper JSON = JsonMapper.shared();

  private final JdbcClient client;
  private final TransactionTemplate transaction;
  private final RuleBaseArchive archive;
  private final RecordTables tables;
  private final @Nullable Records chain;

  /**
   * Opens the log without the chain of records, so that it cannot be checked.
   *
   * @param dataSource a database with the audit tables
   * @param archive the archive of their cards, in the same database
   */
  public RevisionLog(DataSource dataSource, RuleBaseArchive archive) {
    this(dataSource, archive, null);
  }

  /**
   * Opens the log. Each revision has its digest in the chain, and is checked with it.
   *
   * @param dataSource the database of the records
   * @param records the chain, and the archive of cards
   */
  public RevisionLog(DataSource dataSource, Records records) {
    this(dataSource, records.ruleBases(), records);
    records.check(this);
  }

  private RevisionLog(DataSource dataSource, RuleBaseArchive archive, @Nullable Records chain) {
    this.chain = chain;
    this.client = JdbcClient.create(dataSource);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.archive = archive;
    this.tables = new RecordTables(dataSource);
  }

  @Override
  public List<StoredRevision> revisions() {
    return client.sql(REVISIONS + " order by l.number").query(RevisionLog::revision).list();
  }

  @Override
  public Optional<StoredRevision> latest() {
    return client
        .sql(REVISIONS + " order by l.number desc fetch first 1 rows only")
        .query(RevisionLog::revision)
        .optional();
  }

  private static StoredRevision revision(ResultSet row, int number) throws SQLException {
    return new StoredRevision(
        row.getLong("number"),
        new Revision(
            row.getString("id"),
            row.getString("content_hash"),
            row.getString("author"),
            row.getString("note"),
            row.getObject("published_at", OffsetDateTime.class).toInstant(),
            row.getString("parent")),
        row.getString("publisher"));
  }

  /** The number is the key, so of two replicas that publish at once one fails and retries. */
  @Override
  public boolean append(StoredRevision revision, Map<String, String> files) {
    Optional<StoredRevision> latest = latest();
    long next = latest.map(StoredRevision::number).orElse(0L) + 1;
    String parent = latest.map(StoredRevision::id).orElse("");
    String onto = revision.revision().parent();
    if (revision.number() != next || !parent.equals(onto == null ? "" : onto)) {
      return false;
    }
    try {
      if (chain == null) {
        transaction.executeWithoutResult(t -> insert(revision, files));
      } else {
        chain.append(entry(revision, files), () -> insert(revision, files));
      }
    } catch (DuplicateKeyException another) {
      return false;
    } catch (RecordNotStored e) {
      if (latest().map(StoredRevision::number).orElse(0L) >= next) {
        return false; // Another replica was a moment earlier.
      }
      throw e;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a revision was being stored", e);
    }
    tables.force();
    return true;
  }

  @Override
  public String name() {
    return NAME;
  }

  private static LogEntry entry(StoredRevision revision, Map<String, String> files) {
    return new LogEntry(
        AuditRecord.newId(),
        revision.revision().time(),
        NAME,
        revision.number(),
        digest(revision, new KeptRuleBase(revision.revision(), files).text()));
  }

  /** Every column of the log and of its revision, and the cards. */
  private static String digest(StoredRevision revision, CanonicalJson content) {
    ObjectNode entry = JSON.valueToTree(revision);
    entry.put("content", content.sha256());
    return CanonicalJson.of(entry).sha256();
  }

  @Override
  public SortedMap<Long, String> digests() {
    SortedMap<Long, String> digests = new TreeMap<>();
    for (StoredRevision revision : revisions()) {
      digests.put(
          revision.number(),
          archive
              .text(revision.id())
              .map(text -> digest(revision, new CanonicalJson(text)))
              .orElse(""));
    }
    return digests;
  }

  private void insert(StoredRevision revision, Map<String, String> files) {
    archive.keep(new KeptRuleBase(revision.revision(), files));
    client
        .sql(
            "insert into rule_base_log (number, revision, publisher, note, parent)"
                + " values (?, ?, ?, ?, ?)")
        .param(revision.number())
        .param(revision.id())
        .param(revision.publisher())
        .param(revision.revision().note())
        .param(revision.revision().parent())
        .update();
    for (String file : unseen(files)) {
      client
          .sql("insert into rule_card_text (file, hash) values (?, ?)")
          .params(file, TextHash.of(files.getOrDefault(file, "")))
          .update();
    }
  }

  @Override
  public Optional<Map<String, String>> files(String revision) {
    return archive.find(revision).map(KeptRuleBase::cards);
  }

  @Override
  public Set<String> unseen(Map<String, String> files) {
    Set<String> seen =
        client
            .sql("select file, hash from rule_card_text")
            .query((row, n) -> row.getString(1) + " " + row.getString(2))
            .set();
    return files.entrySet().stream()
        .filter(f -> !seen.contains(f.getKey() + " " + TextHash.of(f.getValue())))
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  @Override
  public List<Proposal> proposals() {
    return client
        .sql("select content from rule_base_proposal order by proposed_at, id")
        .query((row, n) -> JSON.readValue(row.getString(1), Proposal.class))
        .list();
  }

  @Override
  public void keep(Proposal proposal) {
    client
        .sql("insert into rule_base_proposal (id, proposed_at, content) values (?, ?, ?)")
        .params(
            UUID.fromString(proposal.id()),
            proposal.time().atOffset(ZoneOffset.UTC),
            JSON.writeValueAsString(proposal))
        .update();
    tables.force();
  }

  @Override
  public void drop(String proposal) {
    client
        .sql("delete from rule_base_proposal where id = ?")
        .param(UUID.fromString(proposal))
        .update();
  }
}

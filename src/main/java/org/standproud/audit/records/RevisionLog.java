package org.standproud.audit.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.rules.engine.Revision;
import org.standproud.rules.publishing.Proposal;
import org.standproud.rules.publishing.RevisionStore;
import org.standproud.rules.publishing.StoredRevision;
import org.standproud.rules.publishing.TextHash;
import tools.jackson.databind.json.JsonMapper;

/**
 * The revisions in the order in which they came into service, in the database of the records: all
 * replicas on it follow one log. Their cards lie in the archive that answers are given again from.
 */
public final class RevisionLog implements RevisionStore {

  private static final String REVISIONS =
      "select l.number, l.publisher, l.note, l.parent, r.id, r.content_hash, r.author,"
          + " r.published_at from rule_base_log l join rule_base_revision r on r.id = l.revision";

  private static final JsonMapper JSON = JsonMapper.shared();

  private final JdbcClient client;
  private final TransactionTemplate transaction;
  private final RuleBaseArchive archive;
  private final RecordTables tables;

  /**
   * Opens the log.
   *
   * @param dataSource a database with the audit tables
   * @param archive where their cards are kept, in the same database
   */
  public RevisionLog(DataSource dataSource, RuleBaseArchive archive) {
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

  /** The number is the key, so of two replicas that publish at once one is told to look again. */
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
      transaction.executeWithoutResult(t -> insert(revision, files));
    } catch (DuplicateKeyException another) {
      return false;
    }
    tables.force();
    return true;
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

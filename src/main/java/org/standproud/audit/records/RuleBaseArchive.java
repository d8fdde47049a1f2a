package org.standproud.audit.records;

import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.KeptRuleBase;

/**
 * Every rule base that ever produced an answer. A revision's id is a hash over its content, so a
 * changed text no longer matches the revision that an answer names.
 */
public final class RuleBaseArchive {

  /** Name of a revision line in an exported chain. */
  public static final String NAME = "ruleBase";

  private final JdbcClient client;
  private final TransactionTemplate transaction;
  private final AppendListener listener;

  public RuleBaseArchive(DataSource dataSource, AppendListener listener) {
    this.client = JdbcClient.create(dataSource);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.listener = listener;
  }

  /**
   * Stores a rule base, unless it is stored already.
   *
   * @param ruleBase the rule base, stored before its first answer is sent
   */
  public void keep(KeptRuleBase ruleBase) {
    if (find(ruleBase.revision().id()).isPresent()) {
      return;
    }
    try {
      transaction.executeWithoutResult(
          status -> {
            insert(ruleBase);
            listener.ruleBase(ruleBase);
          });
    } catch (DuplicateKeyException another) {
      if (find(ruleBase.revision().id())
          .isEmpty()) { // Otherwise another service stored it meanwhile.
        throw another;
      }
    }
  }

  private void insert(KeptRuleBase ruleBase) {
    client
        .sql(
            "insert into rule_base_revision (id, content_hash, author, published_at, content)"
                + " values (?, ?, ?, ?, ?)")
        .params(
            ruleBase.revision().id(),
            ruleBase.revision().contentHash(),
            ruleBase.revision().author(),
            ruleBase.revision().time().atOffset(ZoneOffset.UTC),
            ruleBase.text().text())
        .update();
  }

  /**
   * Finds a rule base.
   *
   * @param revision id of the revision
   */
  public Optional<KeptRuleBase> find(String revision) {
    return text(revision).map(text -> KeptRuleBase.from(new CanonicalJson(text)));
  }

  /** The stored text of a rule base. */
  Optional<String> text(String revision) {
    return client
        .sql("select content from rule_base_revision where id = ?")
        .param(revision)
        .query(String.class)
        .optional();
  }

  /** Passes the text of every rule base, in order of publication. */
  public void texts(Consumer<CanonicalJson> use) {
    client
        .sql("select id from rule_base_revision order by published_at, id")
        .query(String.class)
        .list()
        .forEach(id -> find(id).map(KeptRuleBase::text).ifPresent(use));
  }
}

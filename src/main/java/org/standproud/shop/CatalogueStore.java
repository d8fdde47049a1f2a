package org.standproud.shop;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.LogEntry;
import org.standproud.audit.records.ChainedLog;
import org.standproud.audit.records.RecordNotStored;
import org.standproud.audit.records.Records;
import org.standproud.setup.request.CatalogueShelf;

/**
 * The catalogue with all its revisions. Every read checks the database for a newer one, so a change
 * at one replica is visible at all of them from the next call on. Changes made together become one
 * revision, or none.
 */
public final class CatalogueStore implements ChainedLog {

  private static final String NAME = "catalogue";

  /** Longest note, in UTF-16 code units; the width of the column. */
  public static final int LONGEST_NOTE = 500;

  private final CatalogueTable table;
  private final TransactionTemplate transaction;
  private final Clock clock;
  private final @Nullable Records chain;
  private volatile CatalogueSnapshot latest = CatalogueSnapshot.NOTHING;

  /**
   * Creates the store without the chain of records, so that it cannot be checked.
   *
   * @param dataSource a database with its tables
   * @param clock clock for revisions
   */
  public CatalogueStore(DataSource dataSource, Clock clock) {
    this(dataSource, null, clock);
  }

  /**
   * Creates the store. Each revision has its digest in the chain of records, and is checked with
   * it.
   *
   * @param dataSource the database of the records
   * @param chain the chain; null for none
   * @param clock clock for revisions
   */
  public CatalogueStore(DataSource dataSource, @Nullable Records chain, Clock clock) {
    this.chain = chain;
    this.table = new CatalogueTable(dataSource);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.clock = clock;
    if (chain != null) {
      chain.check(this);
    }
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public SortedMap<Long, String> digests() {
    return table.digests();
  }

  /**
   * The current catalogue. Without the database it is the last one read: no answer can be stored
   * then, and so none is sent.
   *
   * @throws IllegalArgumentException if this version of the program cannot read an item that
   *     another wrote
   */
  public CatalogueSnapshot now() {
    CatalogueSnapshot known = latest;
    try {
      return at(table.head());
    } catch (DataAccessException e) {
      if (known.sequence() == 0) {
        throw e;
      }
      return known;
    }
  }

  /**
   * Changes the catalogue.
   *
   * @param plan returns the changes for the current catalogue; nothing else changes meanwhile. An
   *     empty list changes nothing; an exception is passed on, and nothing is changed
   * @param author author of the change
   * @param note the reason
   * @return the catalogue afterwards
   */
  public CatalogueSnapshot change(
      Function<CatalogueSnapshot, List<CatalogueSnapshot.Change>> plan,
      String author,
      String note) {
    Records records = chain;
    if (records != null) {
      return chained(plan, author, note, records);
    }
    CatalogueSnapshot after =
        transaction.execute(
            status -> {
              CatalogueSnapshot now = at(table.lockHead());
              List<CatalogueSnapshot.Change> changes = plan.apply(now);
              if (changes.isEmpty()) {
                return now;
              }
              CatalogueSnapshot next = now.with(changes);
              table.insert(
                  next, changes, author, clock.instant().truncatedTo(ChronoUnit.MICROS), note);
              return next;
            });
    keep(after);
    return after;
  }

  /**
   * The same, planned before the chain's single writer gets it, and planned again if another change
   * came first.
   */
  private CatalogueSnapshot chained(
      Function<CatalogueSnapshot, List<CatalogueSnapshot.Change>> plan,
      String author,
      String note,
      Records records) {
    while (true) {
      CatalogueSnapshot now = at(table.head());
      List<CatalogueSnapshot.Change> changes = plan.apply(now);
      if (changes.isEmpty()) {
        return now;
      }
      CatalogueSnapshot next = now.with(changes);
      Instant time = clock.instant().truncatedTo(ChronoUnit.MICROS);
      CatalogueTable.Row row =
          new CatalogueTable.Row(next.sequence(), next.catalogue().revision(), time, author, note);
      LogEntry entry =
          new LogEntry(
              AuditRecord.newId(), time, NAME, row.sequence(), CatalogueTable.digest(row, changes));
      try {
        records.append(
            entry,
            () -> {
              if (table.lockHead() != now.sequence()) {
                throw new OptimisticLockingFailureException("the catalogue was changed meanwhile");
              }
              table.insert(next, changes, author, time, note);
            });
        keep(next);
        return next;
      } catch (RecordNotStored e) {
        if (table.head() == now.sequence()) {
          throw e;
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("interrupted while the catalogue was being stored", e);
      }
    }
  }

  /** Every revision of an item, newest first. */
  public List<CatalogueRevision> history(CatalogueShelf shelf, String name) {
    return table.history(shelf, name);
  }

  /**
   * Revisions of the catalogue, newest first.
   *
   * @param revision only those with this content hash; null for all
   * @param before only those before this number
   * @param most most revisions
   */
  public List<CatalogueRevision> revisions(@Nullable String revision, long before, int most) {
    return table.revisions(revision, before, most);
  }

  private CatalogueSnapshot at(long sequence) {
    CatalogueSnapshot known = latest;
    if (known.sequence() == sequence) {
      return known;
    }
    CatalogueSnapshot read = table.read(sequence);
    keep(read);
    return read;
  }

  private synchronized void keep(CatalogueSnapshot read) {
    if (read.sequence() > latest.sequence()) {
      latest = read;
    }
  }
}

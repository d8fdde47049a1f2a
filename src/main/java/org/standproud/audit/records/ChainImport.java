package org.standproud.audit.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.ChainDigest;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.ChainVerifier;
import org.standproud.audit.chain.Link;
import org.standproud.audit.replay.KeptRuleBase;

/** Restores an exported chain into an empty database, after checking it. */
public final class ChainImport {

  private static final int AT_A_TIME = 200;

  private final RecordTables tables;
  private final RuleBaseArchive ruleBases;
  private final TransactionTemplate transaction;
  private final ChainKeys seal;

  /**
   * Creates an import.
   *
   * @param dataSource a database with the audit tables and no record
   * @param seal the keys of the service that wrote the chain
   */
  public ChainImport(DataSource dataSource, ChainKeys seal) {
    this.tables = new RecordTables(dataSource);
    this.ruleBases = new RuleBaseArchive(dataSource, AppendListener.NOTHING);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.seal = seal;
  }

  /**
   * Checks a file and imports it, all or nothing.
   *
   * @param export a file from {@link Records#export}
   * @param checkpoints lines of checkpoint files kept elsewhere
   * @return the report of the check; nothing was imported unless the chain is intact
   * @throws IllegalStateException if the database holds records already
   */
  public ChainReport read(Path export, List<String> checkpoints) {
    ChainVerifier check = new ChainVerifier(seal.key(), List.of(seal.signing().verifying()));
    ChainReport found = ChainExport.verify(export, check, checkpoints);
    if (found.whole()) {
      transaction.executeWithoutResult(status -> takeIn(export));
      tables.force();
    }
    return found;
  }

  private void takeIn(Path export) {
    tables.claim(seal.key().id());
    RecordTables.Head head = tables.lockHead();
    if (head.sequence() != 0) {
      throw new IllegalStateException("The database holds " + head.sequence() + " records already");
    }
    Intake intake = new Intake();
    try {
      ChainExport.read(export, intake);
    } catch (IOException e) {
      throw new UncheckedIOException("Export " + export, e);
    }
    intake.flush();
  }

  /** Lines on their way into the tables. */
  private final class Intake implements ChainExport.Lines {

    private final List<Link> links = new ArrayList<>();
    private String digest = ChainDigest.START;

    @Override
    public void link(Link link) {
      digest = ChainDigest.after(digest, link);
      links.add(link);
      if (links.size() == AT_A_TIME) {
        flush();
      }
    }

    @Override
    public void beside(String name, CanonicalJson value) {
      if (name.equals(RuleBaseArchive.NAME)) {
        ruleBases.keep(KeptRuleBase.from(value));
      }
    }

    @Override
    public void unreadable(long number) {
      throw new IllegalStateException("Line " + number + " changed while it was read");
    }

    private void flush() {
      if (!links.isEmpty()) {
        tables.insert(links, links.stream().map(Prepared::of).toList(), seal.key());
        tables.moveHead(links.get(links.size() - 1), digest);
        links.clear();
      }
    }
  }
}

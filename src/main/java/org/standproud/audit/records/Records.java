package org.standproud.audit.records;

import java.io.Writer;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.RecordType;
import org.standproud.audit.Withholding;
import org.standproud.audit.chain.ChainDigest;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.Link;
import org.standproud.audit.chain.VerifyingKey;

/**
 * Stores every answer on disk before it is sent.
 *
 * <p>Thread-safe; several services may share one PostgreSQL database and still write one chain,
 * because each append locks the head of the chain.
 */
public final class Records implements AutoCloseable {

  private static final int MOST_WAITING = 1_024;
  private static final int LARGEST_GROUP = 128;
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final RecordTables tables;
  private final TransactionTemplate transaction;
  private final ChainKeys seal;
  private final AppendListener listener;
  private final EvidenceDigest digest;
  private final DigestReader shorts;
  private final RuleBaseArchive ruleBases;
  private final RecordSearch search;
  private final StoredChain audit;
  private final Checkpoints checkpoints;
  private final GroupCommit<Prepared, Stored> writer;

  /**
   * Opens the store.
   *
   * @param dataSource a database with the audit tables
   * @param seal keys that seal records and sign checkpoints
   * @param outside file of checkpoints
   * @param clock clock for checkpoints
   * @throws IllegalStateException if another key sealed the records there, or if the database holds
   *     less than the checkpoints state
   */
  public Records(DataSource dataSource, ChainKeys seal, CheckpointFile outside, Clock clock) {
    this(dataSource, seal, outside, clock, AppendListener.NOTHING, EvidenceDigest.NOTHING);
  }

  /**
   * Opens the store.
   *
   * @param dataSource a database with the audit tables
   * @param seal keys that seal records and sign checkpoints
   * @param outside file of checkpoints
   * @param clock clock for checkpoints
   * @param listener called for every record and rule base in its transaction
   * @param digest computes the digest of every answer
   * @throws IllegalStateException if another key sealed the records there, or if the database holds
   *     less than the checkpoints state
   */
  public Records(
      DataSource dataSource,
      ChainKeys seal,
      CheckpointFile outside,
      Clock clock,
      AppendListener listener,
      EvidenceDigest digest) {
    this(dataSource, seal, outside, clock, listener, digest, LARGEST_GROUP);
  }

  /** Sets another limit on records in one transaction, to measure its effect. */
  Records(
      DataSource dataSource,
      ChainKeys seal,
      CheckpointFile outside,
      Clock clock,
      AppendListener listener,
      EvidenceDigest digest,
      int largestGroup) {
    PackedText.load();
    this.digest = digest;
    this.tables = new RecordTables(dataSource);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.seal = seal;
    this.listener = listener;
    this.ruleBases = new RuleBaseArchive(dataSource, listener);
    claimChain();
    this.search = new RecordSearch(dataSource, seal.key());
    this.shorts = new DigestReader(tables, transaction, digest);
    this.audit = new StoredChain(tables, seal, ruleBases, digest, outside, clock);
    computeDigest();
    this.checkpoints = new Checkpoints(tables::head, seal, outside, clock);
    this.writer = new GroupCommit<>(this::commit, MOST_WAITING, largestGroup, PATIENCE);
  }

  /**
   * Stores a record in the chain.
   *
   * <p>Appending the same record again returns its position, so a caller in doubt may simply try
   * again.
   *
   * @param record the record
   * @return its position, once it is on disk
   * @throws StoreBusy if too many records wait
   * @throws RecordNotStored if it could not be stored, for example because its id belongs to a
   *     different record
   * @throws InterruptedException if interrupted; the record may be stored nevertheless
   */
  public Stored append(ChainRecord record) throws InterruptedException {
    return append(record, TransactionalWrite.NOTHING);
  }

  /**
   * Stores a record in the chain, together with a write of the caller's: either both are stored or
   * neither.
   *
   * @param record the record
   * @param extra the other write, in the same transaction
   * @return its position, once both are on disk
   * @throws StoreBusy if too many records wait
   * @throws RecordNotStored if they could not be stored
   * @throws InterruptedException if interrupted; both may be stored nevertheless
   */
  public Stored append(ChainRecord record, TransactionalWrite extra) throws InterruptedException {
    if (record instanceof Withholding) {
      throw new IllegalArgumentException(
          "texts are withheld by Retention, together with its record");
    }
    return writer.append(Prepared.of(record, digest, extra));
  }

  /**
   * Stores an answer in the chain with its digest, which is not computed from its text again.
   *
   * @param record the record
   * @param numbers exactly the bytes that the {@link EvidenceDigest} of this store computes from
   *     the record
   * @return its position, once it is on disk
   * @throws StoreBusy if too many records wait
   * @throws RecordNotStored if it could not be stored
   * @throws InterruptedException if interrupted; the record may be stored nevertheless
   */
  public Stored append(AuditRecord record, byte[] numbers) throws InterruptedException {
    return append(record, numbers, TransactionalWrite.NOTHING);
  }

  /**
   * Stores an answer in the chain with its digest and a write of the caller's.
   *
   * @param record the record
   * @param numbers exactly the bytes that the {@link EvidenceDigest} of this store computes from
   *     the record
   * @param extra the other write, in the same transaction
   * @return its position, once all are on disk
   * @throws StoreBusy if too many records wait
   * @throws RecordNotStored if they could not be stored
   * @throws InterruptedException if interrupted; they may be stored nevertheless
   */
  public Stored append(AuditRecord record, byte[] numbers, TransactionalWrite extra)
      throws InterruptedException {
    boolean wanted = digest != EvidenceDigest.NOTHING;
    return writer.append(Prepared.of(record, wanted ? numbers : null, extra));
  }

  /** Stores a record of removal in the chain and removes the texts, in one transaction. */
  Stored withhold(Withholding order, List<Prepared.Masked> taken) throws InterruptedException {
    return writer.append(Prepared.taking(order, taken));
  }

  /** The key that verifies the checkpoints of this service. */
  public VerifyingKey publicKey() {
    return seal.signing().verifying();
  }

  /** The archive of rule bases. */
  public RuleBaseArchive ruleBases() {
    return ruleBases;
  }

  /**
   * Finds an answer.
   *
   * @param id its id
   * @return the record, or the rest of it; empty if there is none
   */
  public Optional<StoredRecord> find(UUID id) {
    return tables
        .find(id)
        .filter(row -> row.columns().recordType().equals(RecordType.ASSESSMENT.word()))
        .map(Records::answer);
  }

  /**
   * Finds any record.
   *
   * @param id its id
   */
  public Optional<ChainRecord> findAny(UUID id) {
    return tables.find(id).map(row -> ChainRecord.from(row.link().text()));
  }

  /**
   * The decisions about an assessment or an acceptance.
   *
   * @param type acceptances of an assessment, or withdrawals of an acceptance
   * @param about its id
   * @return oldest first
   */
  public List<ChainRecord> about(RecordType type, UUID about) {
    return records(tables.about(type, about));
  }

  /**
   * The decisions for a job order.
   *
   * @param type type of the records
   * @param jobOrder the job order
   * @return oldest first
   */
  public List<ChainRecord> ofJobOrder(RecordType type, String jobOrder) {
    return records(tables.ofJobOrder(type, jobOrder));
  }

  private static List<ChainRecord> records(List<RecordTables.Row> rows) {
    return rows.stream().map(row -> ChainRecord.from(row.link().text())).toList();
  }

  /**
   * Passes every answer of a query, newest first, a page at a time, without a limit.
   *
   * @param query the query
   * @param use consumes the answers
   */
  public void each(RecordQuery query, Consumer<StoredRecord> use) {
    search.each(query, row -> use.accept(answer(row)));
  }

  /**
   * Every answer of a query, newest first, as a lazy stream that reads a page at a time.
   *
   * @param query the query
   */
  public Stream<StoredRecord> stream(RecordQuery query) {
    return search.stream(query).map(Records::answer);
  }

  /**
   * Every answer with a digest, as its digest, newest first, as a lazy stream that reads a page at
   * a time.
   */
  public Stream<DigestRecord> digests() {
    return shorts.stream();
  }

  /**
   * Counts the answers of a query.
   *
   * @param query the query
   */
  public long count(RecordQuery query) {
    return search.count(query);
  }

  /** Rows of decisions in a period before a position, newest first. */
  List<RecordTables.Row> decisions(RecordQuery span, long before, int most) {
    return search.decisions(span, before, most);
  }

  /** Rows of answers before a position, newest first. */
  List<RecordTables.Row> rows(RecordQuery query, long before, int most) {
    return search.rows(query, before, most);
  }

  /**
   * How each card was used: those that never fired, and those whose findings are accepted.
   *
   * @param query the period; its words are ignored
   * @param inService ids of the cards to report, used or not
   * @return those cards and every other that fired, by id
   */
  public List<RuleUse> useOfRules(RecordQuery query, Set<String> inService) {
    return search.useOfRules(query, inService);
  }

  private static StoredRecord answer(RecordTables.Row row) {
    return new StoredRecord(
        stored(row.columns().id(), row.link()),
        AuditRecord.from(row.link().text()),
        row.link().body() != null);
  }

  /**
   * Lists records, newest first.
   *
   * @param query the query
   * @param limit most records to return, from 1 to {@link RecordSearch#LARGEST_PAGE}
   * @param cursor cursor of an earlier page, null to begin
   * @return a page of records
   * @throws IllegalArgumentException for a limit out of range or an invalid cursor
   */
  public RecordPage search(RecordQuery query, int limit, @Nullable String cursor) {
    return search.page(query, limit, cursor);
  }

  /**
   * Counts findings over time.
   *
   * @param query which records, and which findings of them
   * @param span length of the periods, in whole seconds; they begin at whole multiples since
   *     1970-01-01T00:00Z
   * @return counts by card, severity, kind and period, in that order
   */
  public List<RuleCount> countByRule(RecordQuery query, Duration span) {
    return search.countByRule(query, span);
  }

  /**
   * Adds a log outside the chain to the chain check.
   *
   * @param log the log, whose entries are appended here
   */
  public void check(ChainedLog log) {
    audit.check(log);
  }

  /**
   * Checks the chain in the database, and that the index columns agree with the records.
   *
   * @return the report
   */
  public ChainReport verify() {
    return audit.verify();
  }

  /**
   * Writes the whole chain as NDJSON, with a closing checkpoint, for checking elsewhere.
   *
   * @param out the output; not closed
   * @throws java.io.UncheckedIOException if it cannot be written
   */
  public void export(Writer out) {
    audit.export(out);
  }

  /** Writes a checkpoint outside the database, if the chain has grown since the last. */
  @Scheduled(initialDelayString = "PT1M", fixedDelayString = "PT1M")
  public void checkpoint() {
    checkpoints.stateEnd();
  }

  /** Stores what waits, writes a checkpoint, and stops accepting records. */
  @Override
  public void close() {
    writer.close();
    checkpoints.close();
  }

  private void claimChain() {
    ChainKey key = seal.key();
    tables.claim(key.id());
    String owner = tables.head().keyId();
    if (!key.id().equals(owner)) {
      throw new IllegalStateException(
          "The records there are sealed with key "
              + owner
              + ", the key given is "
              + key.id()
              + "; bring back the right chain key file");
    }
  }

  /** A chain of the first version has no digest yet. */
  private void computeDigest() {
    transaction.executeWithoutResult(
        status -> {
          if (tables.lockHead().digest() == null) {
            tables.setDigest(audit.digest());
          }
        });
  }

  private List<Stored> commit(List<Prepared> group) {
    List<Link> links;
    try {
      links = transaction.execute(status -> chain(group));
    } catch (DuplicateKeyException e) {
      if (group.size() > 1) {
        throw e; // The group is retried one by one.
      }
      Stored before = sameAsBefore(group.get(0), e);
      tables.force();
      return List.of(before);
    }
    tables.force();
    checkpoints.moved(links.get(links.size() - 1).sequence());
    List<Stored> stored = new ArrayList<>();
    for (int i = 0; i < links.size(); i++) {
      stored.add(stored(group.get(i).columns().id(), links.get(i)));
    }
    return stored;
  }

  private List<Link> chain(List<Prepared> group) {
    RecordTables.Head head = tables.lockHead();
    List<Link> links = new ArrayList<>();
    long sequence = head.sequence();
    String previous = head.seal();
    String digest = head.known();
    for (Prepared record : group) {
      Link link = seal.key().seal(++sequence, previous, record.body());
      previous = link.seal();
      digest = ChainDigest.after(digest, link);
      links.add(link);
    }
    tables.insert(links, group, seal.key());
    group.forEach(record -> record.taken().forEach(taken -> tables.mask(taken, seal.key())));
    group.forEach(record -> record.extra().write());
    listener.records(group.stream().map(Prepared::record).toList());
    tables.moveHead(links.get(links.size() - 1), digest);
    return links;
  }

  private Stored sameAsBefore(Prepared record, DuplicateKeyException clash) {
    UUID id = record.columns().id();
    Link before = tables.find(id).map(RecordTables.Row::link).orElseThrow(() -> clash);
    if (!before.digest().equals(record.body().sha256())) {
      throw new RecordNotStored("Another record has the id " + id, clash);
    }
    return stored(id, before);
  }

  private static Stored stored(UUID id, Link link) {
    return new Stored(id, link.sequence(), link.seal());
  }
}

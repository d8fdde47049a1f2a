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
 * Every answer given, on disk before it is sent.
 *
 * <p>Safe for use by many threads; several services may share one PostgreSQL database and still
 * write one chain, for whoever appends locks the chain's head.
 */
public final class Records implements AutoCloseable {

  private static final int MOST_WAITING = 1_024;
  private static final int LARGEST_GROUP = 128;
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final RecordTables tables;
  private final TransactionTemplate transaction;
  private final ChainKeys seal;
  private final AppendListener following;
  private final EvidenceDigest inShort;
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
   * @param seal seals the records and signs checkpoints
   * @param outside where checkpoints go
   * @param clock time of checkpoints
   * @throws IllegalStateException when another key sealed the records there, or when the database
   *     holds less than the checkpoints state
   */
  public Records(DataSource dataSource, ChainKeys seal, CheckpointFile outside, Clock clock) {
    this(dataSource, seal, outside, clock, AppendListener.NOTHING, EvidenceDigest.NOTHING);
  }

  /**
   * Opens the store.
   *
   * @param dataSource a database with the audit tables
   * @param seal seals the records and signs checkpoints
   * @param outside where checkpoints go
   * @param clock time of checkpoints
   * @param following what follows every record and rule base in its transaction
   * @param inShort what lies beside every answer in short
   * @throws IllegalStateException when another key sealed the records there, or when the database
   *     holds less than the checkpoints state
   */
  public Records(
      DataSource dataSource,
      ChainKeys seal,
      CheckpointFile outside,
      Clock clock,
      AppendListener following,
      EvidenceDigest inShort) {
    this(dataSource, seal, outside, clock, following, inShort, LARGEST_GROUP);
  }

  /** With another limit on how many records one transaction holds, to measure what that does. */
  Records(
      DataSource dataSource,
      ChainKeys seal,
      CheckpointFile outside,
      Clock clock,
      AppendListener following,
      EvidenceDigest inShort,
      int largestGroup) {
    PackedText.load();
    this.inShort = inShort;
    this.tables = new RecordTables(dataSource);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.seal = seal;
    this.following = following;
    this.ruleBases = new RuleBaseArchive(dataSource, following);
    claimChain();
    this.search = new RecordSearch(dataSource, seal.key());
    this.shorts = new DigestReader(tables, transaction, inShort);
    this.audit = new StoredChain(tables, seal, ruleBases, inShort, outside, clock);
    computeDigest();
    this.checkpoints = new Checkpoints(tables::head, seal, outside, clock);
    this.writer = new GroupCommit<>(this::commit, MOST_WAITING, largestGroup, PATIENCE);
  }

  /**
   * Puts a record on disk and into the chain.
   *
   * <p>Appending the very same record again gives the place it has already, so a caller that was
   * left in doubt may simply try again.
   *
   * @param record what to keep
   * @return its place, once it is on disk
   * @throws StoreBusy when too many records wait
   * @throws RecordNotStored when it could not be stored, among others because its id belongs to a
   *     different record
   * @throws InterruptedException when interrupted; the record may be stored nevertheless
   */
  public Stored append(ChainRecord record) throws InterruptedException {
    return append(record, TransactionalWrite.NOTHING);
  }

  /**
   * Puts a record on disk and into the chain, and something of the caller's with it. Where that
   * cannot be written the record is not stored either.
   *
   * @param record what to keep
   * @param alongside what is written in the same transaction
   * @return its place, once both are on disk
   * @throws StoreBusy when too many records wait
   * @throws RecordNotStored when they could not be stored
   * @throws InterruptedException when interrupted; both may be stored nevertheless
   */
  public Stored append(ChainRecord record, TransactionalWrite alongside)
      throws InterruptedException {
    if (record instanceof Withholding) {
      throw new IllegalArgumentException(
          "texts are withheld by Retention, together with its record");
    }
    return writer.append(Prepared.of(record, inShort, alongside));
  }

  /**
   * Puts an answer on disk and into the chain, with its numbers in short, which are not read out of
   * its text again.
   *
   * @param record what to keep
   * @param numbers the very bytes that the {@link EvidenceDigest} of this store makes of the record
   * @return its place, once it is on disk
   * @throws StoreBusy when too many records wait
   * @throws RecordNotStored when it could not be stored
   * @throws InterruptedException when interrupted; the record may be stored nevertheless
   */
  public Stored append(AuditRecord record, byte[] numbers) throws InterruptedException {
    return append(record, numbers, TransactionalWrite.NOTHING);
  }

  /**
   * Puts an answer on disk and into the chain, with its numbers in short and something of the
   * caller's.
   *
   * @param record what to keep
   * @param numbers the very bytes that the {@link EvidenceDigest} of this store makes of the record
   * @param alongside what is written in the same transaction
   * @return its place, once all are on disk
   * @throws StoreBusy when too many records wait
   * @throws RecordNotStored when they could not be stored
   * @throws InterruptedException when interrupted; they may be stored nevertheless
   */
  public Stored append(AuditRecord record, byte[] numbers, TransactionalWrite alongside)
      throws InterruptedException {
    boolean wanted = inShort != EvidenceDigest.NOTHING;
    return writer.append(Prepared.of(record, wanted ? numbers : null, alongside));
  }

  /** Puts a record that takes texts away into the chain, and takes them, in one transaction. */
  Stored withhold(Withholding order, List<Prepared.Masked> taken) throws InterruptedException {
    return writer.append(Prepared.taking(order, taken));
  }

  /** The key that checks the checkpoints of this service. */
  public VerifyingKey publicKey() {
    return seal.signing().verifying();
  }

  /** The rule bases whose answers are here. */
  public RuleBaseArchive ruleBases() {
    return ruleBases;
  }

  /**
   * Finds one answer.
   *
   * @param id its id
   * @return the record, or what is left of it; empty when there is none
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
   * What people decided about an assessment or an acceptance.
   *
   * @param type acceptances of an assessment, or withdrawals of an acceptance
   * @param about its id
   * @return oldest first
   */
  public List<ChainRecord> about(RecordType type, UUID about) {
    return records(tables.about(type, about));
  }

  /**
   * What people decided for a job order.
   *
   * @param type of the records wanted
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
   * Gives every answer that a query finds, newest first, a page at a time: as many as there are.
   *
   * @param query which
   * @param use takes them
   */
  public void each(RecordQuery query, Consumer<StoredRecord> use) {
    search.each(query, row -> use.accept(answer(row)));
  }

  /**
   * Every answer that a query finds, newest first, read a page at a time as the stream is drawn.
   *
   * @param query which
   */
  public Stream<StoredRecord> stream(RecordQuery query) {
    return search.stream(query).map(Records::answer);
  }

  /**
   * Every answer of which numbers are left, in short, newest first, read a page at a time as the
   * stream is drawn.
   */
  public Stream<DigestRecord> inShort() {
    return shorts.stream();
  }

  /**
   * How many answers a query finds.
   *
   * @param query which
   */
  public long count(RecordQuery query) {
    return search.count(query);
  }

  /** Rows of decisions in a span of time before a place, newest first. */
  List<RecordTables.Row> decisions(RecordQuery span, long before, int most) {
    return search.decisions(span, before, most);
  }

  /** Rows of answers before a place, newest first. */
  List<RecordTables.Row> rows(RecordQuery query, long before, int most) {
    return search.rows(query, before, most);
  }

  /**
   * How each card has been used: those that never spoke, and those whose findings people accept.
   *
   * @param query the span of time; its words are not heard
   * @param inService ids of the cards asked about, used or not
   * @return those cards and every other that spoke, by id
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
   * @param query which
   * @param limit most records to return, from 1 to {@link RecordSearch#LARGEST_PAGE}
   * @param cursor where an earlier page said to go on, null to begin
   * @return the records and where to go on
   * @throws IllegalArgumentException for a limit out of range or a cursor not given by a page
   */
  public RecordPage search(RecordQuery query, int limit, @Nullable String cursor) {
    return search.page(query, limit, cursor);
  }

  /**
   * Counts what the cards said over time.
   *
   * @param query in which records, and which findings of them
   * @param span length of the spans counted over, in whole seconds; they begin at whole multiples
   *     since 1970-01-01T00:00Z
   * @return counts by card, severity, kind and span, in that order
   */
  public List<RuleCount> countByRule(RecordQuery query, Duration span) {
    return search.countByRule(query, span);
  }

  /**
   * Has a log that lies beside the records checked with the chain.
   *
   * @param log the log, whose entries are appended here
   */
  public void check(ChainedLog log) {
    audit.check(log);
  }

  /**
   * Checks the chain in the database, and that what records are searched by is what they say.
   *
   * @return what was found
   */
  public ChainReport verify() {
    return audit.verify();
  }

  /**
   * Writes the whole chain as NDJSON, with a closing checkpoint, to be checked elsewhere.
   *
   * @param out where to; not closed
   * @throws java.io.UncheckedIOException when it cannot be written
   */
  public void export(Writer out) {
    audit.export(out);
  }

  /** States the end of the chain outside the database, if it has moved since the last time. */
  @Scheduled(initialDelayString = "PT1M", fixedDelayString = "PT1M")
  public void checkpoint() {
    checkpoints.stateEnd();
  }

  /** Stores what waits, states the end of the chain, and takes no more. */
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
        throw e; // The group is tried again one by one.
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
    group.forEach(record -> record.alongside().write());
    following.records(group.stream().map(Prepared::record).toList());
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

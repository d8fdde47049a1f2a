package org.standproud.rules.desk;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.Revision;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.impact.PastJobs;

/**
 * The one desk over which cards come into service: check, build, run the examples, look at
 * coverage, judge past jobs again, keep the revision, swap. Whatever fails on the way leaves the
 * cards before in service. Publications are done one after another; trying and reading go on
 * meanwhile.
 */
public final class CardDesk {

  private final Gate gate;
  private final RevisionStore store;
  private final ActiveRuleBase active;
  private final Publishing publishing;
  private final Impact impact;
  private final PastJobs past;
  private final Clock clock;
  private final ReentrantLock publication = new ReentrantLock();

  /**
   * A desk that has put nothing into service yet; see {@link #follow}.
   *
   * @param gate what cards have to pass
   * @param store where revisions are kept
   * @param active where the rule base in service stands
   * @param publishing how many persons it takes
   * @param impact how past jobs are judged again
   * @param past the past jobs
   * @param clock tells when cards are proposed and published
   */
  public CardDesk(
      Gate gate,
      RevisionStore store,
      ActiveRuleBase active,
      Publishing publishing,
      Impact impact,
      PastJobs past,
      Clock clock) {
    this.gate = gate;
    this.store = store;
    this.active = active;
    this.publishing = publishing;
    this.impact = impact;
    this.past = past;
    this.clock = clock;
  }

  /**
   * What the gate says of cards, without keeping anything.
   *
   * @param files the text of each file by its path
   */
  public GateResult validate(Map<String, String> files) {
    return gate.check(files, draft());
  }

  /**
   * Tries cards on a set-up; they need not pass the gate, only be fit to be built.
   *
   * @param files the text of each file by its path
   * @param evidence the facts of the set-up
   */
  public Trial tryOn(Map<String, String> files, Evidence evidence) {
    Gate.Draft draft = gate.draft(files, draft());
    return new Trial(
        draft.ruleBase() == null ? null : draft.ruleBase().evaluate(evidence),
        active.get().map(base -> base.evaluate(evidence)).orElse(null),
        draft.errors(),
        draft.warnings());
  }

  private Authorship draft() {
    return new Authorship("draft", "not published", Instant.EPOCH, null);
  }

  /**
   * Proposes cards: they pass the gate, are judged on past jobs and wait to be published.
   *
   * @param files the text of each file by its path
   * @param proposer who proposes them
   * @param note why, in one sentence
   * @param progress watches the work on past jobs and may end it
   * @return Proposed, Refused, Unchanged or Cancelled
   */
  public DeskAnswer propose(
      Map<String, String> files, String proposer, String note, Impact.Progress progress) {
    Optional<StoredRevision> latest = store.latest();
    String onto = latest.map(StoredRevision::id).orElse(null);
    Checked checked = check(files, new Authorship(proposer, note, now(), onto), latest, progress);
    if (checked.passed == null || checked.impact == null) {
      return checked.answer();
    }
    Proposal proposal =
        new Proposal(UUID.randomUUID().toString(), proposer, note, now(), onto, hashes(files));
    store.keep(proposal, files.values());
    return new DeskAnswer.Proposed(proposal, checked.passed.warnings(), checked.impact);
  }

  /** The proposals that wait, oldest first. */
  public List<Proposal> proposals() {
    return store.proposals();
  }

  /**
   * Lets a proposal go.
   *
   * @param proposal its id
   */
  public void withdraw(String proposal) {
    store.drop(proposal);
  }

  /**
   * Puts proposed cards into service.
   *
   * @param proposal id of the proposal
   * @param publisher who publishes it
   * @param progress watches the work on past jobs and may end it
   * @return Published, Refused, Unchanged, Stale, SecondPersonNeeded, Cancelled or NotThere
   */
  public DeskAnswer publish(String proposal, String publisher, Impact.Progress progress) {
    Optional<Proposal> found =
        store.proposals().stream().filter(p -> p.id().equals(proposal)).findFirst();
    if (found.isEmpty()) {
      return new DeskAnswer.NotThere(proposal);
    }
    Proposal waiting = found.get();
    if (publishing == Publishing.TWO_PERSONS
        && waiting.proposer().strip().equalsIgnoreCase(publisher.strip())) {
      return new DeskAnswer.SecondPersonNeeded(waiting);
    }
    DeskAnswer answer =
        serve(
            texts(waiting.files()),
            new Account(waiting.proposer(), publisher, waiting.note()),
            waiting.onto(),
            progress);
    if (answer instanceof DeskAnswer.Published || answer instanceof DeskAnswer.Unchanged) {
      store.drop(proposal);
    }
    return answer;
  }

  /**
   * Proposes cards and publishes them at once; where it takes two persons they wait for the second.
   *
   * @param files the text of each file by its path
   * @param author who writes and publishes them
   * @param note why, in one sentence
   * @param progress watches the work on past jobs and may end it
   * @return Published, Proposed, Refused, Unchanged, Stale or Cancelled
   */
  public DeskAnswer publish(
      Map<String, String> files, String author, String note, Impact.Progress progress) {
    return publishing == Publishing.TWO_PERSONS
        ? propose(files, author, note, progress)
        : serve(
            files,
            new Account(author, author, note),
            store.latest().map(StoredRevision::id).orElse(null),
            progress);
  }

  /**
   * Puts the cards of an old revision into service again, as a new revision.
   *
   * @param revision id of the old revision
   * @param author who rolls back
   * @param note why, in one sentence
   * @param progress watches the work on past jobs and may end it
   * @return Published, Proposed, Refused, Unchanged, Stale, Cancelled or NotThere
   */
  public DeskAnswer rollBack(
      String revision, String author, String note, Impact.Progress progress) {
    Optional<Map<String, String>> files = files(revision);
    return files.isPresent()
        ? publish(files.get(), author, note, progress)
        : new DeskAnswer.NotThere(revision);
  }

  /**
   * Puts the latest revision of the store into service if it is not: at the start, and when another
   * replica has published.
   *
   * @return Published if it now serves, Unchanged if it did already, NotThere if the store is
   *     empty, Refused if its cards no longer pass
   * @throws StoreDamaged if the cards kept are not those that were published
   */
  public DeskAnswer follow() {
    publication.lock();
    try {
      Optional<StoredRevision> latest = store.latest();
      if (latest.isEmpty()) {
        return new DeskAnswer.NotThere("");
      }
      StoredRevision revision = latest.get();
      if (active.get().map(b -> b.revision().id().equals(revision.id())).orElse(false)) {
        return new DeskAnswer.Unchanged(revision);
      }
      GateResult result = gate.check(texts(revision.files()), revision.authorship());
      if (!(result instanceof GateResult.Published passed)) {
        return refused(result);
      }
      if (!passed.ruleBase().revision().id().equals(revision.id())) {
        throw new StoreDamaged("the cards of revision " + revision.id() + " were changed");
      }
      active.accept(passed);
      ImpactReport none = impact.of(passed.ruleBase(), PastJobs.NONE, Impact.Progress.UNWATCHED);
      return new DeskAnswer.Published(revision, passed.warnings(), none);
    } finally {
      publication.unlock();
    }
  }

  /** Every revision, oldest first. */
  public List<StoredRevision> revisions() {
    return store.revisions();
  }

  /**
   * The texts of a revision by their paths, if there is such a revision.
   *
   * @param revision its id
   */
  public Optional<Map<String, String>> files(String revision) {
    return store.revisions().stream()
        .filter(r -> r.id().equals(revision))
        .findFirst()
        .map(r -> texts(r.files()));
  }

  /** The texts in service by their paths; empty if none are. */
  public Map<String, String> files() {
    return store.latest().map(r -> texts(r.files())).orElseGet(Map::of);
  }

  /**
   * What differs between two revisions, if there are both.
   *
   * @param before id of the earlier
   * @param after id of the later
   */
  public Optional<RevisionDiff> diff(String before, String after) {
    return files(before)
        .flatMap(b -> files(after).map(a -> RevisionDiff.between(cards(b), cards(a))));
  }

  /**
   * What differs between the cards in service and others.
   *
   * @param files the text of each other file by its path; a card that cannot be read counts as gone
   */
  public RevisionDiff diff(Map<String, String> files) {
    return RevisionDiff.between(cards(files()), cards(files));
  }

  /**
   * What would change for past jobs.
   *
   * @param candidate the cards to judge them under
   * @param progress watches the work and may end it
   */
  public ImpactReport impact(RuleBase candidate, Impact.Progress progress) {
    return impact.of(candidate, past, progress);
  }

  private static List<Card> cards(Map<String, String> files) {
    return files.entrySet().stream()
        .map(e -> CardReader.read(e.getKey(), e.getValue()).card())
        .flatMap(card -> Optional.ofNullable(card).stream())
        .toList();
  }

  private record Account(String author, String publisher, String note) {}

  /** What the gate and the past jobs say; no impact if the answer is known without it. */
  private record Checked(
      GateResult.@Nullable Published passed,
      @Nullable ImpactReport impact,
      Supplier<DeskAnswer> early) {
    DeskAnswer answer() {
      return early.get();
    }
  }

  private Checked check(
      Map<String, String> files,
      Authorship by,
      Optional<StoredRevision> latest,
      Impact.Progress progress) {
    GateResult result = gate.check(files, by);
    if (!(result instanceof GateResult.Published passed)) {
      return new Checked(null, null, () -> refused(result));
    }
    String content = passed.ruleBase().revision().contentHash();
    if (latest.map(r -> r.contentHash().equals(content)).orElse(false)) {
      return new Checked(passed, null, () -> new DeskAnswer.Unchanged(latest.get()));
    }
    ImpactReport report = impact(passed.ruleBase(), progress);
    return report.complete()
        ? new Checked(passed, report, () -> new DeskAnswer.Stale(by.parent()))
        : new Checked(passed, null, () -> new DeskAnswer.Cancelled(report));
  }

  private static DeskAnswer refused(GateResult result) {
    return result instanceof GateResult.Rejected rejected
        ? new DeskAnswer.Refused(rejected.errors(), rejected.warnings())
        : new DeskAnswer.Refused(List.of(), result.warnings());
  }

  private DeskAnswer serve(
      Map<String, String> files, Account account, @Nullable String onto, Impact.Progress progress) {
    publication.lock();
    try {
      Optional<StoredRevision> latest = store.latest();
      String parent = latest.map(StoredRevision::id).orElse(null);
      if (!(parent == null ? onto == null : parent.equals(onto))) {
        return new DeskAnswer.Stale(parent);
      }
      Authorship by = new Authorship(account.author, account.note, now(), parent);
      Checked checked = check(files, by, latest, progress);
      if (checked.passed == null || checked.impact == null) {
        return checked.answer();
      }
      StoredRevision stored = stored(checked.passed.ruleBase().revision(), account, latest, files);
      if (!store.append(stored, files.values())) {
        return new DeskAnswer.Stale(store.latest().map(StoredRevision::id).orElse(null));
      }
      active.accept(checked.passed);
      return new DeskAnswer.Published(stored, checked.passed.warnings(), checked.impact);
    } finally {
      publication.unlock();
    }
  }

  private static StoredRevision stored(
      Revision revision,
      Account account,
      Optional<StoredRevision> latest,
      Map<String, String> files) {
    return new StoredRevision(
        latest.map(StoredRevision::number).orElse(0L) + 1,
        revision.id(),
        revision.contentHash(),
        account.author,
        account.publisher,
        account.note,
        revision.time(),
        revision.parent(),
        hashes(files));
  }

  private static Map<String, String> hashes(Map<String, String> files) {
    Map<String, String> hashes = new TreeMap<>();
    files.forEach((file, text) -> hashes.put(file, TextHash.of(text)));
    return hashes;
  }

  private Map<String, String> texts(Map<String, String> hashes) {
    Map<String, String> texts = new TreeMap<>();
    hashes.forEach((file, hash) -> texts.put(file, store.text(hash)));
    return texts;
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }
}

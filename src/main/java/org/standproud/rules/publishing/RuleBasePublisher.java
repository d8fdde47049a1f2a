package org.standproud.rules.publishing;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.gate.WeakenedStops;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.publishing.PublishResult.Cancelled;
import org.standproud.rules.publishing.PublishResult.ImpactToRead;
import org.standproud.rules.publishing.PublishResult.NotThere;
import org.standproud.rules.publishing.PublishResult.Proposed;
import org.standproud.rules.publishing.PublishResult.Published;
import org.standproud.rules.publishing.PublishResult.ReasonNeeded;
import org.standproud.rules.publishing.PublishResult.Refused;
import org.standproud.rules.publishing.PublishResult.SecondPersonNeeded;
import org.standproud.rules.publishing.PublishResult.Stale;
import org.standproud.rules.publishing.PublishResult.Unchanged;

/**
 * The one way to put cards into service: check, build, run the examples, measure coverage, judge
 * past jobs again, store the revision, swap. Any failure leaves the previous cards in service.
 * Publications run one after another; trials and reads go on meanwhile.
 */
public final class RuleBasePublisher {

  private static final Authorship DRAFT =
      new Authorship("draft", "not published", Instant.EPOCH, null);

  private final Gate gate;
  private final RevisionStore store;
  private final ActiveRuleBase active;
  private final Publishing publishing;
  private final Impact impact;
  private final PastJobs past;
  private final Clock clock;
  private final ReentrantLock publication = new ReentrantLock();
  private final RecentImpact recent = new RecentImpact();

  /**
   * Creates a publisher with nothing in service yet; see {@link #follow}.
   *
   * @param gate the gate
   * @param store stores revisions
   * @param active holds the rule base in service
   * @param publishing how many persons it takes
   * @param impact judges past jobs again
   * @param past the past jobs
   * @param clock clock for proposals and publications
   */
  public RuleBasePublisher(
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

  /** The rule base in service here, if there is one. */
  public Optional<RuleBase> inService() {
    return active.get();
  }

  /**
   * Runs the gate, without storing anything.
   *
   * @param edit the change of the cards in the store
   */
  public GateResult validate(CardEdit edit) {
    Optional<StoredRevision> latest = store.latest();
    GateResult result = gate.check(edit.onto(files(latest)), DRAFT);
    return result instanceof GateResult.Published passed
        ? new GateResult.Published(
            passed.ruleBase(), passed.coverage(), warnings(passed, weakened(passed, latest)))
        : result;
  }

  /**
   * Tries cards on a set-up; they need not pass the gate, only compile.
   *
   * @param edit the change of the cards in the store
   * @param evidence the facts of the set-up
   */
  public Trial tryOn(CardEdit edit, Evidence evidence) {
    Gate.Draft draft = gate.draft(edit.onto(files()), DRAFT);
    return new Trial(
        draft.ruleBase() == null ? null : draft.ruleBase().evaluate(evidence),
        active.get().map(base -> base.evaluate(evidence)).orElse(null),
        draft.errors(),
        draft.warnings());
  }

  /**
   * Proposes cards: they pass the gate and wait for publication. The same cards proposed again by
   * the same person are the same proposal.
   *
   * @param edit the change of the cards in the store
   * @param proposer their author
   * @param note the reason, in one sentence
   * @return Proposed, Refused, Unchanged or Stale
   */
  public PublishResult propose(CardEdit edit, String proposer, String note) {
    Optional<StoredRevision> latest = store.latest();
    return edit.isStale(latest)
        ? stale(latest)
        : propose(edit.onto(files(latest)), latest, proposer, note);
  }

  private PublishResult propose(
      Map<String, String> files, Optional<StoredRevision> latest, String proposer, String note) {
    if (latest.isPresent() && serves(latest.get(), files)) {
      return new Unchanged(latest.get());
    }
    String onto = latest.map(StoredRevision::id).orElse(null);
    GateResult result = gate.check(files, new Authorship(proposer, note, now(), onto));
    if (!(result instanceof GateResult.Published passed)) {
      return refused(result);
    }
    if (saysTheSame(passed.ruleBase(), latest)) {
      return new Unchanged(latest.get());
    }
    Proposal proposal =
        new Proposal(UUID.randomUUID().toString(), proposer, note, now(), onto, files);
    Optional<Proposal> same =
        store.proposals().stream()
            .filter(p -> p.files().equals(proposal.files()) && p.proposer().equals(proposer))
            .filter(p -> onto == null ? p.onto() == null : onto.equals(p.onto()))
            .findFirst();
    if (same.isEmpty()) {
      store.keep(proposal);
    }
    return new Proposed(same.orElse(proposal), warnings(passed, weakened(passed, latest)));
  }

  /** The pending proposals, oldest first. */
  public List<Proposal> proposals() {
    return store.proposals();
  }

  /**
   * A pending proposal.
   *
   * @param id its id
   */
  public Optional<Proposal> proposal(String id) {
    return store.proposals().stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /**
   * How a proposal would weaken stops in service; empty if it no longer passes.
   *
   * @param proposal the proposal
   */
  public List<CardWarning> weakened(Proposal proposal) {
    return gate.check(proposal.files(), DRAFT) instanceof GateResult.Published passed
        ? weakened(passed, store.latest())
        : List.of();
  }

  /**
   * Discards a proposal.
   *
   * @param proposal its id
   */
  public void withdraw(String proposal) {
    store.drop(proposal);
  }

  /**
   * Publishes proposed cards.
   *
   * @param proposal id of the proposal
   * @param publisher the person who publishes
   * @param progress observes the work on past jobs and may cancel it
   * @return see {@link #publish(String, String, String, Impact.Progress)}
   */
  public PublishResult publish(String proposal, String publisher, Impact.Progress progress) {
    return publish(proposal, publisher, "", progress);
  }

  /**
   * Publishes proposed cards.
   *
   * @param proposal id of the proposal
   * @param publisher the person who publishes
   * @param reason the reason, in addition to the note of the proposal; may be empty
   * @param progress observes the work on past jobs and may cancel it
   * @return Published, Refused, Unchanged, Stale, SecondPersonNeeded, ReasonNeeded, ImpactToRead,
   *     Cancelled or NotThere
   */
  public PublishResult publish(
      String proposal, String publisher, String reason, Impact.Progress progress) {
    Optional<Proposal> found = proposal(proposal);
    if (found.isEmpty()) {
      return new NotThere(proposal);
    }
    Proposal waiting = found.get();
    if (publishing == Publishing.TWO_PERSONS
        && waiting.proposer().strip().equalsIgnoreCase(publisher.strip())) {
      return new SecondPersonNeeded(waiting);
    }
    String note = reason.isBlank() ? waiting.note() : waiting.note() + " - " + reason.strip();
    Account account = new Account(waiting.proposer(), publisher, note);
    PublishResult answer = serve(waiting.files(), account, waiting.onto(), waiting, progress);
    if (answer instanceof Published || answer instanceof Unchanged) {
      store.drop(proposal);
    }
    return answer;
  }

  /**
   * Proposes cards and publishes them at once; if a second person is needed, for all cards or for a
   * weakened stop, they wait, unless they are the first revision.
   *
   * @param edit the change of the cards in the store
   * @param author their author and publisher
   * @param note the reason, in one sentence
   * @param progress observes the work on past jobs and may cancel it
   * @return Published, Proposed, Refused, Unchanged, Stale or Cancelled
   */
  public PublishResult publish(
      CardEdit edit, String author, String note, Impact.Progress progress) {
    Optional<StoredRevision> latest = store.latest();
    return edit.isStale(latest)
        ? stale(latest)
        : publish(edit.onto(files(latest)), latest, author, note, progress);
  }

  private PublishResult publish(
      Map<String, String> files,
      Optional<StoredRevision> latest,
      String author,
      String note,
      Impact.Progress progress) {
    return publishing == Publishing.TWO_PERSONS && latest.isPresent()
        ? propose(files, latest, author, note)
        : serve(
            files,
            new Account(author, author, note),
            latest.map(StoredRevision::id).orElse(null),
            null,
            progress);
  }

  /**
   * Restores the cards of an old revision, as a new revision.
   *
   * @param revision id of the old revision
   * @param author the person who restores them
   * @param note the reason, in one sentence
   * @param progress observes the work on past jobs and may cancel it
   * @return Published, Proposed, Refused, Unchanged, Stale, Cancelled or NotThere
   */
  public PublishResult rollBack(
      String revision, String author, String note, Impact.Progress progress) {
    return store
        .files(revision)
        .map(files -> publish(files, store.latest(), author, note, progress))
        .orElseGet(() -> new NotThere(revision));
  }

  /**
   * Puts the latest revision of the store into service if it is not: at start, and when another
   * replica has published.
   *
   * @return Published if it is now in service, Unchanged if it was already, NotThere if the store
   *     is empty, Refused if its cards no longer pass
   * @throws StoreDamaged if the stored cards are not those published
   */
  public PublishResult follow() {
    publication.lock();
    try {
      Optional<StoredRevision> latest = store.latest();
      if (latest.isEmpty()) {
        return new NotThere("");
      }
      StoredRevision revision = latest.get();
      if (active.get().map(b -> b.revision().id().equals(revision.id())).orElse(false)) {
        return new Unchanged(revision);
      }
      GateResult result = gate.check(files(latest), revision.authorship());
      if (!(result instanceof GateResult.Published passed)) {
        return refused(result);
      }
      if (!passed.ruleBase().revision().equals(revision.revision())) {
        throw new StoreDamaged("the cards of revision " + revision.id() + " were changed");
      }
      active.accept(passed);
      ImpactReport none = impact.of(passed.ruleBase(), PastJobs.NONE, Impact.Progress.UNWATCHED);
      return new Published(revision, passed.warnings(), none);
    } finally {
      publication.unlock();
    }
  }

  /** The latest revision in the store, if there is one. */
  public Optional<StoredRevision> latest() {
    return store.latest();
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
    return store.files(revision);
  }

  /** The texts of the latest revision by their paths; empty if there is none. */
  public Map<String, String> files() {
    return files(store.latest());
  }

  private Map<String, String> files(Optional<StoredRevision> revision) {
    return revision
        .map(
            r ->
                store
                    .files(r.id())
                    .orElseThrow(() -> new StoreDamaged("the cards of " + r.id() + " are gone")))
        .orElseGet(Map::of);
  }

  /**
   * The files whose text no revision ever had.
   *
   * @param files the text of each file by its path
   * @return the paths
   */
  public Set<String> unseen(Map<String, String> files) {
    return store.unseen(files);
  }

  /**
   * Compares two revisions, if both exist.
   *
   * @param before id of the earlier
   * @param after id of the later
   */
  public Optional<RevisionDiff> diff(String before, String after) {
    return files(before).flatMap(b -> files(after).map(a -> diff(b, a)));
  }

  /**
   * Compares some cards with others; a card that cannot be parsed counts as removed.
   *
   * @param before the text of each file by its path
   * @param after the same later
   */
  public RevisionDiff diff(Map<String, String> before, Map<String, String> after) {
    return RevisionDiff.between(cards(before), cards(after));
  }

  /**
   * The impact on past jobs. Publishing the same cards within ten minutes reuses it, unless another
   * revision was published in between.
   *
   * @param candidate the cards to judge them with
   * @param progress observes the work and may cancel it
   */
  public ImpactReport impact(RuleBase candidate, Impact.Progress progress) {
    Instant begun = now();
    RecentImpact.Question question = question(candidate, store.latest());
    ImpactReport report = impact.of(candidate, past, progress);
    recent.keep(question, report, begun);
    return report;
  }

  private static RecentImpact.Question question(
      RuleBase candidate, Optional<StoredRevision> latest) {
    return new RecentImpact.Question(
        candidate.revision().contentHash(), latest.map(StoredRevision::id).orElse(null));
  }

  private static List<Card> cards(Map<String, String> files) {
    return files.entrySet().stream()
        .map(e -> CardReader.read(e.getKey(), e.getValue()).card())
        .flatMap(card -> Optional.ofNullable(card).stream())
        .toList();
  }

  private record Account(String author, String publisher, String note) {}

  private static boolean saysTheSame(RuleBase cards, Optional<StoredRevision> latest) {
    String content = cards.revision().contentHash();
    return latest.map(r -> r.revision().contentHash().equals(content)).orElse(false);
  }

  /**
   * Whether exactly these texts are in service here, so that they have passed and change nothing.
   */
  private boolean serves(StoredRevision latest, Map<String, String> files) {
    return active.get().map(base -> base.revision().id().equals(latest.id())).orElse(false)
        && store.files(latest.id()).map(files::equals).orElse(false);
  }

  private static Stale stale(Optional<StoredRevision> latest) {
    return new Stale(latest.map(StoredRevision::id).orElse(null));
  }

  private static PublishResult refused(GateResult result) {
    return result instanceof GateResult.Rejected rejected
        ? new Refused(rejected.errors(), rejected.warnings())
        : new Refused(List.of(), result.warnings());
  }

  /**
   * How stops in service would be weakened; empty if nothing is in service, or if what was can no
   * longer be built, so that no stop of it applies.
   */
  private List<CardWarning> weakened(GateResult.Published passed, Optional<StoredRevision> latest) {
    return latest
        .flatMap(this::ruleBase)
        .map(before -> WeakenedStops.between(before, passed.ruleBase()))
        .orElseGet(List::of);
  }

  private Optional<RuleBase> ruleBase(StoredRevision revision) {
    return active
        .get()
        .filter(base -> base.revision().id().equals(revision.id()))
        .or(
            () ->
                Optional.ofNullable(
                    gate.draft(files(Optional.of(revision)), revision.authorship()).ruleBase()));
  }

  private static List<CardWarning> warnings(
      GateResult.Published passed, List<CardWarning> weakened) {
    List<CardWarning> all = new ArrayList<>(weakened);
    all.addAll(passed.warnings());
    return all;
  }

  /** The weakened stops that a note does not name. */
  private static List<CardWarning> unnamed(List<CardWarning> weakened, String note) {
    Set<String> words = new HashSet<>(List.of(note.split("[^A-Za-z0-9-]+")));
    return weakened.stream().filter(stop -> !words.contains(stop.card())).toList();
  }

  /** What is missing before a stop may be weakened, if anything. */
  private Optional<PublishResult> guard(
      List<CardWarning> weakened,
      Account account,
      @Nullable Proposal waiting,
      Optional<ImpactReport> seen,
      Supplier<ImpactReport> impact) {
    if (publishing == Publishing.ONE_PERSON || weakened.isEmpty() || waiting == null) {
      return Optional.empty();
    }
    if (account.author.strip().equalsIgnoreCase(account.publisher.strip())) {
      return Optional.of(new SecondPersonNeeded(waiting));
    }
    List<CardWarning> unnamed = unnamed(weakened, account.note);
    if (!unnamed.isEmpty()) {
      return Optional.of(new ReasonNeeded(waiting, unnamed));
    }
    if (seen.isPresent()) {
      return Optional.empty();
    }
    ImpactReport report = impact.get();
    return Optional.of(
        report.complete() ? new ImpactToRead(waiting, weakened, report) : new Cancelled(report));
  }

  private PublishResult serve(
      Map<String, String> files,
      Account account,
      @Nullable String onto,
      @Nullable Proposal waiting,
      Impact.Progress progress) {
    publication.lock();
    try {
      Optional<StoredRevision> latest = store.latest();
      String parent = latest.map(StoredRevision::id).orElse(null);
      if (!(parent == null ? onto == null : parent.equals(onto))) {
        return stale(latest);
      }
      if (latest.isPresent() && serves(latest.get(), files)) {
        return new Unchanged(latest.get());
      }
      GateResult result =
          gate.check(files, new Authorship(account.author, account.note, now(), parent));
      if (!(result instanceof GateResult.Published passed)) {
        return refused(result);
      }
      if (saysTheSame(passed.ruleBase(), latest)) {
        // Another program version may have published what this one could not build until now.
        return active.get().isPresent() ? new Unchanged(latest.get()) : follow();
      }
      List<CardWarning> weakened = weakened(passed, latest);
      if (publishing == Publishing.TWO_FOR_STOPS && !weakened.isEmpty() && waiting == null) {
        return propose(files, latest, account.author, account.note);
      }
      Optional<ImpactReport> seen = recent.find(question(passed.ruleBase(), latest), now());
      Supplier<ImpactReport> judged = () -> impact(passed.ruleBase(), progress);
      Optional<PublishResult> missing = guard(weakened, account, waiting, seen, judged);
      if (missing.isPresent()) {
        return missing.get();
      }
      ImpactReport report =
          seen.map(r -> r.under(passed.ruleBase().revision().id())).orElseGet(judged);
      return report.complete()
          ? swap(passed, weakened, report, account.publisher, latest, files)
          : new Cancelled(report);
    } finally {
      publication.unlock();
    }
  }

  /** Stored first, then put into service: an answer never names a revision that can be lost. */
  private PublishResult swap(
      GateResult.Published passed,
      List<CardWarning> weakened,
      ImpactReport report,
      String publisher,
      Optional<StoredRevision> latest,
      Map<String, String> files) {
    long number = latest.map(StoredRevision::number).orElse(0L) + 1;
    StoredRevision stored = new StoredRevision(number, passed.ruleBase().revision(), publisher);
    if (!store.append(stored, files)) {
      return stale(store.latest());
    }
    active.accept(passed);
    return new Published(stored, warnings(passed, weakened), report);
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }
}

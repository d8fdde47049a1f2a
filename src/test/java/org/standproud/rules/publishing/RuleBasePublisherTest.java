package org.standproud.rules.publishing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.Shop;
import org.standproud.rules.SmallCards;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.impact.PastJob;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.language.UnitReader;
import org.standproud.rules.publishing.PublishResult.Cancelled;
import org.standproud.rules.publishing.PublishResult.NotThere;
import org.standproud.rules.publishing.PublishResult.Proposed;
import org.standproud.rules.publishing.PublishResult.Published;
import org.standproud.rules.publishing.PublishResult.Refused;
import org.standproud.rules.publishing.PublishResult.SecondPersonNeeded;
import org.standproud.rules.publishing.PublishResult.Stale;
import org.standproud.rules.publishing.PublishResult.Unchanged;
import org.standproud.rules.publishing.RevisionDiff.PartChange;
import org.standproud.rules.trace.Kind;

class RuleBasePublisherTest {

  private static final Impact.Progress UNWATCHED = Impact.Progress.UNWATCHED;
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
  private static final Evidence PLATE =
      Shop.evidence(Shop.STICK_OUT, 0.044, Shop.GRIP_DEPTH, 0.020);

  private final RevisionsInMemory store = new RevisionsInMemory();
  private final ActiveRuleBase active = new ActiveRuleBase();
  private RuleBasePublisher desk;

  @BeforeEach
  void openTheDesk() {
    desk = desk(Publishing.ONE_PERSON, active, PastJobs.NONE);
  }

  private RuleBasePublisher desk(Publishing publishing, ActiveRuleBase active, PastJobs past) {
    return desk(SmallCards.gate(), publishing, active, past);
  }

  private RuleBasePublisher desk(
      Gate gate, Publishing publishing, ActiveRuleBase active, PastJobs past) {
    return new RuleBasePublisher(
        gate, store, active, publishing, new Impact(SmallCards.VERDICT, 1), past, CLOCK);
  }

  private StoredRevision publish(Map<String, String> files) {
    PublishResult answer = desk.publish(CardEdit.of(files), "engineer", "a note", UNWATCHED);
    assertThat(answer).isInstanceOf(Published.class);
    return ((Published) answer).revision();
  }

  private String serving() {
    return active.get().orElseThrow().revision().id();
  }

  @Test
  void theFirstCardsPublishedServeAndAreKept() {
    StoredRevision first = publish(SmallCards.files());
    assertThat(first.number()).isEqualTo(1);
    assertThat(first.revision().parent()).isNull();
    assertThat(serving()).isEqualTo(first.id());
    assertThat(desk.files()).isEqualTo(SmallCards.files());
    assertThat(store.revisions()).containsExactly(first);
  }

  @Test
  void eachRevisionNamesTheOneBeforeIt() {
    StoredRevision first = publish(SmallCards.files());
    StoredRevision second = publish(SmallCards.tall("2.1"));
    assertThat(second.revision().parent()).isEqualTo(first.id());
    assertThat(desk.revisions()).containsExactly(first, second);
  }

  @Test
  void cardsThatAreRefusedLeaveWhatServes() {
    StoredRevision first = publish(SmallCards.files());
    PublishResult answer =
        desk.publish(CardEdit.of(SmallCards.tall("2.5 mm")), "engineer", "n", UNWATCHED);
    assertThat(answer).isInstanceOf(Refused.class);
    assertThat(((Refused) answer).errors().toString()).contains("holding/tall.yaml:12");
    assertThat(serving()).isEqualTo(first.id());
    assertThat(desk.revisions()).hasSize(1);
  }

  @Test
  void anExampleThatFailsLeavesWhatServes() {
    StoredRevision first = publish(SmallCards.files());
    assertThat(desk.publish(CardEdit.of(SmallCards.tall("9")), "engineer", "n", UNWATCHED))
        .isInstanceOf(Refused.class);
    assertThat(serving()).isEqualTo(first.id());
  }

  @Test
  void aStoreThatFailsLeavesWhatServes() {
    StoredRevision first = publish(SmallCards.files());
    store.fails(true);
    assertThatThrownBy(() -> publish(SmallCards.tall("2.1"))).hasMessage("the disk is full");
    assertThat(serving()).isEqualTo(first.id());
    store.fails(false);
    assertThat(publish(SmallCards.tall("2.1")).number()).isEqualTo(2);
  }

  @Test
  void cardsThatSayTheSameMakeNoRevision() {
    StoredRevision first = publish(SmallCards.files());
    Map<String, String> commented = SmallCards.files();
    commented.computeIfPresent(SmallCards.TALL, (f, t) -> "# a comment\n" + t);
    assertThat(desk.publish(CardEdit.of(commented), "engineer", "n", UNWATCHED))
        .isEqualTo(new Unchanged(first));
  }

  @Test
  void cardsThatServeAreNotTriedAgainUntilATextOfThemIsAnother() {
    AtomicInteger read = new AtomicInteger();
    UnitReader counting =
        text -> {
          read.incrementAndGet();
          return Shop.UNIT_READER.read(text);
        };
    Gate gate =
        new Gate(Shop.VOCABULARY, counting, name -> Optional.empty(), Coverage.Demand.REFUSE);
    desk = desk(gate, Publishing.ONE_PERSON, active, PastJobs.NONE);
    StoredRevision first = publish(SmallCards.files());
    int once = read.getAndSet(0);
    assertThat(once).isPositive();

    CardEdit same = CardEdit.of(SmallCards.files());
    assertThat(desk.publish(same, "engineer", "n", UNWATCHED)).isEqualTo(new Unchanged(first));
    assertThat(desk.propose(same, "engineer", "n")).isEqualTo(new Unchanged(first));
    assertThat(read).hasValue(0);

    desk = desk(gate, Publishing.ONE_PERSON, new ActiveRuleBase(), PastJobs.NONE);
    assertThat(desk.follow()).isInstanceOf(Published.class);
    assertThat(read.getAndSet(0)).isEqualTo(once);
    publish(SmallCards.tall("2.1"));
    assertThat(read).hasValue(once);
  }

  @Test
  void cardsThatPassedElsewhereAreTriedHereBeforeTheyServe() {
    publish(SmallCards.files());
    ActiveRuleBase nothingYet = new ActiveRuleBase();
    RuleBasePublisher replica = desk(Publishing.ONE_PERSON, nothingYet, PastJobs.NONE);
    replica.publish(CardEdit.of(SmallCards.files()), "engineer", "n", UNWATCHED);
    assertThat(nothingYet.get()).isPresent();
  }

  @Test
  void cardsCanBeTriedOnASetUpWithoutServing() {
    publish(SmallCards.files());
    String before = serving();
    Trial trial = desk.tryOn(CardEdit.of(SmallCards.tall("2.1")), PLATE);
    assertThat(trial.trace().card("HOLD-001").kind()).isEqualTo(Kind.FAIL);
    assertThat(trial.inService().card("HOLD-001").kind()).isEqualTo(Kind.PASS);
    assertThat(trial.errors()).isEmpty();
    assertThat(serving()).isEqualTo(before);
  }

  @Test
  void aCardWhoseExamplesFailCanBeTriedAndSaysWhatTheGateWouldSay() {
    Trial trial = desk.tryOn(CardEdit.of(SmallCards.tall("9")), PLATE);
    assertThat(trial.trace().card("HOLD-001").kind()).isEqualTo(Kind.PASS);
    assertThat(trial.inService()).isNull();
    assertThat(trial.errors().toString()).contains("the example expects fail");
    assertThat(desk.tryOn(CardEdit.of(SmallCards.tall("9 mm")), PLATE).trace()).isNull();
  }

  @Test
  void validatingKeepsNothing() {
    assertThat(desk.validate(CardEdit.of(SmallCards.files())))
        .isInstanceOf(GateResult.Published.class);
    assertThat(desk.revisions()).isEmpty();
    assertThat(active.get()).isEmpty();
  }

  @Test
  void whoProposesMayNotPublishWhereItTakesTwo() {
    RuleBasePublisher two = desk(Publishing.TWO_PERSONS, active, PastJobs.NONE);
    Proposed proposed = (Proposed) two.propose(CardEdit.of(SmallCards.files()), "Ann", "first");
    String id = proposed.proposal().id();
    assertThat(two.proposals()).containsExactly(proposed.proposal());
    assertThat(two.publish(id, " ann ", UNWATCHED))
        .isEqualTo(new SecondPersonNeeded(proposed.proposal()));
    assertThat(active.get()).isEmpty();
    StoredRevision revision = ((Published) two.publish(id, "Bob", UNWATCHED)).revision();
    assertThat(revision.revision().author()).isEqualTo("Ann");
    assertThat(revision.publisher()).isEqualTo("Bob");
    assertThat(two.proposals()).isEmpty();
    assertThat(serving()).isEqualTo(revision.id());
  }

  @Test
  void whereItTakesTwoARollBackWaitsForTheSecondToo() {
    RuleBasePublisher two = desk(Publishing.TWO_PERSONS, active, PastJobs.NONE);
    StoredRevision first = publish(SmallCards.files());
    StoredRevision second = publish(SmallCards.tall("2.1"));
    PublishResult answer = two.rollBack(first.id(), "Ann", "too strict", UNWATCHED);
    assertThat(answer).isInstanceOf(Proposed.class);
    assertThat(serving()).isEqualTo(second.id());
  }

  @Test
  void aProposalWrittenAgainstAnOlderRevisionIsStale() {
    StoredRevision first = publish(SmallCards.files());
    String late =
        ((Proposed) desk.propose(CardEdit.of(SmallCards.tall("2.1")), "Ann", "n")).proposal().id();
    StoredRevision second = publish(SmallCards.tall("2.2"));
    assertThat(desk.publish(late, "Bob", UNWATCHED)).isEqualTo(new Stale(second.id()));
    assertThat(desk.proposals()).hasSize(1);
    desk.withdraw(late);
    assertThat(desk.proposals()).isEmpty();
    assertThat(desk.publish(late, "Bob", UNWATCHED)).isEqualTo(new NotThere(late));
    assertThat(first.id()).isNotEqualTo(second.id());
  }

  @Test
  void rollingBackPublishesTheOldCardsAsANewRevision() {
    StoredRevision first = publish(SmallCards.files());
    publish(SmallCards.tall("2.1"));
    Published back = (Published) desk.rollBack(first.id(), "engineer", "too strict", UNWATCHED);
    assertThat(back.revision().number()).isEqualTo(3);
    assertThat(back.revision().revision().contentHash()).isEqualTo(first.revision().contentHash());
    assertThat(back.revision().id()).isNotEqualTo(first.id());
    assertThat(active.get().orElseThrow().evaluate(PLATE).card("HOLD-001").kind())
        .isEqualTo(Kind.PASS);
    assertThat(desk.rollBack("0".repeat(64), "e", "n", UNWATCHED)).isInstanceOf(NotThere.class);
  }

  @Test
  void revisionsAreComparedCardByCard() {
    StoredRevision first = publish(SmallCards.files());
    Map<String, String> files = SmallCards.tall("2.1");
    CardEdit edit =
        new CardEdit(
            Map.of(
                SmallCards.TALL,
                files.get(SmallCards.TALL),
                "holding/new.yaml",
                files.get(SmallCards.TALL).replace("HOLD-001", "HOLD-002")),
            Set.of("direction/ease.yaml"),
            null);
    PublishResult answer = desk.publish(edit, "engineer", "n", UNWATCHED);
    StoredRevision second = ((Published) answer).revision();
    RevisionDiff diff = desk.diff(first.id(), second.id()).orElseThrow();
    assertThat(diff.added()).containsExactly("HOLD-002");
    assertThat(diff.removed()).containsExactly("DIR-020");
    assertThat(diff.changed())
        .containsExactly(
            Map.entry("HOLD-001", List.of(new PartChange("limit tall", "2.5", "2.1"))));
    assertThat(desk.diff(desk.files(), SmallCards.files()).added()).containsExactly("DIR-020");
    assertThat(desk.diff(first.id(), first.id()).orElseThrow().nothing()).isTrue();
  }

  @Test
  void aReplicaFollowsTheStore() {
    ActiveRuleBase theirs = new ActiveRuleBase();
    RuleBasePublisher replica = desk(Publishing.ONE_PERSON, theirs, PastJobs.NONE);
    assertThat(replica.follow()).isInstanceOf(NotThere.class);
    StoredRevision first = publish(SmallCards.files());
    assertThat(replica.follow()).isInstanceOf(Published.class);
    assertThat(theirs.get().orElseThrow().revision().id()).isEqualTo(first.id());
    assertThat(replica.follow()).isEqualTo(new Unchanged(first));
    StoredRevision second =
        ((Published) replica.publish(CardEdit.of(SmallCards.tall("2.1")), "other", "n", UNWATCHED))
            .revision();
    assertThat(desk.follow()).isInstanceOf(Published.class);
    assertThat(serving()).isEqualTo(second.id());
  }

  @Test
  void cardsChangedInTheStoreAreFoundOut() {
    StoredRevision first = publish(SmallCards.files());
    store.damage(first.id(), SmallCards.tall("2.4"));
    RuleBasePublisher replica = desk(Publishing.ONE_PERSON, new ActiveRuleBase(), PastJobs.NONE);
    assertThatThrownBy(replica::follow).isInstanceOf(StoreDamaged.class);
  }

  @Test
  void anEditIsLaidOverTheCardsThatAreThere() {
    publish(SmallCards.files());
    String tall = SmallCards.tall("2.1").get(SmallCards.TALL);
    PublishResult answer =
        desk.publish(CardEdit.of(Map.of(SmallCards.TALL, tall)), "engineer", "n", UNWATCHED);
    assertThat(answer).isInstanceOf(Published.class);
    assertThat(desk.files()).isEqualTo(SmallCards.tall("2.1"));
  }

  @Test
  void anEditWrittenAgainstAnOlderRevisionIsStale() {
    StoredRevision first = publish(SmallCards.files());
    StoredRevision second = publish(SmallCards.tall("2.1"));
    CardEdit late = new CardEdit(SmallCards.tall("2.2"), Set.of(), first.id());
    assertThat(desk.publish(late, "engineer", "n", UNWATCHED)).isEqualTo(new Stale(second.id()));
    assertThat(desk.propose(late, "engineer", "n")).isEqualTo(new Stale(second.id()));
  }

  @Test
  void theFirstCardsOfAShopNeedNoSecondPerson() {
    RuleBasePublisher two = desk(Publishing.TWO_PERSONS, active, PastJobs.NONE);
    assertThat(two.publish(CardEdit.of(SmallCards.files()), "Ann", "first", UNWATCHED))
        .isInstanceOf(Published.class);
  }

  @Test
  void theSameCardsProposedAgainAreTheSameProposal() {
    publish(SmallCards.files());
    CardEdit edit = CardEdit.of(SmallCards.tall("2.1"));
    PublishResult once = desk.propose(edit, "Ann", "n");
    assertThat(desk.propose(edit, "Ann", "n")).isEqualTo(once);
    assertThat(desk.proposals()).hasSize(1);
  }

  @Test
  void whatIsPublishedSaysWhatItChangesForPastJobs() {
    PastJob ran = new PastJob("r1", "4711", () -> PLATE, "run", Map.of());
    RuleBasePublisher busy = desk(Publishing.ONE_PERSON, active, () -> Stream.of(ran));
    Published published =
        (Published) busy.publish(CardEdit.of(SmallCards.tall("2.1")), "Ann", "n", UNWATCHED);
    assertThat(published.impact().byCard().get("HOLD-001").appears()).isEqualTo(1);
    assertThat(published.impact().changed())
        .singleElement()
        .satisfies(c -> assertThat(c.jobOrder()).isEqualTo("4711"));
  }

  @Test
  void workOnPastJobsThatIsEndedPublishesNothing() {
    PastJob ran = new PastJob("r1", "4711", () -> PLATE, "run", Map.of());
    RuleBasePublisher busy = desk(Publishing.ONE_PERSON, active, () -> Stream.of(ran));
    Impact.Progress ended =
        new Impact.Progress() {
          @Override
          public void done(long jobs) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    assertThat(busy.publish(CardEdit.of(SmallCards.files()), "e", "n", ended))
        .isInstanceOf(Cancelled.class);
    assertThat(active.get()).isEmpty();
    assertThat(busy.revisions()).isEmpty();
  }

  @Test
  void whatADraftChangesForPastJobsIsNotWorkedOutAgainWhenItIsPublished() {
    AtomicInteger readings = new AtomicInteger();
    RuleBasePublisher busy = desk(Publishing.ONE_PERSON, active, () -> counted(readings));
    CardEdit edit = CardEdit.of(SmallCards.tall("2.1"));
    ImpactReport draft =
        busy.impact(((GateResult.Published) busy.validate(edit)).ruleBase(), UNWATCHED);
    Published published = (Published) busy.publish(edit, "Ann", "n", UNWATCHED);
    assertThat(readings).hasValue(1);
    assertThat(published.impact()).isEqualTo(draft.under(published.revision().id()));
    assertThat(published.impact().byCard().get("HOLD-001").appears()).isEqualTo(1);
  }

  @Test
  void onceAnotherRevisionIsPublishedPastJobsAreJudgedAgain() {
    AtomicInteger readings = new AtomicInteger();
    RuleBasePublisher busy = desk(Publishing.ONE_PERSON, active, () -> counted(readings));
    CardEdit edit = CardEdit.of(SmallCards.tall("2.1"));
    busy.impact(((GateResult.Published) busy.validate(edit)).ruleBase(), UNWATCHED);
    busy.publish(CardEdit.of(SmallCards.tall("2.3")), "Ann", "n", UNWATCHED);
    busy.publish(edit, "Ann", "n", UNWATCHED);
    assertThat(readings).hasValue(3);
  }

  @Test
  void whatWasFoundMoreThanTenMinutesAgoIsNotUsed() {
    RecentImpact recent = new RecentImpact();
    RecentImpact.Question question = new RecentImpact.Question("cards", null);
    ImpactReport report =
        new ImpactReport("draft", 1, true, Map.of(), List.of(), Map.of(), List.of());
    recent.keep(question, report, CLOCK.instant());
    Instant last = CLOCK.instant().plus(RecentImpact.KEPT);
    assertThat(recent.find(question, last.minusNanos(1))).contains(report);
    assertThat(recent.find(question, last)).isEmpty();
  }

  private static Stream<PastJob> counted(AtomicInteger readings) {
    readings.incrementAndGet();
    return Stream.of(new PastJob("r1", "4711", () -> PLATE, "run", Map.of()));
  }

  private Map<String, String> withoutTall() {
    Map<String, String> files = SmallCards.files();
    files.remove(SmallCards.TALL);
    return files;
  }

  private CardEdit takingTallAway() {
    return new CardEdit(Map.of(), Set.of(SmallCards.TALL), null);
  }

  @Test
  void oneAloneCannotTakeAStopAwayWhereStopsTakeTwo() {
    RuleBasePublisher two = desk(Publishing.TWO_FOR_STOPS, active, PastJobs.NONE);
    StoredRevision first = publish(SmallCards.files());
    Proposed waits =
        (Proposed) two.publish(takingTallAway(), "Ann", "HOLD-001 is in the way", UNWATCHED);
    assertThat(waits.warnings().toString()).contains("the stop HOLD-001 is taken away");
    assertThat(two.publish(waits.proposal().id(), " ANN", UNWATCHED))
        .isInstanceOf(SecondPersonNeeded.class);
    assertThat(serving()).isEqualTo(first.id());
  }

  @Test
  void aStopIsTakenAwayBySecondPersonWithAReasonThatNamesItOnceTheImpactWasShown() {
    RuleBasePublisher two =
        desk(
            Publishing.TWO_FOR_STOPS,
            active,
            () -> Stream.of(new PastJob("r1", "4711", () -> PLATE, "run", Map.of())));
    publish(SmallCards.files());
    String id = ((Proposed) two.propose(takingTallAway(), "Ann", "tidying")).proposal().id();
    assertThat(two.publish(id, "Bob", UNWATCHED))
        .isInstanceOfSatisfying(
            PublishResult.ReasonNeeded.class,
            needed ->
                assertThat(needed.weakened())
                    .extracting(w -> w.card())
                    .containsExactly("HOLD-001"));
    String reason = "HOLD-001: HOLD-011 judges the same hold";
    assertThat(two.publish(id, "Bob", reason, UNWATCHED))
        .isInstanceOfSatisfying(
            PublishResult.ImpactToRead.class,
            shown -> assertThat(shown.impact().jobs()).isEqualTo(1));
    Published published = (Published) two.publish(id, "Bob", reason, UNWATCHED);
    assertThat(published.revision().revision().note()).isEqualTo("tidying - " + reason);
    assertThat(desk.files()).isEqualTo(withoutTall());
  }

  @Test
  void whatWeakensNoStopNeedsNoSecondPersonWhereOnlyStopsTakeTwo() {
    RuleBasePublisher two = desk(Publishing.TWO_FOR_STOPS, active, PastJobs.NONE);
    publish(SmallCards.files());
    assertThat(two.publish(CardEdit.of(SmallCards.tall("2.1")), "Ann", "stricter", UNWATCHED))
        .isInstanceOf(Published.class);
    assertThat(two.publish(CardEdit.of(SmallCards.tall("2.4")), "Ann", "milder", UNWATCHED))
        .isInstanceOf(Proposed.class);
  }

  @Test
  void aRollBackThatWeakensAStopTakesTwoAsWell() {
    RuleBasePublisher two = desk(Publishing.TWO_FOR_STOPS, active, PastJobs.NONE);
    StoredRevision first = publish(SmallCards.files());
    publish(SmallCards.tall("2.1"));
    assertThat(two.rollBack(first.id(), "Ann", "back", UNWATCHED)).isInstanceOf(Proposed.class);
  }

  @Test
  void validatingNamesTheStopsThatGetWeaker() {
    publish(SmallCards.files());
    assertThat(desk.validate(takingTallAway()).warnings().toString())
        .contains("holding/tall.yaml")
        .contains("the stop HOLD-001 is taken away");
  }
}

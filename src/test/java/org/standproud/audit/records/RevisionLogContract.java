package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standproud.rules.SmallCards;
import org.standproud.rules.engine.Revision;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.publishing.CardEdit;
import org.standproud.rules.publishing.Proposal;
import org.standproud.rules.publishing.PublishResult;
import org.standproud.rules.publishing.Publishing;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.rules.publishing.StoredRevision;

/** What the log of revisions does on every database. */
abstract class RevisionLogContract {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00.123456Z");

  private DataSource dataSource;
  private RevisionLog log;

  /** An empty database of the kind under test. */
  abstract DataSource emptyDatabase() throws Exception;

  @BeforeEach
  void open() throws Exception {
    dataSource = emptyDatabase();
    Flyway.configure().dataSource(dataSource).load().migrate();
    log = log();
  }

  private RuleBaseArchive archive() {
    return new RuleBaseArchive(dataSource, AppendListener.NOTHING);
  }

  private RevisionLog log() {
    return new RevisionLog(dataSource, archive());
  }

  private static StoredRevision revision(long number, String id, String parent) {
    return new StoredRevision(
        number, new Revision(id, "content", "Ann", "a note", SEVEN, parent), "Bob");
  }

  @Test
  void whatIsAppendedIsFoundAgainJustAsItWas() {
    StoredRevision first = revision(1, "a", null);
    StoredRevision second = revision(2, "b", "a");
    assertThat(log.latest()).isEmpty();
    assertThat(log.append(first, Map.of("holding/x.yaml", "one"))).isTrue();
    assertThat(log.append(second, Map.of("holding/x.yaml", "two"))).isTrue();
    assertThat(log.revisions()).containsExactly(first, second);
    assertThat(log().latest()).contains(second);
    assertThat(log.files("a")).contains(Map.of("holding/x.yaml", "one"));
    assertThat(log.files("c")).isEmpty();
  }

  @Test
  void whatIsAppendedCanJudgeOldAnswersAgain() {
    log.append(revision(1, "a", null), Map.of("holding/x.yaml", "one"));
    assertThat(archive().find("a").orElseThrow().cards()).containsEntry("holding/x.yaml", "one");
  }

  @Test
  void aRevisionThatDoesNotFollowTheLatestIsNotTaken() {
    log.append(revision(1, "a", null), Map.of());
    assertThat(log.append(revision(1, "b", null), Map.of())).isFalse();
    assertThat(log.append(revision(2, "b", "z"), Map.of())).isFalse();
    assertThat(log.append(revision(3, "b", "a"), Map.of())).isFalse();
    assertThat(log.revisions()).hasSize(1);
    assertThat(log.files("b")).isEmpty();
  }

  @Test
  void ofReplicasThatPublishAtOnceOneSucceedsAndTheOthersMustLookAgain() throws Exception {
    log.append(revision(1, "a", null), Map.of());
    ExecutorService replicas = Executors.newFixedThreadPool(4);
    List<Callable<Boolean>> attempts =
        List.of("b", "c", "d", "e").stream()
            .<Callable<Boolean>>map(
                id -> () -> log().append(revision(2, id, "a"), Map.of("holding/x.yaml", id)))
            .toList();
    int taken = 0;
    for (Future<Boolean> attempt : replicas.invokeAll(attempts)) {
      taken += attempt.get() ? 1 : 0;
    }
    replicas.shutdown();
    assertThat(taken).isEqualTo(1);
    assertThat(log.revisions()).hasSize(2);
  }

  @Test
  void aTextThatOnceServedIsNoNews() {
    log.append(revision(1, "a", null), Map.of("holding/x.yaml", "one", "holding/y.yaml", "one"));
    log.append(revision(2, "b", "a"), Map.of("holding/x.yaml", "two"));
    Map<String, String> folder =
        Map.of("holding/x.yaml", "one", "holding/y.yaml", "two", "holding/z.yaml", "one");
    assertThat(log.unseen(folder)).isEqualTo(Set.of("holding/y.yaml", "holding/z.yaml"));
  }

  @Test
  void aProposalWaitsUntilItIsLetGo() {
    Proposal first = proposal("00000000-0000-4000-8000-000000000001", SEVEN, null);
    Proposal second = proposal("00000000-0000-4000-8000-000000000002", SEVEN.plusSeconds(1), "a");
    log.keep(second);
    log.keep(first);
    assertThat(log.proposals()).containsExactly(first, second);
    log.drop(first.id());
    assertThat(log.proposals()).containsExactly(second);
  }

  private static Proposal proposal(String id, Instant time, String onto) {
    return new Proposal(id, "Ann", "a note", time, onto, Map.of("holding/x.yaml", "one"));
  }

  @Test
  void aReplicaServesWhatAnotherPublished() {
    ActiveRuleBase theirs = new ActiveRuleBase();
    RuleBasePublisher ours = desk(new ActiveRuleBase());
    RuleBasePublisher replica = desk(theirs);
    PublishResult published =
        ours.publish(CardEdit.of(SmallCards.files()), "Ann", "a note", Impact.Progress.UNWATCHED);
    assertThat(replica.follow()).isInstanceOf(PublishResult.Published.class);
    assertThat(theirs.get().orElseThrow().revision())
        .isEqualTo(((PublishResult.Published) published).revision().revision());
  }

  private RuleBasePublisher desk(ActiveRuleBase active) {
    return new RuleBasePublisher(
        SmallCards.gate(),
        log(),
        active,
        Publishing.ONE_PERSON,
        new Impact(SmallCards.VERDICT, 1),
        PastJobs.NONE,
        Clock.systemUTC());
  }
}

package org.standproud.rules.publishing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.rules.SmallCards;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.publishing.PublishResult.Published;
import org.standproud.rules.publishing.PublishResult.Refused;

class FolderWatchTest {

  @TempDir Path folder;
  private Path cards;
  private final ActiveRuleBase active = new ActiveRuleBase();
  private FolderWatch watch;

  @BeforeEach
  void watchAFolderInService() throws Exception {
    cards = folder.resolve("rules");
    write(SmallCards.files());
    RuleBasePublisher desk =
        new RuleBasePublisher(
            SmallCards.gate(),
            new RevisionsInMemory(),
            active,
            Publishing.ONE_PERSON,
            new Impact(SmallCards.VERDICT, 1),
            PastJobs.NONE,
            Clock.systemUTC());
    FolderEdits edits = new FolderEdits(desk, "rules folder");
    edits.take(CardFolder.read(cards));
    watch = new FolderWatch(cards, edits::take);
  }

  @AfterEach
  void close() throws Exception {
    watch.close();
  }

  private void write(Map<String, String> files) throws Exception {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = cards.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  private String serving() {
    return active.get().orElseThrow().revision().id();
  }

  @Test
  void aFolderThatDoesNotChangePublishesNothing() {
    assertThat(watch.look()).isEmpty();
    assertThat(watch.look()).isEmpty();
  }

  @Test
  void anEditIsPublishedOnceItHasComeToRest() throws Exception {
    String before = serving();
    write(SmallCards.tall("2.1"));
    assertThat(watch.look()).isEmpty();
    assertThat(watch.unsettled()).isTrue();
    assertThat(serving()).isEqualTo(before);
    assertThat(watch.look()).containsInstanceOf(Published.class);
    assertThat(serving()).isNotEqualTo(before);
    assertThat(active.get().orElseThrow().revision().author()).isEqualTo("rules folder");
    assertThat(watch.look()).isEmpty();
    assertThat(watch.unsettled()).isFalse();
  }

  @Test
  void anEditStillGoingOnWaits() throws Exception {
    for (String limit : new String[] {"2.1", "2.2", "2.3"}) {
      write(SmallCards.tall(limit));
      assertThat(watch.look()).isEmpty();
    }
    assertThat(watch.look()).containsInstanceOf(Published.class);
    assertThat(active.get().orElseThrow().card("HOLD-001").limits().get("tall").text())
        .isEqualTo("2.3");
  }

  @Test
  void aBadEditIsReportedOnceAndTheLiveCardsStay() throws Exception {
    String before = serving();
    write(SmallCards.tall("2.5 mm"));
    watch.look();
    assertThat(watch.look()).containsInstanceOf(Refused.class);
    assertThat(watch.look()).isEmpty();
    assertThat(serving()).isEqualTo(before);
  }

  @Test
  void aCardTakenOutOfTheFolderLeavesService() throws Exception {
    Files.delete(cards.resolve("direction/ease.yaml"));
    watch.look();
    watch.look();
    assertThat(active.get().orElseThrow().cards()).noneMatch(c -> c.id().equals("DIR-020"));
  }

  @Test
  void aFolderThatIsGoneForAMomentChangesNothing() throws Exception {
    String before = serving();
    Files.move(cards, folder.resolve("aside"));
    assertThat(watch.look()).isEmpty();
    assertThat(watch.look()).isEmpty();
    Files.move(folder.resolve("aside"), cards);
    assertThat(watch.look()).isEmpty();
    assertThat(watch.look()).isEmpty();
    assertThat(serving()).isEqualTo(before);
  }

  @Test
  void hiddenFilesAndLinksOutOfTheFolderAreLeftAlone() throws Exception {
    Path outside = Files.writeString(folder.resolve("outside.yaml"), "id: X\n");
    Files.createSymbolicLink(cards.resolve("holding/link.yaml"), outside);
    Files.writeString(cards.resolve("holding/.hidden.yaml"), "id: X\n");
    assertThat(watch.look()).isEmpty();
    assertThat(watch.unsettled()).isFalse();
  }

  @Test
  @Timeout(60)
  void theWatchThreadIsWokenByAnEdit() throws Exception {
    BlockingQueue<PublishResult> results = new LinkedBlockingQueue<>();
    Thread thread =
        new Thread(() -> watch.run(Duration.ofMillis(20), Duration.ofSeconds(1), results::add));
    thread.start();
    write(SmallCards.tall("2.1"));
    assertThat(results.poll(30, TimeUnit.SECONDS)).isInstanceOf(Published.class);
    watch.close();
    thread.join();
  }
}

package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class GroupCommitTest {

  private final List<List<String>> groups = new CopyOnWriteArrayList<>();
  private final CountDownLatch diskBusy = new CountDownLatch(1);
  private final CountDownLatch diskFree = new CountDownLatch(1);
  private final List<Thread> callers = new ArrayList<>();

  @AfterEach
  void letGo() {
    diskFree.countDown();
  }

  @Test
  void whatGathersWhileTheDiskIsBusyGoesInOneGroup() throws Exception {
    try (GroupCommit<String, String> commit = slow(this::stored, 10, Duration.ofMinutes(1))) {
      CompletableFuture<String> first = append(commit, "first");
      diskBusy.await();
      List<CompletableFuture<String>> others = new ArrayList<>();
      for (String item : List.of("a", "b", "c")) {
        others.add(append(commit, item));
        awaitWaiting();
      }
      diskFree.countDown();

      assertThat(first.get()).isEqualTo("stored first");
      for (CompletableFuture<String> other : others) {
        assertThat(other.get()).startsWith("stored ");
      }
      assertThat(groups).containsExactly(List.of("first"), List.of("a", "b", "c"));
    }
  }

  @Test
  void oneBadRecordSpoilsNoOtherOfItsGroup() throws Exception {
    try (GroupCommit<String, String> commit =
        slow(this::storedUnlessBad, 10, Duration.ofMinutes(1))) {
      append(commit, "first");
      diskBusy.await();
      CompletableFuture<String> good = append(commit, "good");
      awaitWaiting();
      CompletableFuture<String> bad = append(commit, "bad");
      awaitWaiting();
      CompletableFuture<String> alsoGood = append(commit, "also good");
      awaitWaiting();
      diskFree.countDown();

      assertThat(good.get()).isEqualTo("stored good");
      assertThat(alsoGood.get()).isEqualTo("stored also good");
      assertThatThrownBy(bad::get)
          .isInstanceOf(ExecutionException.class)
          .hasCauseInstanceOf(RecordNotStored.class)
          .hasRootCauseMessage("bad");
    }
  }

  @Test
  void aCallerThatFindsNoRoomIsTurnedAwayAndRoomComesBack() throws Exception {
    try (GroupCommit<String, String> commit = slow(this::stored, 1, Duration.ZERO)) {
      CompletableFuture<String> first = append(commit, "first");
      diskBusy.await();

      assertThatThrownBy(() -> commit.append("second")).isInstanceOf(StoreBusy.class);

      diskFree.countDown();
      first.get();
      callers.get(0).join();
      assertThat(commit.append("third")).isEqualTo("stored third");
    }
  }

  @Test
  void aCallerInterruptedBeforeItsTurnLeavesNothingBehind() throws Exception {
    try (GroupCommit<String, String> commit = slow(this::stored, 10, Duration.ofMinutes(1))) {
      append(commit, "first");
      diskBusy.await();
      CompletableFuture<String> given = append(commit, "given up");
      awaitWaiting();
      callers.get(1).interrupt();
      assertThatThrownBy(given::get).hasCauseInstanceOf(InterruptedException.class);
      diskFree.countDown();

      assertThat(commit.append("next")).isEqualTo("stored next");
      assertThat(groups).doesNotContain(List.of("given up")).contains(List.of("next"));
    }
  }

  @Test
  void closingStoresWhatWaitsAndRefusesTheRest() throws Exception {
    GroupCommit<String, String> commit = slow(this::stored, 10, Duration.ofMinutes(1));
    append(commit, "first");
    diskBusy.await();
    CompletableFuture<String> waiting = append(commit, "waiting");
    awaitWaiting();
    Thread closing = new Thread(commit::close);
    closing.start();
    diskFree.countDown();
    closing.join();

    assertThat(waiting.get()).isEqualTo("stored waiting");
    assertThatThrownBy(() -> commit.append("late"))
        .isInstanceOf(RecordNotStored.class)
        .hasMessageContaining("closed");
  }

  @Test
  void anErrorOfTheWriterReachesItsCallerAndTheWriterGoesOn() throws Exception {
    Function<List<String>, List<String>> deep =
        group -> {
          if (group.contains("deep")) {
            throw new StackOverflowError();
          }
          return stored(group);
        };
    try (GroupCommit<String, String> commit = new GroupCommit<>(deep, 10, 10, Duration.ZERO)) {
      assertThatThrownBy(() -> commit.append("deep"))
          .hasRootCauseInstanceOf(StackOverflowError.class);
      assertThat(commit.append("next")).isEqualTo("stored next");
    }
  }

  private GroupCommit<String, String> slow(
      Function<List<String>, List<String>> store, int mostWaiting, Duration patience) {
    return new GroupCommit<>(
        group -> {
          diskBusy.countDown();
          awaitDisk();
          return store.apply(group);
        },
        mostWaiting,
        10,
        patience);
  }

  private void awaitDisk() {
    try {
      diskFree.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<String> stored(List<String> group) {
    groups.add(group);
    return group.stream().map(item -> "stored " + item).toList();
  }

  private List<String> storedUnlessBad(List<String> group) {
    if (group.contains("bad")) {
      throw new IllegalStateException("bad");
    }
    return stored(group);
  }

  private CompletableFuture<String> append(GroupCommit<String, String> commit, String item) {
    CompletableFuture<String> result = new CompletableFuture<>();
    Thread caller =
        new Thread(
            () -> {
              try {
                result.complete(commit.append(item));
              } catch (Exception e) {
                result.completeExceptionally(e);
              }
            });
    callers.add(caller);
    caller.start();
    return result;
  }

  /** The newest caller has joined the line once it waits for its result. */
  private void awaitWaiting() {
    Thread newest = callers.get(callers.size() - 1);
    while (newest.getState() != Thread.State.WAITING) {
      Thread.onSpinWait();
    }
  }
}

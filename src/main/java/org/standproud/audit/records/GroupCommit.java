package org.standproud.audit.records;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Commits waiting items in one transaction. Forcing a disk costs the same for one record as for a
 * hundred, so while one group is being forced the next one gathers.
 *
 * <p>Each caller waits until its own item is committed. A failed group is retried item by item, so
 * that one bad item affects no other. A limit on waiting callers applies back-pressure.
 *
 * @param <T> an item
 * @param <R> its result
 */
final class GroupCommit<T, R> implements AutoCloseable {

  private final Function<List<T>, List<R>> commit;
  private final int largestGroup;
  private final Duration patience;
  private final Semaphore room;
  private final Queue<Waiting<T, R>> line = new ConcurrentLinkedQueue<>();
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(task -> new Thread(task, "audit-writer"));

  /** A class and not a record: two callers may wait with equal items. */
  private static final class Waiting<T, R> {
    private final T item;
    private final CompletableFuture<R> result = new CompletableFuture<>();

    private Waiting(T item) {
      this.item = item;
    }
  }

  /**
   * Starts the writer.
   *
   * @param commit commits all or throws and commits none; one result an item, in order
   * @param mostWaiting most waiting callers
   * @param largestGroup most items in one transaction
   * @param patience how long a caller waits for space before it is refused
   */
  GroupCommit(
      Function<List<T>, List<R>> commit, int mostWaiting, int largestGroup, Duration patience) {
    this.commit = commit;
    this.largestGroup = largestGroup;
    this.patience = patience;
    this.room = new Semaphore(mostWaiting);
  }

  /**
   * Commits one item.
   *
   * @param item the item
   * @return its result, once it is committed
   * @throws StoreBusy if there was no space in time
   * @throws RecordNotStored if it could not be committed, or the writer is closed
   * @throws InterruptedException if interrupted; an item already being committed stays committed
   */
  R append(T item) throws InterruptedException {
    if (!room.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS)) {
      throw new StoreBusy();
    }
    Waiting<T, R> mine = new Waiting<>(item);
    try {
      line.add(mine);
      callWriter(mine);
      return mine.result.get();
    } catch (ExecutionException e) {
      throw new RecordNotStored("The record was not stored", e.getCause());
    } catch (InterruptedException e) {
      line.remove(mine);
      throw e;
    } finally {
      room.release();
    }
  }

  private void callWriter(Waiting<T, R> mine) {
    try {
      writer.execute(this::commitWhatWaits);
    } catch (RejectedExecutionException closed) {
      if (line.remove(mine)) {
        throw new RecordNotStored("The store is closed", closed);
      }
    }
  }

  private void commitWhatWaits() {
    List<Waiting<T, R>> group = new ArrayList<>();
    for (Waiting<T, R> next; group.size() < largestGroup && (next = line.poll()) != null; ) {
      group.add(next);
    }
    if (!group.isEmpty()) {
      commitTogether(group);
    }
  }

  private void commitTogether(List<Waiting<T, R>> group) {
    try {
      List<R> results = commit.apply(group.stream().map(one -> one.item).toList());
      for (int i = 0; i < group.size(); i++) {
        group.get(i).result.complete(results.get(i));
      }
    } catch (RuntimeException | Error e) {
      if (group.size() == 1) {
        group.get(0).result.completeExceptionally(e);
      } else {
        group.forEach(one -> commitTogether(List.of(one)));
      }
    }
  }

  /** Stops accepting items, commits those waiting, and returns when done. */
  @Override
  public void close() {
    writer.shutdown();
    boolean interrupted = false;
    while (true) {
      try {
        if (writer.awaitTermination(1, TimeUnit.DAYS)) {
          break;
        }
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}

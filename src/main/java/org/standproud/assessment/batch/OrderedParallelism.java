package org.standproud.assessment.batch;

import java.io.IOException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Works on several pieces at once and gives the results in the order of the pieces. No more than a
 * window of them is held at a time: who does not take the results is sent no more, and the pieces
 * that come are not read.
 *
 * @param <T> a piece of work
 * @param <R> its result
 */
public final class OrderedParallelism<T, R> {

  private final Function<T, R> work;
  private final Executor workers;
  private final BlockingQueue<Future<@Nullable R>> window;
  private volatile boolean abandoned;

  /** Where the pieces come from. */
  @FunctionalInterface
  public interface Source<T> {

    /** The next piece, null after the last. */
    @Nullable T next() throws IOException;
  }

  /** Where the results go. */
  @FunctionalInterface
  public interface Sink<R> {

    /**
     * Takes a result.
     *
     * @param result the result
     * @param last whether none is waiting behind it just now, so that it should be sent on
     */
    void take(R result, boolean last) throws IOException;
  }

  /**
   * A run that has not begun.
   *
   * @param work what is done to each piece; must not throw
   * @param workers do it
   * @param window most pieces that are held at a time
   */
  OrderedParallelism(Function<T, R> work, Executor workers, int window) {
    this.work = work;
    this.workers = workers;
    this.window = new ArrayBlockingQueue<>(window);
  }

  /**
   * Runs until the source has ended and every result is taken. Reads in a thread of its own, so
   * that a caller who waits for an answer before it sends the next piece gets it.
   *
   * @throws IOException when the results are no longer taken, or the source broke
   * @throws InterruptedException when interrupted
   */
  void run(Source<T> source, Sink<R> sink) throws IOException, InterruptedException {
    CompletableFuture<Void> read = new CompletableFuture<>();
    Thread reader = new Thread(() -> read(source, read), "batch-reader");
    reader.start();
    try {
      for (R result; (result = window.take().get()) != null; ) {
        sink.take(result, window.isEmpty());
      }
      read.get();
    } catch (ExecutionException e) {
      throw e.getCause() instanceof IOException io ? io : new IOException(e.getCause());
    } finally {
      abandoned = true;
      window.clear(); // Lets the reader go, if it waits for room.
      reader.join(); // It reads from a request that ends with this method.
    }
  }

  private void read(Source<T> source, CompletableFuture<Void> read) {
    try {
      for (T piece; !abandoned && (piece = source.next()) != null; ) {
        window.put(begun(piece));
      }
      read.complete(null);
    } catch (Throwable e) { // Passed to the waiting thread, which would never wake otherwise.
      read.completeExceptionally(e);
    } finally {
      end();
    }
  }

  private Future<@Nullable R> begun(T piece) {
    return CompletableFuture.supplyAsync(() -> work.apply(piece), workers);
  }

  /** Marks the end of the results, unless the consumer has stopped reading. */
  private void end() {
    try {
      while (!abandoned
          && !window.offer(CompletableFuture.completedFuture(null), 1, TimeUnit.SECONDS)) {
        // Offered again until there is room.
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}

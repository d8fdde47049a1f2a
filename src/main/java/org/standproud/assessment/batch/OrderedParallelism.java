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
 * Processes items in parallel and returns the results in order. At most a window of items is in
 * progress: when results are not consumed, no more items are read.
 *
 * @param <T> an item
 * @param <R> its result
 */
public final class OrderedParallelism<T, R> {

  private final Function<T, R> work;
  private final Executor workers;
  private final BlockingQueue<Future<@Nullable R>> window;
  private volatile boolean abandoned;

  /** The source of items. */
  @FunctionalInterface
  public interface Source<T> {

    /** The next item, null after the last. */
    @Nullable T next() throws IOException;
  }

  /** The consumer of results. */
  @FunctionalInterface
  public interface Sink<R> {

    /**
     * Consumes a result.
     *
     * @param result the result
     * @param last whether no other result is ready yet, so that output should be flushed
     */
    void take(R result, boolean last) throws IOException;
  }

  /**
   * Creates a run.
   *
   * @param work processes an item; must not throw
   * @param workers runs the work
   * @param window most items in progress
   */
  OrderedParallelism(Function<T, R> work, Executor workers, int window) {
    this.work = work;
    this.workers = workers;
    this.window = new ArrayBlockingQueue<>(window);
  }

  /**
   * Runs until the source has ended and every result is consumed. Reads in its own thread, so that
   * a client that waits for an answer before it sends the next item gets it.
   *
   * @throws IOException if the consumer or the source fails
   * @throws InterruptedException if interrupted
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
      window.clear(); // Wakes the reader, if it waits for space.
      reader.join(); // The reader uses a request that ends with this method.
    }
  }

  private void read(Source<T> source, CompletableFuture<Void> read) {
    try {
      for (T piece; !abandoned && (piece = source.next()) != null; ) {
        window.put(begun(piece));
      }
      read.complete(null);
    } catch (Throwable e) { // Passed to the waiting thread, which would otherwise never wake.
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

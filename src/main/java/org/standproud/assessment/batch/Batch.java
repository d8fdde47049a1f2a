package org.standproud.assessment.batch;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.assessment.SetupRejectedException;
import org.standproud.assessment.TraceId;
import org.standproud.assessment.idempotency.IdempotencyKey;
import org.standproud.assessment.idempotency.IdempotentAssessor;
import org.standproud.refusal.BodyTooLargeException;
import org.standproud.refusal.ConcurrencyLimit;
import org.standproud.refusal.TooManyBatchesException;
import org.standproud.setup.request.Problem;

/**
 * Judges the lines of a batch on every core. Each is judged like a single request and stored before
 * it is answered; an error in one line does not affect the others.
 */
public final class Batch implements AutoCloseable {

  /** Several a core, because each also waits for the disk, where a group commits at once. */
  private static final int THREADS = 8 * Runtime.getRuntime().availableProcessors();

  private static final int WINDOW = 4 * THREADS;

  private final IdempotentAssessor assessor;
  private final RefusalRenderer problems;
  private final long mostLines;
  private final ConcurrencyLimit room;
  private final AtomicInteger threads = new AtomicInteger();
  private final ExecutorService workers =
      Executors.newFixedThreadPool(
          THREADS, task -> new Thread(task, "batch-" + threads.incrementAndGet()));

  /**
   * Creates the service.
   *
   * @param assessor judges the lines
   * @param problems renders errors
   * @param mostLines most lines answered in one batch
   * @param mostAtATime most concurrent batches; each holds a server thread as long as its client
   *     likes, so without a limit slow clients could block all others
   */
  public Batch(
      IdempotentAssessor assessor, RefusalRenderer problems, long mostLines, int mostAtATime) {
    this.assessor = assessor;
    this.problems = problems;
    this.mostLines = mostLines;
    this.room = new ConcurrencyLimit(mostAtATime, TooManyBatchesException::new);
  }

  /**
   * Takes a permit for a batch.
   *
   * @throws TooManyBatchesException if all are taken
   */
  public ConcurrencyLimit.Place place() {
    return room.place();
  }

  /** Judges the entries of a source until it ends. */
  public void judge(
      OrderedParallelism.Source<Entry> source,
      String caller,
      OrderedParallelism.Sink<LineResult> sink)
      throws IOException, InterruptedException {
    String trace = TraceId.current();
    new OrderedParallelism<Entry, LineResult>(
            entry -> answer(entry, caller, trace), workers, WINDOW)
        .run(new UpTo(source, mostLines), sink);
  }

  private LineResult answer(Entry entry, String caller, @Nullable String trace) {
    try (MDC.MDCCloseable inTrace = TraceId.in(trace)) {
      return answer(entry, caller);
    }
  }

  private LineResult answer(Entry entry, String caller) {
    Map<String, String> columns = Map.of();
    try {
      Entry.Parsed parsed = entry.reading().read();
      columns = parsed.columns();
      IdempotencyKey key = parsed.key() == null ? null : new IdempotencyKey(caller, parsed.key());
      return LineResult.judged(
          entry.line(), assessor.assess(parsed.request(), caller, key).record());
    } catch (SetupRejectedException e) {
      return LineResult.refused(entry.line(), problems.render(e), named(e, columns));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return LineResult.refused(entry.line(), problems.render(e), null);
    } catch (RuntimeException e) {
      return LineResult.refused(entry.line(), problems.render(e), null);
    }
  }

  private static @Nullable Map<String, String> named(
      SetupRejectedException refused, Map<String, String> columns) {
    Map<String, String> named = new HashMap<>();
    for (Problem problem : refused.problems()) {
      columns.forEach(
          (field, column) -> {
            // A quantity with its own unit is reported at its value, inside the field.
            if ((problem.pointer() + "/").startsWith(field + "/")) {
              named.put(problem.pointer(), column);
            }
          });
    }
    return named.isEmpty() ? null : named;
  }

  /** Finishes the lines in progress. */
  @Override
  public void close() {
    workers.shutdown();
  }

  /** Answers the first line over the limit with an error, and stops reading. */
  private static final class UpTo implements OrderedParallelism.Source<Entry> {

    private final OrderedParallelism.Source<Entry> source;
    private final long most;
    private long read;

    private UpTo(OrderedParallelism.Source<Entry> source, long most) {
      this.source = source;
      this.most = most;
    }

    @Override
    public @Nullable Entry next() throws IOException {
      if (read > most) {
        return null;
      }
      Entry next = source.next();
      if (next == null || ++read <= most) {
        return next;
      }
      return new Entry(
          next.line(),
          () -> {
            throw new BodyTooLargeException(
                "A batch may have "
                    + most
                    + " lines at most; this line and the rest are not"
                    + " read.");
          });
    }
  }
}

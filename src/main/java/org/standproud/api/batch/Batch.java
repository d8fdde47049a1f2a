package org.standproud.api.batch;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.standproud.api.assessing.SetupRefused;
import org.standproud.api.assessing.TraceId;
import org.standproud.api.idempotency.IdempotencyKey;
import org.standproud.api.idempotency.OnceOnly;
import org.standproud.api.problem.BodyTooLarge;
import org.standproud.api.problem.ProblemTelling;
import org.standproud.api.problem.Room;
import org.standproud.api.problem.TooManyBatches;
import org.standproud.setup.reading.Problem;

/**
 * Judges the lines of a batch on every core. Each is judged as a request of its own would be and is
 * on disk before it is answered; what is wrong with one changes nothing for the others.
 */
public final class Batch implements AutoCloseable {

  /** Several to a core, because each also waits for the disk, where a group commits at once. */
  private static final int THREADS = 8 * Runtime.getRuntime().availableProcessors();

  private static final int WINDOW = 4 * THREADS;

  private final OnceOnly assessor;
  private final ProblemTelling problems;
  private final long mostLines;
  private final Room room;
  private final AtomicInteger threads = new AtomicInteger();
  private final ExecutorService workers =
      Executors.newFixedThreadPool(
          THREADS, task -> new Thread(task, "batch-" + threads.incrementAndGet()));

  /**
   * Judging of batches.
   *
   * @param assessor judges
   * @param problems tells what is wrong with a line
   * @param mostLines most lines of one batch that are answered
   * @param mostAtATime most batches at a time; each holds a thread of the server for as long as its
   *     caller likes, so without a limit slow callers could keep all others out
   */
  public Batch(OnceOnly assessor, ProblemTelling problems, long mostLines, int mostAtATime) {
    this.assessor = assessor;
    this.problems = problems;
    this.mostLines = mostLines;
    this.room = new Room(mostAtATime, TooManyBatches::new);
  }

  /**
   * Room for one more batch.
   *
   * @throws TooManyBatches if there is none
   */
  Room.Place place() {
    return room.place();
  }

  /** Judges what comes from a source until it ends. */
  void judge(InOrder.Source<Entry> source, String caller, InOrder.Sink<LineAnswer> sink)
      throws IOException, InterruptedException {
    String trace = TraceId.current();
    new InOrder<Entry, LineAnswer>(entry -> answer(entry, caller, trace), workers, WINDOW)
        .run(new UpTo(source, mostLines), sink);
  }

  private LineAnswer answer(Entry entry, String caller, @Nullable String trace) {
    try (MDC.MDCCloseable inTrace = TraceId.in(trace)) {
      return answer(entry, caller);
    }
  }

  private LineAnswer answer(Entry entry, String caller) {
    Map<String, String> columns = Map.of();
    try {
      Entry.Wanted wanted = entry.reading().read();
      columns = wanted.columns();
      IdempotencyKey key = wanted.key() == null ? null : new IdempotencyKey(caller, wanted.key());
      return LineAnswer.judged(
          entry.line(), assessor.assess(wanted.request(), caller, key).record());
    } catch (SetupRefused e) {
      return LineAnswer.refused(entry.line(), problems.of(e), named(e, columns));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return LineAnswer.refused(entry.line(), problems.of(e), null);
    } catch (RuntimeException e) {
      return LineAnswer.refused(entry.line(), problems.of(e), null);
    }
  }

  private static @Nullable Map<String, String> named(
      SetupRefused refused, Map<String, String> columns) {
    Map<String, String> named = new HashMap<>();
    for (Problem problem : refused.problems()) {
      columns.forEach(
          (field, column) -> {
            // A quantity with a unit of its own is told by its value, inside the field.
            if ((problem.pointer() + "/").startsWith(field + "/")) {
              named.put(problem.pointer(), column);
            }
          });
    }
    return named.isEmpty() ? null : named;
  }

  /** Finishes the lines that were begun. */
  @Override
  public void close() {
    workers.shutdown();
  }

  /** Says of the first line too many that it is, and reads no more. */
  private static final class UpTo implements InOrder.Source<Entry> {

    private final InOrder.Source<Entry> source;
    private final long most;
    private long read;

    private UpTo(InOrder.Source<Entry> source, long most) {
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
            throw new BodyTooLarge(
                "A batch may have " + most + " lines at most; this and what follows is not read.");
          });
    }
  }
}

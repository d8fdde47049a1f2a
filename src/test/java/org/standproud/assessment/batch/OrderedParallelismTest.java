package org.standproud.assessment.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Lines are worked on together, answered in order, and never gathered. */
@Timeout(120)
class OrderedParallelismTest {

  private static final int WINDOW = 16;

  private final ExecutorService workers = Executors.newFixedThreadPool(4);

  @AfterEach
  void stop() {
    workers.shutdownNow();
  }

  @Test
  void aHundredThousandLinesComeBackInOrderAndNeverMoreThanAWindowOfThemIsHeld() throws Exception {
    int lines = 100_000;
    AtomicLong read = new AtomicLong();
    List<Integer> wrong = new ArrayList<>();
    AtomicLong taken = new AtomicLong();
    AtomicLong mostHeld = new AtomicLong();
    OrderedParallelism.Source<Integer> source =
        () -> read.get() == lines ? null : (int) read.getAndIncrement();

    new OrderedParallelism<Integer, Integer>(n -> -n, workers, WINDOW)
        .run(
            source,
            (n, last) -> {
              mostHeld.accumulateAndGet(read.get() - taken.get(), Math::max);
              if (n != -taken.getAndIncrement()) {
                wrong.add(n);
              }
            });

    assertThat(taken.get()).isEqualTo(lines);
    assertThat(wrong).isEmpty();
    // The window, the one that waits for room in it and the one being taken.
    assertThat(mostHeld.get()).isLessThanOrEqualTo(WINDOW + 2);
  }

  @Test
  void aSlowTakerHoldsTheReaderBack() throws Exception {
    AtomicLong read = new AtomicLong();
    CountDownLatch full = new CountDownLatch(WINDOW + 1);
    OrderedParallelism.Source<Integer> source =
        () -> {
          full.countDown();
          return read.get() == 1_000 ? null : (int) read.getAndIncrement();
        };
    AtomicLong readWhileNothingWasTaken = new AtomicLong();

    new OrderedParallelism<Integer, Integer>(n -> n, workers, WINDOW)
        .run(
            source,
            (n, last) -> {
              if (n == 0) {
                awaited(full);
                readWhileNothingWasTaken.set(read.get());
              }
            });

    assertThat(readWhileNothingWasTaken.get()).isBetween((long) WINDOW, WINDOW + 2L);
  }

  @Test
  void linesAreWorkedOnTogether() throws Exception {
    CyclicBarrier both = new CyclicBarrier(2);
    List<Integer> taken = new ArrayList<>();
    new OrderedParallelism<Integer, Integer>(n -> met(both, n), workers, WINDOW)
        .run(source(IntStream.range(0, 2).iterator()), (n, last) -> taken.add(n));
    assertThat(taken).containsExactly(0, 1);
  }

  @Test
  void aCallerWhoWaitsForAnAnswerBeforeItSendsTheNextLineGetsIt() throws Exception {
    SynchronousQueue<Integer> answered = new SynchronousQueue<>();
    AtomicLong sent = new AtomicLong();
    OrderedParallelism.Source<Integer> lockStep =
        () -> {
          try {
            if (sent.get() > 0) {
              assertThat(answered.take()).isEqualTo((int) sent.get() - 1);
            }
            return sent.get() == 5 ? null : (int) sent.getAndIncrement();
          } catch (InterruptedException e) {
            throw new IOException(e);
          }
        };
    new OrderedParallelism<Integer, Integer>(n -> n, workers, WINDOW)
        .run(
            lockStep,
            (n, last) -> {
              assertThat(last).isTrue();
              put(answered, n);
            });
    assertThat(sent.get()).isEqualTo(5);
  }

  @Test
  void whenTheAnswersAreNoLongerConsumedReadingStops() {
    AtomicLong read = new AtomicLong();
    assertThatThrownBy(
            () ->
                new OrderedParallelism<Integer, Integer>(n -> n, workers, WINDOW)
                    .run(
                        () -> (int) read.getAndIncrement(),
                        (n, last) -> {
                          throw new IOException("gone");
                        }))
        .isInstanceOf(IOException.class)
        .hasMessage("gone");
    long then = read.get();
    assertThat(then).isLessThanOrEqualTo(2 * WINDOW + 4);
    assertThat(read.get()).isEqualTo(then);
  }

  @Test
  void aSourceThatFailsIsReportedAfterItsItemsAreConsumed() {
    List<Integer> taken = new ArrayList<>();
    Iterator<Integer> three = IntStream.range(0, 3).iterator();
    assertThatThrownBy(
            () ->
                new OrderedParallelism<Integer, Integer>(n -> n, workers, WINDOW)
                    .run(
                        () -> {
                          if (!three.hasNext()) {
                            throw new IOException("cut");
                          }
                          return three.next();
                        },
                        (n, last) -> taken.add(n)))
        .isInstanceOf(IOException.class)
        .hasMessage("cut");
    assertThat(taken).containsExactly(0, 1, 2);
  }

  @Test
  void aSourceThatFailsUnexpectedlyDoesNotLeaveTheConsumerWaiting() {
    assertThatThrownBy(
            () ->
                new OrderedParallelism<Integer, Integer>(n -> n, workers, WINDOW)
                    .run(
                        () -> {
                          throw new AssertionError("no memory");
                        },
                        (n, last) -> {}))
        .isInstanceOf(IOException.class)
        .hasRootCauseMessage("no memory");
  }

  @Test
  void aLineOverTheLimitIsCutAndTheNextIsWhole() throws IOException {
    byte[] text = "abc\r\n\n  \nabcdef\nabcde".getBytes(StandardCharsets.UTF_8);
    Lines lines = new Lines(new ByteArrayInputStream(text), 5);
    assertLine(lines.next(), 1, "abc\r", false);
    assertLine(lines.next(), 4, "abcde", true);
    assertLine(lines.next(), 5, "abcde", false);
    assertThat(lines.next()).isNull();
  }

  private static void assertLine(Lines.Line line, long number, String text, boolean cut) {
    assertThat(line.number()).isEqualTo(number);
    assertThat(new String(line.bytes(), StandardCharsets.UTF_8)).isEqualTo(text);
    assertThat(line.cut()).isEqualTo(cut);
  }

  private static OrderedParallelism.Source<Integer> source(Iterator<Integer> of) {
    return () -> of.hasNext() ? of.next() : null;
  }

  private static int met(CyclicBarrier both, int n) {
    try {
      both.await();
      return n;
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static void awaited(CountDownLatch latch) throws IOException {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }

  private static void put(SynchronousQueue<Integer> queue, int n) throws IOException {
    try {
      queue.put(n);
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }
}

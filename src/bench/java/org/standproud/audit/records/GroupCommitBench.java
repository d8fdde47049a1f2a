package org.standproud.audit.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.chain.KeyPlaces;

/**
 * What group commit gains over one record a transaction, on the same database, the same records and
 * the same number of callers, turn and turn about so that drift of the machine hits both. A plain
 * main, because what is measured is the disk. Arguments: callers, records a run, pairs of runs.
 */
public final class GroupCommitBench {

  private static final int ONE = 1;
  private static final int GROUP = 128;

  private final int callers;
  private final int records;
  private final int pairs;

  private GroupCommitBench(int callers, int records, int pairs) {
    this.callers = callers;
    this.records = records;
    this.pairs = pairs;
  }

  private record Run(double perSecond, double p99Ms) {}

  /**
   * Measures H2 and PostgreSQL.
   *
   * @param arguments callers, records a run, pairs of runs; 32, 2000 and 5 when not given
   */
  public static void main(String[] arguments) throws Exception {
    GroupCommitBench bench =
        new GroupCommitBench(at(arguments, 0, 32), at(arguments, 1, 2_000), at(arguments, 2, 5));
    bench.compare("H2", GroupCommitBench::h2);
    try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
      bench.compare("PostgreSQL", () -> postgres(server));
    }
    System.exit(0);
  }

  private void compare(String name, Supplier<DataSource> empty) throws Exception {
    run(empty.get(), GROUP); // Warms the code up; not counted.
    List<Run> one = new ArrayList<>();
    List<Run> group = new ArrayList<>();
    for (int pair = 0; pair < pairs; pair++) {
      one.add(run(empty.get(), ONE));
      group.add(run(empty.get(), GROUP));
    }
    double single = median(one.stream().mapToDouble(Run::perSecond).toArray());
    double together = median(group.stream().mapToDouble(Run::perSecond).toArray());
    double singleP99 = median(one.stream().mapToDouble(Run::p99Ms).toArray());
    double togetherP99 = median(group.stream().mapToDouble(Run::p99Ms).toArray());
    System.out.printf(
        "%s, %d callers: one a transaction %.0f/s, p99 %.1f ms; group commit %.0f/s, p99 %.1f ms;"
            + " ratio %.1f, p99 %.2f%n",
        name,
        callers,
        single,
        singleP99,
        together,
        togetherP99,
        together / single,
        togetherP99 / singleP99);
  }

  private Run run(DataSource database, int largestGroup) throws Exception {
    Flyway.configure().dataSource(database).load().migrate();
    KeyPlaces keys = new KeyPlaces(Files.createTempDirectory("bench"));
    ChainKeys seal = new ChainKeys(keys.chain().open(), keys.signing().open());
    ExecutorService pool = Executors.newFixedThreadPool(callers);
    try (Records store =
        new Records(
            database,
            seal,
            keys.checkpoints(),
            Clock.systemUTC(),
            AppendListener.NOTHING,
            EvidenceDigest.NOTHING,
            largestGroup)) {
      List<Callable<Long>> work = new ArrayList<>();
      for (int i = 0; i < records; i++) {
        String job = "J-" + i;
        work.add(() -> timed(store, job));
      }
      long start = System.nanoTime();
      List<Long> times = new ArrayList<>();
      for (Future<Long> one : pool.invokeAll(work)) {
        times.add(one.get());
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
      return new Run(records / seconds, sorted[sorted.length * 99 / 100] / 1e6);
    } finally {
      pool.shutdown();
    }
  }

  private static long timed(Records store, String job) throws InterruptedException {
    long start = System.nanoTime();
    store.append(SampleRecords.stopped(job, Instant.EPOCH));
    return System.nanoTime() - start;
  }

  private static DataSource h2() {
    try {
      Path directory = Files.createTempDirectory("bench");
      return JdbcConnectionPool.create(
          "jdbc:h2:file:" + directory.resolve("standproud") + ";WRITE_DELAY=0", "", "");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static DataSource postgres(EmbeddedPostgres server) {
    String name = "bench" + System.nanoTime();
    JdbcClient.create(server.getPostgresDatabase()).sql("create database " + name).update();
    return server.getDatabase("postgres", name);
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }

  private static int at(String[] arguments, int index, int otherwise) {
    return arguments.length > index ? Integer.parseInt(arguments[index]) : otherwise;
  }
}

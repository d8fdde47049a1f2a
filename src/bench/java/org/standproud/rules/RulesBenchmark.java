package org.standproud.rules;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.impact.PastJob;
import org.standproud.rules.language.QuantityText;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;

/** The shop's cards on the demonstration set-ups: tracing on and off, the gate, past jobs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RulesBenchmark {

  private static final Authorship BY =
      new Authorship("bench", "bench", Instant.parse("2026-11-25T08:00:00Z"), null);

  private final List<Evidence> evidence = DemonstrationEvidence.all();
  private final Gate gate =
      new Gate(
          Vocabulary.all(), new QuantityText(), name -> Optional.empty(), Coverage.Demand.REFUSE);
  private final Map<String, String> files = CardFolder.read(Path.of("rules")).files();
  private final RuleBase base = ((GateResult.Published) gate.check(files, BY)).ruleBase();
  private int next;

  private Evidence next() {
    next = (next + 1) % evidence.size();
    return evidence.get(next);
  }

  /** Every card with truths, facts read and margins. */
  @Benchmark
  public RuleTrace tracingOn() {
    return base.evaluate(next());
  }

  /** Every card with its kind and severity only. */
  @Benchmark
  public RuleKinds tracingOff() {
    return base.kinds(next());
  }

  /** The whole catalogue through the gate, texts in memory, no past jobs. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public GateResult wholeGate() {
    return gate.check(files, BY);
  }

  /** A hundred thousand past jobs judged again on all cores. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @OutputTimeUnit(TimeUnit.SECONDS)
  @Warmup(iterations = 1)
  @Measurement(iterations = 3)
  public ImpactReport hundredThousandPastJobs() {
    return new Impact(RulesBenchmark::verdict)
        .of(
            base,
            () ->
                Collections.nCopies(100_000, "record").stream()
                    .map(id -> new PastJob(id, null, this::next, "run", Map.of())),
            Impact.Progress.UNWATCHED);
  }

  private static String verdict(RuleBase base, RuleKinds kinds, Evidence evidence) {
    boolean stops =
        kinds.findings().stream()
            .anyMatch(f -> f.severity() == Severity.STOP && f.kind() == Kind.FAIL);
    return stops ? "do not run" : "run";
  }
}

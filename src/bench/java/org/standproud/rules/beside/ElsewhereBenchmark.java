package org.standproud.rules.beside;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.DemonstrationEvidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;

/** All of the shop's cards on top-edge cuts, with more and more cards about broad sides only. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ElsewhereBenchmark {

  /** How many cards are about something else. */
  @Param({"0", "300", "600", "1200"})
  public int elsewhere;

  private RuleBase base;
  private List<Evidence> evidence;
  private int next;

  /** Builds the rule base and takes the set-ups of the other operation. */
  @Setup
  public void build() {
    base = CardSets.withElsewhere(elsewhere, "operation", "broad side");
    evidence =
        DemonstrationEvidence.all().stream()
            .filter(
                e ->
                    e.get(base.facts().find("operation")) instanceof Value.Text t
                        && t.word().equals("top edge"))
            .toList();
  }

  private Evidence next() {
    next = (next + 1) % evidence.size();
    return evidence.get(next);
  }

  /** With truths and distances of every card. */
  @Benchmark
  public RuleTrace traced() {
    return base.evaluate(next());
  }

  /** Kinds only. */
  @Benchmark
  public RuleKinds kinds() {
    return base.kinds(next());
  }
}

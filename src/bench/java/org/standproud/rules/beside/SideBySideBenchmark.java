package org.standproud.rules.beside;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.kie.api.KieBase;
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
import org.standproud.rules.DemonstrationEvidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;

/** One set-up judged by the same cards in five ways, which are checked to agree beforehand. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SideBySideBenchmark {

  /** How many cards. */
  @Param({"16", "70", "500", "2000"})
  public int cards;

  private static final List<Evidence> EVIDENCE = DemonstrationEvidence.all();

  /** Built once a number of cards where several benchmarks share a machine (option -f 0). */
  private static final Map<Integer, Sides> BUILT = new HashMap<>();

  private Sides sides;
  private int next;

  /** Builds all and compares what they say of every demonstration set-up. */
  @Setup
  public void build() {
    sides = BUILT.computeIfAbsent(cards, Sides::of);
  }

  /** The ways to judge, found to agree. */
  private record Sides(RuleBase base, CardLoop loop, OtherEngines others, KieBase kept) {
    static Sides of(int cards) {
      RuleBase base = CardSets.of(cards);
      CardLoop loop = new CardLoop(base);
      OtherEngines others = new OtherEngines(loop);
      KieBase kept = others.container();
      EVIDENCE.forEach(new Agreement(base, loop, others, kept)::check);
      return new Sides(base, loop, others, kept);
    }
  }

  private Evidence next() {
    next = (next + 1) % EVIDENCE.size();
    return EVIDENCE.get(next);
  }

  /** This engine, with draws, margins and severities of every card. */
  @Benchmark
  public RuleTrace traced() {
    return sides.base().evaluate(next());
  }

  /** This engine, kinds only. */
  @Benchmark
  public RuleKinds kinds() {
    return sides.base().kinds(next());
  }

  /** The same compiled cards in a plain loop, with the same draws, margins and severities. */
  @Benchmark
  public List<LoopTrace> loopTraced() {
    return sides.loop().traced(next());
  }

  /** The same compiled cards in a plain loop, kinds only. */
  @Benchmark
  public List<CardKind> loopKinds() {
    return sides.loop().kinds(next());
  }

  /** Rules from text, compiled once, a session a call; kinds only. */
  @Benchmark
  public List<CardKind> droolsKeptContainer() {
    return sides.others().drools(sides.kept(), next(), false).kinds();
  }

  /** Rules from text, compiled once, a session a call; the trace of the loop. */
  @Benchmark
  public List<LoopTrace> droolsKeptTraced() {
    return sides.others().drools(sides.kept(), next(), true).traces();
  }

  /** Rules from text, compiled anew for each call; kinds only. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 1)
  @Measurement(iterations = 3)
  public List<CardKind> droolsNewContainer() {
    return sides.others().drools(sides.others().container(), next(), false).kinds();
  }

  /** Easy Rules, its rules registered once; kinds only. */
  @Benchmark
  public List<CardKind> easyRules() {
    return sides.others().easyRules(next(), false).kinds();
  }

  /** Easy Rules; the trace of the loop. */
  @Benchmark
  public List<LoopTrace> easyRulesTraced() {
    return sides.others().easyRules(next(), true).traces();
  }
}

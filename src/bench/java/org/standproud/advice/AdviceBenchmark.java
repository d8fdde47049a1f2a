package org.standproud.advice;

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
import org.standproud.advice.envelope.Envelope;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.advice.plan.PassPlan;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.sensitivity.SensitivityReport;
import org.standproud.advice.workholding.OtherHolds;

/**
 * What a better set-up costs to find, on one core: remedies under 300 ms and an envelope of 40 by
 * 40 under 1 s are what the pages can wait for.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 4)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class AdviceBenchmark {

  /** A plate barely gripped, a narrow cutter, a side cut. */
  @Param({"03", "04", "05"})
  public String name;

  private org.standproud.setup.Setup setup;

  /** Keeps nothing. */
  public AdviceBenchmark() {}

  /** Reads the set-up and the cards. */
  @Setup
  public void read() {
    setup = DemoShop.setup(name);
    DemoShop.CARDS.revision();
  }

  /** Every remedy of one set-up. */
  @Benchmark
  public Remedies remedies() {
    return Remedies.of(setup, DemoShop.CARDS, DemoShop.CATALOGUE);
  }

  /** One envelope of 40 by 40. */
  @Benchmark
  public Envelope envelope() {
    return SafeEnvelope.cut(setup, DemoShop.trials(), SafeEnvelope.FINENESS);
  }

  /** Every other hold of one set-up. */
  @Benchmark
  public OtherHolds otherHolds() {
    return OtherHolds.of(setup, false, DemoShop.CARDS, DemoShop.CATALOGUE);
  }

  /** What to measure first. */
  @Benchmark
  public SensitivityReport askBack() {
    return SensitivityReport.of(setup, DemoShop.CARDS);
  }

  /** The passes that take off 1.5 mm. */
  @Benchmark
  public PassPlan passPlan() {
    return PassPlan.of(setup, 1.5e-3, DemoShop.CARDS);
  }
}

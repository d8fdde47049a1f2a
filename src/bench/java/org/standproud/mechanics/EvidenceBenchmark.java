package org.standproud.mechanics;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.mechanics.force.DrawnForces;
import org.standproud.mechanics.force.DrawnPass;
import org.standproud.mechanics.force.ForceDraw;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.SamplingPlan;
import org.standproud.setup.Band;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/**
 * What the evidence of a set-up costs, whole and by its dearest stages, beside the evidence by
 * bands of version 0.2.0, which the joint evidence may cost six times where the plate was met
 * before and ten times where it is new. Both are timed in one run, so that the ratio stands on a
 * machine that does other work too.
 *
 * <pre>
 * mvn -Pbench -DskipTests test-compile exec:java -Dexec.args="EvidenceBenchmark -f 0"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class EvidenceBenchmark {

  /** The demonstration set-ups measured: a wire and a stop, a side cut, nothing measured. */
  @Param({"01-top-edge-wire-and-stop", "02-broad-side-climb-on-cnc", "12-nobody-measured"})
  public String name;

  private final RememberedPlates met = new RememberedPlates(8);
  private org.standproud.setup.Setup setup;

  /** Reads the set-up. */
  @Setup
  public void read() throws IOException {
    Catalogue catalogue =
        ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    String json = Files.readString(Path.of("seeds/setups", name + ".json"));
    setup = ((Reading.Accepted) new SetupReader(catalogue).readJson(json)).setup();
  }

  /** The cut and the hold in every draw of the evidence. */
  @Benchmark
  public DrawnCut draws() {
    return DrawnCut.of(setup, JointSample.of(setup)).orElseThrow();
  }

  /** One draw worked through alone, with the whole sweep of the force: times 256 for the rest. */
  @Benchmark
  public DrawnPass oneDrawAlone() {
    return DrawnForces.of(ForceInput.from(setup))
        .orElseThrow()
        .at(new ForceDraw(2e9, 0.2, setup.cut().feedPerToothM().likely(), 0.02e-3, 0.4, 0.1));
  }

  /** The evidence with the chance that it holds and how it lets go. */
  @Benchmark
  public JointEvidence evidenceWithItsChance() {
    return EvidenceGathering.jointly(setup);
  }

  /** The force through the pass, bands included. */
  @Benchmark
  public PassForces forces() {
    return PassForces.of(ForceInput.from(setup)).orElseThrow();
  }

  /** Whether it goes in. */
  @Benchmark
  public Reach reach() {
    return Reach.of(setup);
  }

  /** The plate on a hold of its own stiffness, three scenarios, modes and statics. */
  @Benchmark
  public PlateResponse plate() {
    return PlateResponse.of(
        new PlateInput(
            setup.stickOutM(),
            setup.stock().lengthM(),
            setup.stock().thicknessM(),
            setup.stock().material().youngsModulusPa(),
            setup.stock().material().poissonsRatio(),
            setup.stock().material().densityKgPerM3(),
            new Band(1e9, 2e9, 4e9),
            new Band(5e4, 1e5, 2e5),
            Math.min(setup.stock().lengthM(), setup.hold().vise().jawWidthM()),
            new PlatePoint(setup.stock().lengthM() / 2, setup.stickOutM())));
  }

  /** Two thousand draws of the hold. */
  @Benchmark
  public HoldingChance sampling() {
    return HoldingChance.of(setup, SamplingPlan.USUAL).orElseThrow();
  }

  /** The evidence by bands, its plate met for the first time. */
  @Benchmark
  public List<Object> banded() {
    return BandedEvidence.of(setup, new RememberedPlates(1));
  }

  /** The evidence by bands, its plate met before. */
  @Benchmark
  public List<Object> bandedOfAPlateMetBefore() {
    return BandedEvidence.of(setup, met);
  }

  /** The whole evidence, its plate met for the first time. */
  @Benchmark
  public Evidence evidence() {
    return EvidenceGathering.of(setup, new RememberedPlates(1));
  }

  /** The whole evidence, its plate met before. */
  @Benchmark
  public Evidence evidenceOfAPlateMetBefore() {
    return EvidenceGathering.of(setup);
  }
}

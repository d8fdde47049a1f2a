package org.standproud.mechanics;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.cutter.CutterStanding;
import org.standproud.mechanics.direction.PassDirections;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.drive.TableLurch;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.finish.SurfaceFinish;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.history.ForceHistory;
import org.standproud.mechanics.holding.ViseHolding;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.spindle.SpindleLoad;
import org.standproud.mechanics.vibration.ForcedInput;
import org.standproud.mechanics.vibration.ForcedResponse;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/**
 * What each stage of the evidence costs, on what the stages before it made, so that one run says
 * which of them dominates:
 *
 * <pre>
 * mvn -Pbench -DskipTests test-compile exec:java -Dexec.args="StageBenchmark -f 0"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class StageBenchmark {

  /** The demonstration set-ups measured: a wire and a stop, a side cut, nothing measured. */
  @Param({"01-top-edge-wire-and-stop", "02-broad-side-climb-on-cnc", "12-nobody-measured"})
  public String name;

  private org.standproud.setup.Setup setup;
  private ForceInput input;
  private StandingCut cut;
  private PassForces forces;
  private PlateResponse plate;
  private double[] acrossN;

  /** Reads the set-up and works it out once. */
  @Setup
  public void read() throws IOException {
    Catalogue catalogue =
        ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    String json = Files.readString(Path.of("seeds/setups", name + ".json"));
    org.standproud.setup.Setup meant =
        ((Reading.Accepted) new SetupReader(catalogue).readJson(json)).setup();
    setup = HandFeed.asTheTeethSeeIt(meant);
    input = ForceInput.from(setup);
    cut = StandingCut.of(meant).orElseThrow();
    forces = cut.forces();
    plate = PlateResponse.of(cut.plate());
    acrossN = forces.likelyRevolution(360).stream().mapToDouble(s -> s.force().yN()).toArray();
  }

  /** How the cutter meets the stock. */
  @Benchmark
  public Engagement engagement() {
    return Engagement.of(setup.stock(), setup.cutter(), setup.cut());
  }

  /** The force through the pass, bands included. */
  @Benchmark
  public PassForces forces() {
    return PassForces.of(input).orElseThrow();
  }

  /** Which ways it pushes, first contact included. */
  @Benchmark
  public PassDirections directions() {
    return PassDirections.of(input, forces);
  }

  /** The vise against the cut. */
  @Benchmark
  public ViseHolding holding() {
    return ViseHolding.of(cut.holdingInput());
  }

  /** The plate on its jaws, solved anew. */
  @Benchmark
  public PlateResponse plate() {
    return PlateResponse.of(cut.plate());
  }

  /** Forced vibration; the evidence asks for it twice. */
  @Benchmark
  public ForcedResponse vibrationForced() {
    return ForcedResponse.of(
        new ForcedInput(
            acrossN,
            setup.cut().spindleSpeedRevPerS(),
            setup.cutter().teeth(),
            plate.modesAtCorner(),
            plate.flexibilityAtCornerMPerN(),
            StabilityInput.USUAL_DAMPING));
  }

  /** The limit of stability. */
  @Benchmark
  public Stability vibrationStability() {
    return Stability.of(cut.chatter(plate));
  }

  /** Bending and strength of the cutter. */
  @Benchmark
  public CutterStanding cutter() {
    Band feedM = setup.cut().feedPerToothM();
    return CutterStanding.of(
        setup.cutter(),
        setup.cut(),
        setup.stock().material(),
        setup.machine().spindleStiffnessNPerM(),
        forces.path().greatestInPlaneN(),
        feedM,
        feedM);
  }

  /** Power of the spindle. */
  @Benchmark
  public SpindleLoad spindle() {
    return SpindleLoad.of(setup.machine(), setup.cut().spindleSpeedRevPerS(), forces.meanPowerW());
  }

  /** Pull on the table. */
  @Benchmark
  public TableLurch drive() {
    AxisForce along = forces.path().x();
    return TableLurch.of(
        setup.machine(),
        setup.cut(),
        along.leastN(),
        along.meanN(),
        along.greatestN(),
        forces.path().z().greatestN().times(-1));
  }

  /** Whether it goes in. */
  @Benchmark
  public Reach reach() {
    return Reach.of(setup);
  }

  /** The surface left. */
  @Benchmark
  public SurfaceFinish finish() {
    return SurfaceFinish.of(setup, setup.cut().feedPerToothM(), null);
  }

  /** The curves that pages draw; no part of the evidence. */
  @Benchmark
  public ForceHistory history() {
    return ForceHistory.of(setup).orElseThrow();
  }

  /** The whole evidence. */
  @Benchmark
  public Evidence wholeEvidence() {
    return EvidenceGathering.of(setup);
  }
}

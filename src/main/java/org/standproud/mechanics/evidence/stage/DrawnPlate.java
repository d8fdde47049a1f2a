package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.force.DrawnPass;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.mechanics.holding.GrippedRoot;
import org.standproud.mechanics.holding.jaw.BackingHold;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.holding.other.BackedBlock;
import org.standproud.mechanics.holding.other.LyingStock;
import org.standproud.mechanics.plate.BackedPlate;
import org.standproud.mechanics.plate.GrippedFoot;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlateMode;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateSurface;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.mechanics.tooltip.TipModes;
import org.standproud.mechanics.vibration.CoupledDepth;
import org.standproud.mechanics.vibration.DampedMode;
import org.standproud.mechanics.vibration.DirectionalFactors;
import org.standproud.mechanics.vibration.FlankDamping;
import org.standproud.mechanics.vibration.StabilityLobes;
import org.standproud.mechanics.vibration.SteadySwing;
import org.standproud.setup.Band;
import org.standproud.setup.HeldMeasurement;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/**
 * How the standing plate gives and rings, and how plate and cutter swing and chatter against each
 * other, in each draw. In a draw in which the stock lets go no number of it exists: it is NaN.
 */
public final class DrawnPlate {

  private final DrawnCut cut;
  private final Setup setup;
  private final double[][] hz;
  private final double[][] stiffness;
  private final double[] flexibility;

  /** Give pushed toward the fixed jaw and away from it in each draw; null without a backing. */
  private final double @Nullable [] @Nullable [] backed;

  private final double thinned;
  private final DrawnTool tool;
  private final CoupledDepth coupled = new CoupledDepth(PlateSurface.MODES + TipModes.MODES);

  private DrawnPlate(DrawnCut cut, double thinned, IntPredicate stands) {
    this.cut = cut;
    this.setup = cut.setup();
    int n = cut.draws();
    this.hz = new double[n][];
    this.stiffness = new double[n][];
    this.flexibility = unknown(n);
    this.backed =
        BackingHold.touching(setup.hold(), setup.stock()).isEmpty() ? null : new double[n][];
    this.thinned = thinned;
    this.tool = new DrawnTool(cut, stands);
  }

  DrawnPlate(DrawnCut cut, Engagement.Cutting cutting, RememberedPlates plates) {
    this(cut, thinned(cut, cutting), cut::holds);
    PlateInput stock = stock(cutting);
    PlateSurface surface = plates.surface(stock);
    GrippedRoot root = GrippedRoot.of(setup);
    BackedPlate behind = backed == null ? null : BackedStock.of(setup, stock);
    double[] corner = new double[1 + 2 * PlateSurface.MODES];
    for (int draw = 0; draw < cut.draws(); draw++) {
      if (cut.holds(draw)) {
        fill(draw, root, surface, behind, corner);
      }
    }
  }

  /** Stock that lies flat under straps; its hold is judged elsewhere, so every draw counts. */
  static DrawnPlate lying(DrawnCut cut, LyingStock stock) {
    DrawnPlate plate = new DrawnPlate(cut, 1, draw -> cut.pass(draw) != null);
    JointSample sample = cut.sample();
    for (int draw = 0; draw < cut.draws(); draw++) {
      if (cut.pass(draw) == null) {
        continue;
      }
      double springNPerM =
          stock.stiffnessNPerM(
              sample.at(Unknown.CLAMPING_FORCE, draw),
              sample.at(Unknown.JOINT, draw),
              GrippedFoot.TANGENTIAL_RATIO.part(sample.at(Unknown.PACKING, draw)));
      plate.rigid(draw, 1 / springNPerM, new double[] {stock.naturalHz(springNPerM)}, springNPerM);
    }
    return plate;
  }

  /** Stock that hardly stands out of an upright backing. */
  static DrawnPlate backed(DrawnCut cut, BackedBlock block) {
    DrawnPlate plate = new DrawnPlate(cut, 1, cut::holds);
    for (int draw = 0; draw < cut.draws(); draw++) {
      if (cut.holds(draw)) {
        DrawnHold.State state = Objects.requireNonNull(cut.state(draw));
        double turning = Math.min(state.turningTowardNmPerRad(), state.turningAwayNmPerRad());
        plate.rigid(
            draw,
            block.giveMPerN(state.translationNPerM(), turning),
            new double[] {block.rockingHz(turning), block.shiftingHz(state.translationNPerM())},
            block.rockingNPerM(turning),
            state.translationNPerM());
      }
    }
    return plate;
  }

  /** Few modes of a rigid body; the rest are too stiff to move. */
  private void rigid(int draw, double giveMPerN, double[] naturalHz, double... springsNPerM) {
    double highest = Arrays.stream(naturalHz).max().orElseThrow();
    hz[draw] = new double[PlateSurface.MODES];
    stiffness[draw] = new double[PlateSurface.MODES];
    Arrays.fill(hz[draw], highest);
    Arrays.fill(stiffness[draw], PlateMode.NODE_STIFFNESS_N_PER_M);
    System.arraycopy(naturalHz, 0, hz[draw], 0, naturalHz.length);
    System.arraycopy(springsNPerM, 0, stiffness[draw], 0, springsNPerM.length);
    flexibility[draw] = giveMPerN;
  }

  private static double thinned(DrawnCut cut, Engagement.Cutting cutting) {
    return Math.min(
        1, StandingCut.wallLeftM(cutting, cut.setup()) / cut.setup().stock().thicknessM());
  }

  /**
   * The plate of a set-up in the draws of its evidence.
   *
   * @param setup a checked set-up
   * @return empty if the cutter passes beside the stock, or the stock lets go in every draw
   * @throws org.standproud.mechanics.OutsideValidity if an input is outside the range of the
   *     formulas
   */
  public static Optional<DrawnPlate> of(Setup setup) {
    return of(setup, JointSample.of(setup));
  }

  /** The same in other draws. */
  static Optional<DrawnPlate> of(Setup setup, JointSample sample) {
    Optional<DrawnCut> cut = DrawnCut.of(setup, sample);
    if (cut.isPresent()
        && Engagement.of(setup.stock(), setup.cutter(), setup.cut())
            instanceof Engagement.Cutting cutting) {
      return Optional.of(new DrawnPlate(cut.get(), cutting, new RememberedPlates(1)))
          .filter(plate -> plate.draws().length > 0);
    }
    return Optional.empty();
  }

  private static double[] unknown(int draws) {
    double[] all = new double[draws];
    Arrays.fill(all, Double.NaN);
    return all;
  }

  private PlateInput stock(Engagement.Cutting cutting) {
    Stock stock = setup.stock();
    Material material = stock.material();
    return new PlateInput(
        setup.stickOutM(),
        stock.lengthM(),
        StandingCut.wallLeftM(cutting, setup),
        Band.exactly(material.youngsModulusPa().likely()),
        material.poissonsRatio(),
        material.densityKgPerM3(),
        Band.exactly(1),
        Band.exactly(1),
        JawSpan.of(setup.hold(), stock.lengthM()).evenlyHeldM(stock.lengthM()),
        new PlatePoint(stock.lengthM() / 2, setup.stickOutM()));
  }

  private void fill(
      int draw,
      GrippedRoot root,
      PlateSurface surface,
      @Nullable BackedPlate behind,
      double[] corner) {
    DrawnHold.State state = Objects.requireNonNull(cut.state(draw));
    JointSample sample = cut.sample();
    GrippedRoot.Draw values =
        new GrippedRoot.Draw(
            cut.clampingForceN(draw),
            sample.at(Unknown.JOINT, draw),
            sample.at(Unknown.PACKING, draw),
            sample.at(Unknown.MODULUS, draw),
            sample.at(Unknown.FIXED_JAW, draw),
            sample.at(Unknown.MOVABLE_JAW, draw));
    double turning = Math.min(state.turningTowardNmPerRad(), state.turningAwayNmPerRad());
    double tapped = 1;
    double pushed = 1;
    if (isMeasured()) {
      double bearing = Math.max(turning, root.bearingNmPerRad(values));
      at(surface, values, root.at(values, bearing, state.translationNPerM()), corner);
      tapped = measuredOver(Unknown.NOTE, draw, thinned / first(corner));
      pushed = measuredOver(Unknown.EDGE_STIFFNESS, draw, Math.pow(thinned, 3) * corner[0]);
      tapped = Double.isNaN(tapped) ? Math.sqrt(pushed) : tapped;
      pushed = Double.isNaN(pushed) ? tapped * tapped : pushed;
    }
    at(surface, values, root.at(values, turning, state.translationNPerM()), corner);
    flexibility[draw] = corner[0] / pushed;
    hz[draw] = new double[PlateSurface.MODES];
    stiffness[draw] = new double[PlateSurface.MODES];
    for (int m = 0; m < PlateSurface.MODES; m++) {
      hz[draw][m] = corner[1 + m] * tapped;
      stiffness[draw][m] = corner[1 + PlateSurface.MODES + m] * pushed;
    }
    if (behind != null && backed != null && !isMeasured()) {
      back(draw, behind, values, root.at(values, turning, state.translationNPerM()), backed);
    }
  }

  /** What stands behind the plate; a note or a push that was measured has it in it already. */
  private void back(
      int draw,
      BackedPlate behind,
      GrippedRoot.Draw values,
      GrippedRoot.Compliance root,
      double[][] gives) {
    DrawnPass pass = Objects.requireNonNull(cut.pass(draw));
    double place = cut.sample().at(Unknown.BACKING, draw);
    BackedPlate.Answer answer =
        behind.on(
            values.modulusPa(),
            setup.stock().material().densityKgPerM3(),
            root.stiffness(),
            BackedStock.springsNPerM(setup, place),
            BackedStock.preloadsN(setup, place),
            Math.max(0, pass.peaks().greatestYN()),
            Math.max(0, -pass.peaks().leastYN()));
    gives[draw] = new double[] {answer.towardMPerN(), answer.awayMPerN()};
    flexibility[draw] = Math.max(answer.towardMPerN(), answer.awayMPerN());
    hz[draw] = answer.hz();
    stiffness[draw] = answer.stiffnessesNPerM();
  }

  private static void at(
      PlateSurface surface, GrippedRoot.Draw values, GrippedRoot.Compliance give, double[] corner) {
    surface.at(values.modulusPa(), give.shift(), give.turn(), give.depthM(), corner);
  }

  private static double first(double[] corner) {
    return Arrays.stream(corner, 1, 1 + PlateSurface.MODES).min().orElseThrow();
  }

  /** Whether a tap or a push on the stock stands in place of what is worked out. */
  private boolean isMeasured() {
    HeldMeasurement measured = setup.hold().measured();
    return measured.noteHz() != null || measured.stiffnessNPerM() != null;
  }

  /**
   * What was measured over what the stock would show with faces that bear everywhere, as they do
   * under a tap or a light push; what the cut lifts comes on top. A measured note scales all notes
   * alike, the masses being known; one of both without the other stands for both. Of a stock that
   * the pass thins it is lowered as far as that of a plate that bends alone.
   */
  private double measuredOver(Unknown unknown, int draw, double perModel) {
    return cut.sample().at(unknown, draw) * perModel;
  }

  /** The cut that stands on it. */
  public DrawnCut cut() {
    return cut;
  }

  /** The draws in which the stock holds. */
  public int[] draws() {
    return IntStream.range(0, hz.length).filter(d -> hz[d] != null).toArray();
  }

  /** Give at an end of the top edge in m/N. */
  public double flexibilityMPerN(int draw) {
    return flexibility[draw];
  }

  /** Static give of the end of the top edge under the greatest push across in m. */
  public double deflectionM(int draw) {
    DrawnPass pass = cut.pass(draw);
    if (pass == null) {
      return Double.NaN;
    }
    double towardN = pass.peaks().greatestYN();
    double awayN = -pass.peaks().leastYN();
    double[] gives = backed == null ? null : backed[draw];
    return gives == null
        ? flexibility[draw] * Math.max(towardN, awayN)
        : Math.max(gives[0] * towardN, gives[1] * awayN);
  }

  /** Give that a swing both ways meets in m/N: half of it with a backing and half without. */
  private double swingGiveMPerN(int draw) {
    double[] gives = backed == null ? null : backed[draw];
    return gives == null ? flexibility[draw] : (gives[0] + gives[1]) / 2;
  }

  /** First natural frequency in Hz. */
  public double firstHz(int draw) {
    if (hz[draw] == null) {
      return Double.NaN;
    }
    double first = Double.POSITIVE_INFINITY;
    for (double mode : hz[draw]) {
      first = Math.min(first, mode);
    }
    return first;
  }

  /** Swing of plate and cutter against each other under the blows of the teeth in m. */
  public double swingM(int draw) {
    DrawnPass pass = cut.pass(draw);
    if (hz[draw] == null || pass == null) {
      return Double.NaN;
    }
    double[] allHz = Arrays.copyOf(hz[draw], PlateSurface.MODES + TipModes.MODES);
    double[] allStiffness = Arrays.copyOf(stiffness[draw], allHz.length);
    double[] allDamping = new double[allHz.length];
    Arrays.fill(allDamping, damping(draw));
    for (int m = 0; m < TipModes.MODES; m++) {
      allHz[PlateSurface.MODES + m] = tool.hz(draw, m);
      allStiffness[PlateSurface.MODES + m] = tool.stiffnessNPerM(draw, m);
      allDamping[PlateSurface.MODES + m] = tool.damping(draw);
    }
    return SteadySwing.amplitudeM(
        pass.acrossTurnN(),
        setup.cut().spindleSpeedRevPerS(),
        allHz,
        allStiffness,
        allHz.length,
        allDamping,
        swingGiveMPerN(draw) + tool.giveMPerN(draw));
  }

  /**
   * Depth at which plate and cutter start to chatter in m.
   *
   * @param draw the draw
   * @param revPerS spindle speed in 1/s
   */
  public double chatterDepthM(int draw, double revPerS) {
    return chatter(draw, revPerS).depthM();
  }

  /**
   * How plate and cutter start to chatter; no number where the stock lets go.
   *
   * @param draw the draw
   * @param revPerS spindle speed in 1/s
   */
  CoupledDepth.Limit chatter(int draw, double revPerS) {
    if (hz[draw] == null) {
      return CoupledDepth.Limit.UNKNOWN;
    }
    FlankDamping flank = flank(draw, revPerS);
    double widthM = widthOnWavesM();
    coupled.clear();
    for (int m = 0; m < TipModes.MODES; m++) {
      double atHz = tool.hz(draw, m);
      double spring = tool.stiffnessNPerM(draw, m);
      coupled.cutter(atHz, tool.damping(draw) + flank.added(widthM, atHz, spring), spring);
    }
    for (int m = 0; m < PlateSurface.MODES; m++) {
      double spring = stiffness[draw][m];
      double ratio = damping(draw) + flank.added(widthM, hz[draw][m], spring);
      coupled.stock(hz[draw][m], ratio, spring);
    }
    return coupled.at(factors(draw), tangentialPa(draw), setup.cutter().teeth(), revPerS);
  }

  private FlankDamping flank(int draw, double revPerS) {
    return new FlankDamping(
        FlankDamping.INDENTATION_PER_MODULUS * cut.sample().at(Unknown.MODULUS, draw),
        cut.sample().at(Unknown.LAND, draw),
        Math.max(1e-3, Math.min(100, Math.PI * setup.cutter().diameterM() * revPerS)));
  }

  /**
   * Width of cut that rubs on a wave at the set depth, the lesser of along and across the feed, as
   * a mean over the turn: no more than that is counted on, also for a deeper limit.
   */
  private double widthOnWavesM() {
    Arc arc = cut.forces().steadyArc();
    double span = arc.spanRad();
    double waves = (Math.sin(2 * arc.exitRad()) - Math.sin(2 * arc.entryRad())) / 2;
    return setup.cut().axialDepthM()
        * setup.cutter().teeth()
        / (4 * Math.PI)
        * Math.max(0, span - Math.abs(waves));
  }

  /** The whole chart of a draw in which the stock holds. */
  public StabilityLobes lobes(int draw) {
    List<DampedMode> cutter = new ArrayList<>();
    for (int m = 0; m < TipModes.MODES; m++) {
      cutter.add(
          new DampedMode(tool.hz(draw, m), tool.damping(draw), tool.stiffnessNPerM(draw, m)));
    }
    List<DampedMode> across = new ArrayList<>(cutter);
    for (int m = 0; m < PlateSurface.MODES; m++) {
      across.add(new DampedMode(hz[draw][m], damping(draw), stiffness[draw][m]));
    }
    return StabilityLobes.milling(
        cutter, across, factors(draw), tangentialPa(draw), setup.cutter().teeth());
  }

  private double damping(int draw) {
    return cut.sample().at(Unknown.DAMPING, draw);
  }

  private DirectionalFactors factors(int draw) {
    Arc arc = cut.forces().steadyArc();
    return DirectionalFactors.of(arc.entryRad(), arc.exitRad(), radialRatio(draw));
  }

  private double radialRatio(int draw) {
    return Math.min(3, cut.radialRatio(draw));
  }

  /** Mean tangential force over the mean chip section of the same draw, in Pa. */
  private double tangentialPa(int draw) {
    DrawnPass pass = Objects.requireNonNull(cut.pass(draw));
    double sectionM2 =
        setup.cutter().teeth()
            * setup.cut().axialDepthM()
            * cut.sample().at(Unknown.FEED, draw)
            * cut.forces().steadyArc().depthInRadii()
            / (2 * Math.PI);
    return pass.meanTangentialN() / sectionM2;
  }
}

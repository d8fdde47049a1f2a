package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.force.DrawnPass;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateSurface;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.mechanics.vibration.ChatterDepth;
import org.standproud.mechanics.vibration.DampedMode;
import org.standproud.mechanics.vibration.DirectionalFactors;
import org.standproud.mechanics.vibration.StabilityLobes;
import org.standproud.mechanics.vibration.SteadySwing;
import org.standproud.setup.Band;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/**
 * How the standing plate gives, rings and chatters in each draw. In a draw in which the stock lets
 * go no number of it exists: it is NaN.
 */
public final class DrawnPlate {

  private final DrawnCut cut;
  private final Setup setup;
  private final double[][] hz;
  private final double[][] stiffness;
  private final double[] flexibility;
  private final DoubleUnaryOperator acrossByRatio;

  DrawnPlate(DrawnCut cut, Engagement.Cutting cutting, RememberedPlates plates) {
    this.cut = cut;
    this.setup = cut.setup();
    int n = cut.draws();
    this.hz = new double[n][];
    this.stiffness = new double[n][];
    this.flexibility = unknown(n);
    Arc arc = cut.forces().steadyArc();
    this.acrossByRatio = DirectionalFactors.acrossByRatio(arc.entryRad(), arc.exitRad());
    PlateSurface surface = plates.surface(stock(cutting));
    double[] corner = new double[1 + 2 * PlateSurface.MODES];
    for (int draw = 0; draw < n; draw++) {
      if (cut.holds(draw)) {
        fill(draw, surface, corner);
      }
    }
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
        cut.hold().lengthM(),
        new PlatePoint(stock.lengthM() / 2, setup.stickOutM()));
  }

  private void fill(int draw, PlateSurface surface, double[] corner) {
    DrawnHold.State state = Objects.requireNonNull(cut.state(draw));
    double lengthM = cut.hold().lengthM();
    double turning = Math.min(state.turningTowardNmPerRad(), state.turningAwayNmPerRad());
    surface.at(
        cut.sample().at(Unknown.MODULUS, draw),
        state.translationNPerM() / lengthM,
        turning / lengthM,
        corner);
    flexibility[draw] = corner[0];
    hz[draw] = Arrays.copyOfRange(corner, 1, 1 + PlateSurface.MODES);
    stiffness[draw] = Arrays.copyOfRange(corner, 1 + PlateSurface.MODES, corner.length);
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
    return pass == null
        ? Double.NaN
        : flexibility[draw] * Math.max(pass.peaks().greatestYN(), -pass.peaks().leastYN());
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

  /** Swing under the blows of the teeth in m. */
  public double swingM(int draw) {
    DrawnPass pass = cut.pass(draw);
    return hz[draw] == null || pass == null
        ? Double.NaN
        : SteadySwing.amplitudeM(
            pass.acrossTurnN(),
            setup.cut().spindleSpeedRevPerS(),
            hz[draw],
            stiffness[draw],
            PlateSurface.MODES,
            damping(draw),
            flexibility[draw]);
  }

  /**
   * Depth at which it starts to chatter in m.
   *
   * @param draw the draw
   * @param revPerS spindle speed in 1/s
   */
  public double chatterDepthM(int draw, double revPerS) {
    return hz[draw] == null
        ? Double.NaN
        : ChatterDepth.atM(
            hz[draw],
            stiffness[draw],
            PlateSurface.MODES,
            damping(draw),
            acrossByRatio.applyAsDouble(radialRatio(draw)),
            tangentialPa(draw),
            setup.cutter().teeth(),
            revPerS);
  }

  /** The whole chart of a draw in which the stock holds. */
  public StabilityLobes lobes(int draw) {
    List<DampedMode> modes = new ArrayList<>();
    for (int m = 0; m < PlateSurface.MODES; m++) {
      modes.add(new DampedMode(hz[draw][m], damping(draw), stiffness[draw][m]));
    }
    return StabilityLobes.milling(
        List.of(), modes, factors(draw), tangentialPa(draw), setup.cutter().teeth());
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

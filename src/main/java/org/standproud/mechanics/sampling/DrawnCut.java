package org.standproud.mechanics.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.coupling.EndLoad;
import org.standproud.mechanics.force.DrawnForces;
import org.standproud.mechanics.force.DrawnPass;
import org.standproud.mechanics.force.ForceDraw;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.mechanics.holding.HoldDraw;
import org.standproud.mechanics.holding.HoldingInput;
import org.standproud.mechanics.holding.jaw.BestPackingDepth;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.screw.ScrewThread;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.Hold;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;

/** The cut and the hold of one set-up in every draw of its unknowns. */
public final class DrawnCut {

  /** Share of the screws that are as their maker has them; the rest lose up to half the force. */
  private static final double CLEAN_SCREWS = 0.7;

  private static final double WORN_SCREW_LOSS = 0.5;

  /** Shops that set no stop, and that hang the stock in the jaws: common practice, no source. */
  private static final double WITHOUT_STOP = 0.5;

  private static final double WITHOUT_SEAT = 0.1;

  private final Setup setup;
  private final JointSample sample;
  private final DrawnForces forces;
  private final @Nullable DrawnHold hold;
  private final @Nullable DrawnPass[] passes;
  private final DrawnHold.@Nullable State[] states;
  private final double[] clampingForceN;
  private final @Nullable OutsideValidity holdRefusal;

  private DrawnCut(Setup setup, JointSample sample, DrawnForces forces) {
    this.setup = setup;
    this.sample = sample;
    this.forces = forces;
    this.passes = new DrawnPass[sample.draws()];
    this.states = new DrawnHold.State[sample.draws()];
    this.clampingForceN = new double[sample.draws()];
    cutInEveryDraw();
    DrawnHold held = null;
    OutsideValidity beyond = null;
    try {
      held =
          DrawnHold.of(
              new HoldingInput(
                  setup.hold(), setup.stock(), EndLoad.place(setup), FaceState.of(setup.hold())));
      holdInEveryDraw(held);
    } catch (OutsideValidity e) {
      beyond = e;
    }
    this.hold = held;
    this.holdRefusal = beyond;
  }

  private void cutInEveryDraw() {
    Function<ForceDraw, DrawnPass> shaped =
        forces.over(
            new DrawnForces.Ranges(
                sample.range(Unknown.EXPONENT),
                sample.range(Unknown.FEED),
                sample.range(Unknown.RUN_OUT),
                sample.range(Unknown.NORMAL_RATIO),
                sample.range(Unknown.LIFT_RATIO)));
    inMostDraws(draw -> passes[draw] = shaped.apply(forceDraw(draw)));
  }

  private void holdInEveryDraw(DrawnHold held) {
    for (int draw = 0; draw < sample.draws(); draw++) {
      clampingForceN[draw] = clampN(draw);
    }
    inMostDraws(
        draw -> {
          DrawnPass pass = passes[draw];
          states[draw] = pass == null ? null : held.at(holdDraw(held, draw, pass));
        });
  }

  /** Works through the draws; throws if most of them are outside the range of the formulas. */
  private void inMostDraws(IntConsumer each) {
    int refused = 0;
    OutsideValidity refusal = null;
    for (int draw = 0; draw < sample.draws(); draw++) {
      try {
        each.accept(draw);
      } catch (OutsideValidity e) {
        refused++;
        refusal = e;
      }
    }
    if (refusal != null && 2 * refused > sample.draws()) {
      throw refusal;
    }
  }

  /**
   * The cut of a set-up.
   *
   * @param setup the set-up as the caller means it
   * @param sample its draws
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input of the force is outside the range of the formulas in most
   *     draws; an input of the hold is refused when the hold is asked for
   */
  public static Optional<DrawnCut> of(Setup setup, JointSample sample) {
    sample.check();
    return DrawnForces.of(ForceInput.from(setup))
        .map(forces -> new DrawnCut(setup, sample, forces));
  }

  /** How many draws there are. */
  public int draws() {
    return sample.draws();
  }

  /** A number of the force in each draw; NaN where the draw is outside the formulas. */
  public IntToDoubleFunction ofPass(ToDoubleFunction<DrawnPass> number) {
    return draw -> {
      DrawnPass pass = passes[draw];
      return pass == null ? Double.NaN : number.applyAsDouble(pass);
    };
  }

  /** A number of the hold in each draw; NaN where the draw is outside the formulas. */
  public IntToDoubleFunction ofHold(ToDoubleFunction<DrawnHold.State> number) {
    return draw -> {
      DrawnHold.State state = states[draw];
      return state == null ? Double.NaN : number.applyAsDouble(state);
    };
  }

  /** Whether the stock holds in a draw. */
  public boolean holds(int draw) {
    DrawnHold.State state = states[draw];
    return state != null && state.holds();
  }

  /** The set-up as the caller means it. */
  public Setup setup() {
    return setup;
  }

  /** The draws. */
  public JointSample sample() {
    return sample;
  }

  /** The force model of the pass. */
  public DrawnForces forces() {
    return forces;
  }

  /**
   * The model of the hold. The forces of the cut stand also where the hold is refused.
   *
   * @throws OutsideValidity if an input of the hold is outside the range of the formulas
   */
  public DrawnHold hold() {
    checkHold();
    return Objects.requireNonNull(hold);
  }

  /**
   * Refuses a hold that the formulas do not cover.
   *
   * @throws OutsideValidity if an input of the hold is outside the range of the formulas
   */
  public void checkHold() {
    if (holdRefusal != null) {
      throw holdRefusal;
    }
  }

  /** Whether the hold lies within the range of the formulas. */
  public boolean holdIsKnown() {
    return holdRefusal == null;
  }

  /** The force in a draw; null if the draw lies outside the range of the formulas. */
  public @Nullable DrawnPass pass(int draw) {
    return passes[draw];
  }

  /** The hold in a draw; null if the draw lies outside the range of the formulas. */
  public DrawnHold.@Nullable State state(int draw) {
    return states[draw];
  }

  /** The depth for a wire at the movable jaw that suits most draws, in m. */
  public double bestPackingDepthM() {
    int every = Math.max(1, draws() / 64);
    List<BestPackingDepth.Case> cases = new ArrayList<>();
    for (int draw = 0; draw < draws(); draw += every) {
      DrawnPass pass = passes[draw];
      DrawnHold.State state = states[draw];
      if (pass != null && state != null) {
        Peaks peaks = EndLoad.peaks(pass.peaks());
        cases.add(
            new BestPackingDepth.Case(
                clampingForceN[draw], state.clampLossShare(), peaks.towardFixedN(), peaks.awayN()));
      }
    }
    return BestPackingDepth.over(cases, hold().gripM(), hold().wireSizeM(), setup.stickOutM());
  }

  /** Clamping force in N. */
  public double clampingForceN(int draw) {
    return clampingForceN[draw];
  }

  /** K kc1.1 in Pa; of published coefficients the factor on them. */
  public double specificForcePa(int draw) {
    return sample.at(Unknown.SPECIFIC_FORCE, draw)
        * sample.at(Unknown.WEAR, draw)
        * sample.at(Unknown.PROCESS, draw)
        * sample.at(Unknown.TOOL, draw)
        * sample.at(Unknown.RAKE, draw);
  }

  /** Radial over tangential force: the thrust normal to the edge, seen in the plan. */
  public double radialRatio(int draw) {
    return forces.normalRatio(sample.at(Unknown.NORMAL_RATIO, draw)) * forces.edge().sine();
  }

  private ForceDraw forceDraw(int draw) {
    return new ForceDraw(
        specificForcePa(draw),
        sample.at(Unknown.EXPONENT, draw),
        sample.at(Unknown.FEED, draw),
        sample.at(Unknown.RUN_OUT, draw),
        sample.at(Unknown.NORMAL_RATIO, draw),
        sample.at(Unknown.LIFT_RATIO, draw));
  }

  private double clampN(int draw) {
    Hold held = setup.hold();
    Vise vise = held.vise();
    double drawn = sample.at(Unknown.CLAMPING_FORCE, draw);
    if (held.clampingForceN() != null) {
      return Math.min(drawn, vise.greatestClampingForceN());
    }
    double greased = sample.at(Unknown.SCREW_FRICTION, draw);
    ClampScrew screw = vise.screw();
    double clean =
        ScrewThread.forceN(
            screw,
            Triangle.at(screw.threadFriction(), greased),
            Triangle.at(screw.collarFriction(), greased),
            drawn);
    double worn =
        held.handleTorqueNm() != null
            ? 1
            : 1 - WORN_SCREW_LOSS * Math.max(0, greased - CLEAN_SCREWS) / (1 - CLEAN_SCREWS);
    return Math.min(clean * worn, vise.greatestClampingForceN());
  }

  /**
   * At which end a stop stands in a draw: where none is spoken of, none in half of the shops and
   * one at the end that the cut pushes to most in the other half.
   */
  public Stop stop(int draw) {
    Stop given = setup.hold().stop();
    if (given != null) {
      return given;
    }
    DrawnPass pass = passes[draw];
    if (pass == null || sample.at(Unknown.STOP, draw) < WITHOUT_STOP) {
      return Stop.NONE;
    }
    Peaks peaks = EndLoad.peaks(pass.peaks());
    return peaks.plusXN() >= peaks.minusXN() ? Stop.PLUS_X : Stop.MINUS_X;
  }

  private boolean isSeated(int draw) {
    Seat given = setup.hold().seat();
    return given == null ? sample.at(Unknown.SEAT, draw) >= WITHOUT_SEAT : given.carries();
  }

  /** Between the thickness of the stock and the length of jaw, every ratio alike. */
  private double spanM(DrawnHold held, double share) {
    double least = setup.stock().thicknessM();
    return least * Math.pow(Math.max(1, held.lengthM() / least), share);
  }

  private HoldDraw holdDraw(DrawnHold held, int draw, DrawnPass pass) {
    Peaks peaks = EndLoad.peaks(pass.peaks());
    int given = pass.corners().length;
    double[] corners = Arrays.copyOf(pass.corners(), given + 6);
    corners[given + 1] = peaks.towardFixedN();
    corners[given + 4] = -peaks.awayN();
    return new HoldDraw(
        clampingForceN[draw],
        sample.at(Unknown.FRICTION, draw),
        sample.at(Unknown.BEARING, draw),
        sample.at(Unknown.HIGH_SPOT, draw),
        sample.at(Unknown.SPOT_PLACE, draw),
        spanM(held, sample.at(Unknown.SPOT_SPAN, draw)),
        sample.at(Unknown.SPOT_SIDE, draw) < 0.5,
        sample.at(Unknown.FIXED_JAW, draw),
        sample.at(Unknown.MOVABLE_JAW, draw),
        sample.at(Unknown.JAW_LIFT, draw),
        sample.at(Unknown.JOINT, draw),
        sample.at(Unknown.PACKING, draw),
        sample.at(Unknown.PACKING_YIELD, draw),
        sample.at(Unknown.MODULUS, draw),
        sample.at(Unknown.YIELD, draw),
        isSeated(draw),
        stop(draw),
        peaks,
        corners,
        sample.at(Unknown.BACKING, draw));
  }
}

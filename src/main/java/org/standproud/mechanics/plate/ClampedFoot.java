package org.standproud.mechanics.plate;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A {@link GrippedFoot} under its clamping force, of which both stiffnesses are asked. Immutable.
 *
 * <p>Which nodes bear, and which stick, is found by solving with the last guess until it repeats; a
 * layer that only presses makes the energy convex, so that the answer is one. Of a foot deeper than
 * {@value #DEEP} characteristic lengths {@code (4 D/(k_f + k_m))^(1/4)} only so much is computed;
 * what lies below moves no more. Nodes are joined to their neighbours only, so that one solution is
 * a sweep of two by two blocks up the foot and one back.
 */
public final class ClampedFoot {

  private static final int NODES = GrippedFoot.ELEMENTS + 1;

  /** Steps after which the couple of sticking faces is left out, and after which to give up. */
  private static final int FRICTION_STEPS = 40;

  private static final int STEPS = 120;

  /** A turn at which no plate is held any more, rad. */
  private static final double FALLEN_RAD = 0.1;

  /** Gregory's end weights: exact for cubics, so that a rigid foot turns exactly. */
  private static final double[] END_WEIGHTS = {3.0 / 8, 7.0 / 6, 23.0 / 24};

  /** Depth that counts of a foot that bends, in characteristic lengths of the layers. */
  private static final double DEEP = 16;

  private final GrippedFoot foot;
  private final double depthM;
  private final double clampingNPerM;
  private final double[] area;
  private final int lineNode;
  private final double lineUp;
  private final State rest;

  private ClampedFoot(GrippedFoot foot) {
    this.foot = foot;
    this.depthM = onLine() ? foot.gripM() : Math.min(foot.gripM(), DEEP * foot.bendingLengthM());
    this.clampingNPerM = foot.clampingNPerM() * depthM / foot.gripM();
    double step = depthM / GrippedFoot.ELEMENTS;
    this.area = new double[NODES];
    for (int i = 0; i < NODES; i++) {
      area[i] = step * weight(i);
    }
    double up = onLine() ? (foot.gripM() - foot.lineDepthM()) / step : 0;
    this.lineNode = Math.min(NODES - 2, (int) up);
    this.lineUp = up - lineNode;
    this.rest = new State();
  }

  /** Share of an element that bears at a node. */
  static double weight(int node) {
    int fromEnd = Math.min(node, NODES - 1 - node);
    return fromEnd < END_WEIGHTS.length ? END_WEIGHTS[fromEnd] : 1;
  }

  static Optional<ClampedFoot> of(GrippedFoot foot) {
    ClampedFoot clamped = new ClampedFoot(foot);
    return clamped.settle(clamped.rest, null, 0, 0, true) ? Optional.of(clamped) : Optional.empty();
  }

  private boolean onLine() {
    return !Double.isNaN(foot.lineDepthM());
  }

  /** Which nodes bear and stick, and where they stand. */
  private static final class State {
    final boolean[] fixedBears = new boolean[NODES];
    final boolean[] movableBears = new boolean[NODES];
    final int[] slips = new int[NODES];
    final double[] slipCoupleN = new double[NODES];
    final double[] shiftM = new double[NODES];
    final double[] turnRad = new double[NODES];
    double jawM;

    State() {
      Arrays.fill(fixedBears, true);
      Arrays.fill(movableBears, true);
    }

    void start(State from) {
      System.arraycopy(from.fixedBears, 0, fixedBears, 0, NODES);
      System.arraycopy(from.movableBears, 0, movableBears, 0, NODES);
      System.arraycopy(from.shiftM, 0, shiftM, 0, NODES);
      System.arraycopy(from.turnRad, 0, turnRad, 0, NODES);
      jawM = from.jawM;
    }

    double topShiftM() {
      return shiftM[NODES - 1];
    }

    double topTurnRad() {
      return turnRad[NODES - 1];
    }
  }

  /**
   * Force across the stock per metre of jaw that tips a rigid foot, N/m: {@code n w/H} toward the
   * fixed jaw and {@code n (g - w)/(H + g)} away from it for a line at depth w, {@code n g/H} and
   * {@code n g/(H + g)} for whole faces.
   *
   * @param sense +1 toward the fixed jaw, -1 away from it
   * @param heightM H, height of the force above the jaw top, m, greater than zero
   */
  double tippingNPerM(double sense, double heightM) {
    double g = foot.gripM();
    double toward = onLine() ? foot.lineDepthM() : g;
    double away = onLine() ? g - foot.lineDepthM() : g;
    return foot.clampingNPerM() * (sense > 0 ? toward / heightM : away / (heightM + g));
  }

  /** Height in m of the fixed face that bears at rest. */
  public double fixedContactM() {
    double height = 0;
    for (int i = 0; i < NODES; i++) {
      height += rest.fixedBears[i] ? area[i] : 0;
    }
    return height;
  }

  /**
   * Stiffness for small motions about rest, the jaws left where they are, faces that bear sticking;
   * empty if the foot bears on too little to resist turning.
   */
  public Optional<RootStiffness> smallSignal() {
    Blocks blocks = new Blocks();
    addBeam(blocks);
    for (int i = 0; i < NODES; i++) {
      blocks.shift[i] += area[i] * (bearsFixed(i) + bearsMovable(i));
      blocks.turn[i] += couple(rest, i);
    }
    if (onLine()) {
      addLine(blocks, foot.lineStiffnessPa());
    }
    return blocks.eliminate() ? blocks.top() : Optional.empty();
  }

  private double bearsFixed(int i) {
    return rest.fixedBears[i] ? foot.fixedPaPerM() : 0;
  }

  private double bearsMovable(int i) {
    return !onLine() && rest.movableBears[i] ? foot.movablePaPerM() : 0;
  }

  /**
   * Stiffness for slow loads that lift nothing: the clamping force stays, faces that bear stick;
   * empty if the foot bears on too little to resist turning.
   */
  public Optional<RootStiffness> held() {
    State byForce = new State();
    State byMoment = new State();
    byForce.start(rest);
    byMoment.start(rest);
    if (!solve(byForce, rest, 1, 0, true) || !solve(byMoment, rest, 0, 1, true)) {
      return Optional.empty();
    }
    double shift = byForce.topShiftM() - rest.topShiftM();
    double turn = byMoment.topTurnRad() - rest.topTurnRad();
    double cross = byMoment.topShiftM() - rest.topShiftM();
    boolean holds = shift > 0 && turn > 0 && shift * turn > cross * cross * (1 + 1e-12);
    return holds ? Optional.of(RootStiffness.ofCompliance(shift, cross, turn)) : Optional.empty();
  }

  /**
   * How many times as far as {@link #held} the foot gives under a load, because faces lift and
   * slip: work of the load over its work without either, at least 1; NaN if the load tips the foot.
   *
   * @param forceNPerM force across the stock per metre of jaw, toward the fixed jaw positive
   * @param momentN moment about the jaw top per metre of jaw, same sense
   */
  public double softening(double forceNPerM, double momentN) {
    State free = new State();
    free.start(rest);
    if (!solve(free, rest, forceNPerM, momentN, true)) {
      return Double.NaN;
    }
    State loaded = new State();
    loaded.start(rest);
    if (!settle(loaded, rest, forceNPerM, momentN, true)) {
      return Double.NaN;
    }
    double work = work(loaded, forceNPerM, momentN);
    double least = work(free, forceNPerM, momentN);
    return least == 0 ? 1 : Math.max(1, work / least);
  }

  private double work(State state, double force, double moment) {
    return force * (state.topShiftM() - rest.topShiftM())
        + moment * (state.topTurnRad() - rest.topTurnRad());
  }

  /** Solves until what bears and sticks repeats; false if the load tips the foot. */
  private boolean settle(State state, @Nullable State stuckAt, double q, double m, boolean held) {
    for (int step = 0; step < STEPS; step++) {
      State from = step < FRICTION_STEPS ? stuckAt : null;
      double before = state.topTurnRad();
      if (!solve(state, from, q, m, held) || !(Math.abs(state.topTurnRad()) < FALLEN_RAD)) {
        return false;
      }
      boolean changed = update(state, from);
      double moved = Math.abs(state.topTurnRad() - before);
      if (!changed && moved <= 1e-7 * Math.abs(state.topTurnRad()) + 1e-15) {
        return true;
      }
    }
    return false;
  }

  /** Takes up what bears and sticks; true if anything bears or sticks otherwise than before. */
  private boolean update(State state, @Nullable State stuckAt) {
    boolean changed = false;
    for (int i = 0; i < NODES; i++) {
      boolean fixed = state.shiftM[i] > 0;
      boolean movable = !onLine() && movableGapM(state, i) > 0;
      changed |= fixed != state.fixedBears[i] || (movable != state.movableBears[i] && !onLine());
      state.fixedBears[i] = fixed;
      state.movableBears[i] = movable;
      int slips = 0;
      if (stuckAt != null) {
        double most = mostCouple(state, i);
        double couple = elasticCouple(i) * (state.turnRad[i] - stuckAt.turnRad[i]);
        slips = Math.abs(couple) > most ? (int) Math.signum(couple) : 0;
        state.slipCoupleN[i] = slips * most;
      }
      changed |= slips != state.slips[i];
      state.slips[i] = slips;
    }
    return changed;
  }

  private double movableGapM(State state, int i) {
    return state.jawM - leanM(i) - state.shiftM[i];
  }

  private double leanM(int i) {
    return foot.movableLeanRad() * depthM * i / GrippedFoot.ELEMENTS;
  }

  private double elasticCouple(int i) {
    if (onLine() || foot.tangentialRatio() == 0) {
      return 0;
    }
    double harmonic =
        2 * foot.fixedPaPerM() * foot.movablePaPerM() / (foot.fixedPaPerM() + foot.movablePaPerM());
    double arm = foot.thicknessM() / 2;
    return 2 * area[i] * foot.tangentialRatio() * harmonic * arm * arm;
  }

  private double couple(State state, int i) {
    return state.fixedBears[i] && state.movableBears[i] ? elasticCouple(i) : 0;
  }

  private double mostCouple(State state, int i) {
    double fixed = foot.fixedPaPerM() * Math.max(0, state.shiftM[i]);
    double movable = foot.movablePaPerM() * Math.max(0, movableGapM(state, i));
    return foot.friction() * Math.min(fixed, movable) * area[i] * foot.thicknessM();
  }

  /** Solves once with what bears and sticks as it is; false if nothing holds the foot. */
  private boolean solve(State state, @Nullable State stuckAt, double q, double m, boolean held) {
    Blocks blocks = new Blocks();
    addBeam(blocks);
    double jaw = 0;
    double reach = clampingNPerM;
    for (int i = 0; i < NODES; i++) {
      if (state.fixedBears[i]) {
        blocks.shift[i] += foot.fixedPaPerM() * area[i];
      }
      if (!onLine() && state.movableBears[i]) {
        double k = foot.movablePaPerM() * area[i];
        blocks.shift[i] += k;
        blocks.force[0][2 * i] -= k * leanM(i);
        blocks.force[1][2 * i] = k;
        jaw += k;
        reach += k * leanM(i);
      }
      if (stuckAt != null && state.slips[i] != 0) {
        blocks.force[0][2 * i + 1] -= state.slipCoupleN[i];
      } else if (stuckAt != null) {
        double k = couple(state, i);
        blocks.turn[i] += k;
        blocks.force[0][2 * i + 1] += k * stuckAt.turnRad[i];
      }
    }
    if (onLine()) {
      blocks.force[0][2 * lineNode] += clampingNPerM * (1 - lineUp);
      blocks.force[0][2 * lineNode + 2] += clampingNPerM * lineUp;
    }
    blocks.force[0][2 * NODES - 2] += q;
    blocks.force[0][2 * NODES - 1] += m;
    if (!blocks.eliminate()) {
      return false;
    }
    double[] still = blocks.solution(0);
    double advance = 0;
    double[] perAdvance = still;
    if (!onLine()) {
      perAdvance = blocks.solution(1);
      advance = state.jawM;
      if (held) {
        double follows = jaw;
        double pressed = reach;
        for (int i = 0; i < NODES; i++) {
          if (state.movableBears[i]) {
            double k = foot.movablePaPerM() * area[i];
            follows -= k * perAdvance[2 * i];
            pressed += k * still[2 * i];
          }
        }
        if (!(follows > 1e-9 * jaw)) {
          return false;
        }
        advance = pressed / follows;
      }
    }
    for (int i = 0; i < NODES; i++) {
      state.shiftM[i] = still[2 * i] + (onLine() ? 0 : advance * perAdvance[2 * i]);
      state.turnRad[i] = still[2 * i + 1] + (onLine() ? 0 : advance * perAdvance[2 * i + 1]);
    }
    state.jawM = advance;
    return true;
  }

  private void addLine(Blocks blocks, double stiffness) {
    blocks.shift[lineNode] += stiffness * (1 - lineUp) * (1 - lineUp);
    blocks.shift[lineNode + 1] += stiffness * lineUp * lineUp;
    blocks.next[4 * lineNode] += stiffness * lineUp * (1 - lineUp);
  }

  private void addBeam(Blocks blocks) {
    double l = depthM / GrippedFoot.ELEMENTS;
    double shear = 12 * foot.bendingNM() / (foot.shearNPerM() * l * l);
    double unit = foot.bendingNM() / (l * l * l * (1 + shear));
    for (int i = 0; i < NODES; i++) {
      int elements = i == 0 || i == NODES - 1 ? 1 : 2;
      blocks.shift[i] = 12 * unit * elements;
      blocks.turn[i] = (4 + shear) * l * l * unit * elements;
      blocks.cross[i] = i == 0 ? 6 * l * unit : i == NODES - 1 ? -6 * l * unit : 0;
    }
    for (int i = 0; i + 1 < NODES; i++) {
      blocks.next[4 * i] = -12 * unit;
      blocks.next[4 * i + 1] = 6 * l * unit;
      blocks.next[4 * i + 2] = -6 * l * unit;
      blocks.next[4 * i + 3] = (2 - shear) * l * l * unit;
    }
  }

  /** Symmetric blocks of two by two along a chain of nodes, with two right-hand sides. */
  private static final class Blocks {
    final double[] shift = new double[NODES];
    final double[] cross = new double[NODES];
    final double[] turn = new double[NODES];
    final double[] next = new double[4 * (NODES - 1)];
    final double[][] force = new double[2][2 * NODES];

    /** Eliminates from the bottom up; false if a block resists nothing. */
    boolean eliminate() {
      for (int i = 0; i + 1 < NODES; i++) {
        double det = shift[i] * turn[i] - cross[i] * cross[i];
        if (!(det > 1e-15 * shift[i] * turn[i])) {
          return false;
        }
        double a = next[4 * i];
        double b = next[4 * i + 1];
        double c = next[4 * i + 2];
        double d = next[4 * i + 3];
        // Rows of the inverse of the block times what joins it to the next.
        double p = (turn[i] * a - cross[i] * c) / det;
        double q = (turn[i] * b - cross[i] * d) / det;
        double r = (shift[i] * c - cross[i] * a) / det;
        double s = (shift[i] * d - cross[i] * b) / det;
        shift[i + 1] -= a * p + c * r;
        cross[i + 1] -= a * q + c * s;
        turn[i + 1] -= b * q + d * s;
        for (double[] f : force) {
          f[2 * i + 2] -= p * f[2 * i] + r * f[2 * i + 1];
          f[2 * i + 3] -= q * f[2 * i] + s * f[2 * i + 1];
        }
      }
      int top = NODES - 1;
      return shift[top] * turn[top] - cross[top] * cross[top] > 1e-15 * shift[top] * turn[top];
    }

    /** What is left at the top: the stiffness seen there. */
    Optional<RootStiffness> top() {
      int top = NODES - 1;
      double most = Math.sqrt(shift[top]) * Math.sqrt(turn[top]) * (1 - 1e-12);
      return Math.abs(cross[top]) < most
          ? Optional.of(new RootStiffness(shift[top], cross[top], turn[top]))
          : Optional.empty();
    }

    /** Solves back down. */
    double[] solution(int side) {
      double[] f = force[side];
      double[] x = new double[2 * NODES];
      for (int i = NODES - 1; i >= 0; i--) {
        double v = f[2 * i];
        double w = f[2 * i + 1];
        if (i + 1 < NODES) {
          v -= next[4 * i] * x[2 * i + 2] + next[4 * i + 1] * x[2 * i + 3];
          w -= next[4 * i + 2] * x[2 * i + 2] + next[4 * i + 3] * x[2 * i + 3];
        }
        double det = shift[i] * turn[i] - cross[i] * cross[i];
        x[2 * i] = (turn[i] * v - cross[i] * w) / det;
        x[2 * i + 1] = (shift[i] * w - cross[i] * v) / det;
      }
      return x;
    }
  }
}

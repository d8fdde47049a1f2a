package org.standproud.mechanics.vibration;

/**
 * A milling cut step by step in time, for comparison: cutter with modes along and across the feed,
 * stock with modes across it, straight teeth, linear force, a tooth that leaves the cut where its
 * chip is gone, and surfaces left by earlier teeth (Tlusty and Ismail, CIRP Annals 30/1 (1981) 299;
 * Schmitz and Smith, Machining Dynamics; from memory). Modes are moved on by their exact solution
 * under a force held over the step. Feed frame and signs of {@link DirectionalFactors}; forces on
 * the cutter.
 */
final class MillingSimulation {

  private static final int PASSES_KEPT = 4;

  private final Oscillators along;
  private final Oscillators across;
  private final Oscillators stock;
  private final double tangentialPa;
  private final double radialRatio;
  private final int teeth;
  private final double entryRad;
  private final double exitRad;
  private final int stepsATooth;
  private final double stepS;
  private final double[][] earlier;
  private int step;
  double relativeAlongM;
  double relativeAcrossM;
  double forceAcrossN;
  boolean lostContact;

  /** No feed and no loss of contact: what is left is the linear growth of a small motion. */
  private boolean linear;

  MillingSimulation(
      ModeSet along,
      ModeSet across,
      ModeSet stock,
      double tangentialPa,
      double radialRatio,
      int teeth,
      double entryRad,
      double exitRad,
      double revPerS,
      int stepsATooth) {
    this.stepS = 1 / (revPerS * teeth * stepsATooth);
    this.along = new Oscillators(along, stepS);
    this.across = new Oscillators(across, stepS);
    this.stock = new Oscillators(stock, stepS);
    this.tangentialPa = tangentialPa;
    this.radialRatio = radialRatio;
    this.teeth = teeth;
    this.entryRad = entryRad;
    this.exitRad = exitRad;
    this.stepsATooth = stepsATooth;
    this.earlier = new double[PASSES_KEPT][2 * stepsATooth];
  }

  /** One step under a depth of cut and a feed. */
  void advance(double depthM, double feedM) {
    double fx = 0;
    double fy = 0;
    lostContact = false;
    for (int tooth = 0; tooth < teeth; tooth++) {
      double phi = 2 * Math.PI * ((step + 0.5) / (teeth * stepsATooth) - (double) tooth / teeth);
      phi -= 2 * Math.PI * Math.floor(phi / (2 * Math.PI));
      if (phi < entryRad || phi > exitRad) {
        continue;
      }
      double sin = Math.sin(phi);
      double cos = Math.cos(phi);
      double here = relativeAlongM * sin + relativeAcrossM * cos;
      double surface = Double.NEGATIVE_INFINITY;
      for (int pass = 1; pass <= PASSES_KEPT; pass++) {
        double[] then = earlier[Math.floorMod(step / stepsATooth - pass, PASSES_KEPT)];
        int at = 2 * (step % stepsATooth);
        surface = Math.max(surface, then[at] * sin + then[at + 1] * cos - pass * feedM * sin);
      }
      double chip = here - surface;
      if (linear) {
        double[] then = earlier[Math.floorMod(step / stepsATooth - 1, PASSES_KEPT)];
        int at = 2 * (step % stepsATooth);
        chip = here - then[at] * sin - then[at + 1] * cos;
      } else if (chip <= 0) {
        lostContact = true;
        continue;
      }
      double tangential = tangentialPa * depthM * chip;
      double radial = radialRatio * tangential;
      fx += -tangential * cos - radial * sin;
      fy += tangential * sin - radial * cos;
    }
    double[] now = earlier[Math.floorMod(step / stepsATooth, PASSES_KEPT)];
    now[2 * (step % stepsATooth)] = relativeAlongM;
    now[2 * (step % stepsATooth) + 1] = relativeAcrossM;
    forceAcrossN = fy;
    relativeAlongM = along.advance(fx);
    relativeAcrossM = across.advance(fy) - stock.advance(-fy);
    step++;
  }

  double stockM() {
    return stock.sum();
  }

  /**
   * Growth of what a small push leaves: size of the part that does not repeat with the teeth, late
   * over early; above one it chatters. Without feed and loss of contact.
   */
  static double growth(MillingSimulation cut, double depthM, int teethPassed) {
    double push = 1e-9;
    cut.linear = true;
    double early = 0;
    double late = 0;
    int half = teethPassed / 2;
    cut.relativeAlongM = push;
    cut.relativeAcrossM = push;
    cut.along.push(push);
    cut.across.push(push);
    cut.stock.push(push);
    for (int tooth = 0; tooth < teethPassed; tooth++) {
      double size = 0;
      for (int i = 0; i < cut.stepsATooth; i++) {
        cut.advance(depthM, 0);
        double[] before =
            cut.earlier[Math.floorMod((cut.step - 1) / cut.stepsATooth - 1, PASSES_KEPT)];
        int at = 2 * ((cut.step - 1) % cut.stepsATooth);
        double[] now = cut.earlier[Math.floorMod((cut.step - 1) / cut.stepsATooth, PASSES_KEPT)];
        size += Math.hypot(now[at] - before[at], now[at + 1] - before[at + 1]);
      }
      if (tooth >= teethPassed / 4 && tooth < half) {
        early = Math.max(early, size);
      }
      if (tooth >= teethPassed - teethPassed / 4) {
        late = Math.max(late, size);
      }
    }
    return late / early;
  }

  /** Modes moved on exactly under a force held over a step. */
  private static final class Oscillators {
    private final double[] x;
    private final double[] v;
    private final double[][] by;
    private final double[] compliance;

    Oscillators(ModeSet modes, double step) {
      int n = modes.size();
      x = new double[n];
      v = new double[n];
      by = new double[n][4];
      compliance = new double[n];
      for (int i = 0; i < n; i++) {
        double omega = 2 * Math.PI * modes.frequencyHz(i);
        double zeta = modes.dampingRatio(i);
        double damped = omega * Math.sqrt(1 - zeta * zeta);
        double decay = Math.exp(-zeta * omega * step);
        double c = Math.cos(damped * step);
        double s = Math.sin(damped * step);
        by[i][0] = decay * (c + zeta * omega / damped * s);
        by[i][1] = decay * s / damped;
        by[i][2] = -decay * omega * omega / damped * s;
        by[i][3] = decay * (c - zeta * omega / damped * s);
        compliance[i] = 1 / modes.stiffnessNPerM(i);
      }
    }

    void push(double far) {
      for (int i = 0; i < x.length; i++) {
        x[i] += far;
      }
    }

    double advance(double force) {
      double sum = 0;
      for (int i = 0; i < x.length; i++) {
        double still = force * compliance[i];
        double dx = x[i] - still;
        double next = by[i][0] * dx + by[i][1] * v[i];
        v[i] = by[i][2] * dx + by[i][3] * v[i];
        x[i] = next + still;
        sum += x[i];
      }
      return sum;
    }

    double sum() {
      double sum = 0;
      for (double one : x) {
        sum += one;
      }
      return sum;
    }
  }
}

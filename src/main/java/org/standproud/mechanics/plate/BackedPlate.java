package org.standproud.mechanics.plate;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * A standing plate with a jack, a block or an angle plate behind it above the jaws: springs at
 * points that push and never pull.
 *
 * <p>Statics: {@link OneSidedSupports} on the give of {@link PlateOnFoot} between load and
 * supports; a push toward a support gives less, one away from it gives what it gave without.
 *
 * <p>Vibration: the six modes of the plate with the supports that push under a load added as
 * springs, each softened by the give that the modes do not show at its place; an eigenvalue problem
 * of six unknowns. A plate that leaves a support on the way back swings half of the time with and
 * half without it, {@code 2 f1 f2/(f1 + f2)} (bilinear oscillator, Shaw and Holmes, J. Sound and
 * Vibration 90 (1983) 129-155, from memory), f1 and f2 its frequencies under a push either way.
 *
 * <p>Valid for small motions and a support that touches without a gap; a gap of a hundredth of a
 * millimetre already leaves a light cut unsupported.
 */
public final class BackedPlate {

  /** Ends and middle of the top edge, one of which gives most. */
  private static final int LOADS = 3;

  private final PlateOnFoot plate;
  private final PlateOnFoot.Place[] loads = new PlateOnFoot.Place[LOADS];
  private final PlateOnFoot.Place[] points;
  private final double[] sides;

  /**
   * A place where something touches the plate.
   *
   * @param point where
   * @param towardPositiveY whether it resists a motion toward positive Y
   */
  public record Support(PlatePoint point, boolean towardPositiveY) {}

  /**
   * A plate and its supports.
   *
   * @param stock the standing stock; its root and load do not matter
   * @param supports where it is backed, at least one
   */
  public BackedPlate(PlateInput stock, List<Support> supports) {
    this(PlateOnFoot.of(stock), stock.lengthM(), stock.stickOutM(), supports);
  }

  BackedPlate(PlateOnFoot plate, double lengthM, double stickOutM, List<Support> supports) {
    this.plate = plate;
    for (int i = 0; i < LOADS; i++) {
      loads[i] = plate.place(new PlatePoint((1 - i) * lengthM / 2, stickOutM));
    }
    this.points =
        supports.stream().map(s -> plate.place(s.point())).toArray(PlateOnFoot.Place[]::new);
    this.sides = supports.stream().mapToDouble(s -> s.towardPositiveY() ? 1 : -1).toArray();
  }

  /**
   * What the plate does on one root.
   *
   * @param towardMPerN give of the top edge where it gives most, pushed toward positive Y, m/N
   * @param awayMPerN the same pushed toward negative Y, m/N
   * @param hz natural frequencies, rising, Hz
   * @param stiffnessesNPerM their stiffnesses at the place of the load, N/m
   */
  public record Answer(
      double towardMPerN, double awayMPerN, double[] hz, double[] stiffnessesNPerM) {}

  /**
   * The plate on one root.
   *
   * @param youngPa Young's modulus, Pa
   * @param densityKgPerM3 density, kg/m3
   * @param root what holds the foot
   * @param springsNPerM stiffness of each support, N/m
   * @param preloadsN push with which each was set against the plate, N
   * @param towardN greatest push toward positive Y, N
   * @param awayN greatest push toward negative Y, N
   */
  public Answer on(
      double youngPa,
      double densityKgPerM3,
      RootStiffness root,
      double[] springsNPerM,
      double[] preloadsN,
      double towardN,
      double awayN) {
    OneSidedSupports supports = new OneSidedSupports(sides, springsNPerM, preloadsN);
    PlateOnFoot.Give give = plate.give(youngPa, root);
    double[][] between = new double[points.length][points.length];
    for (int i = 0; i < points.length; i++) {
      for (int j = 0; j < points.length; j++) {
        between[i][j] = give.between(points[i], points[j]);
      }
    }
    Pushed toward = pushed(supports, give, between, Math.max(1, towardN));
    Pushed away = pushed(supports, give, between, -Math.max(1, awayN));
    Pushed softer = toward.giveMPerN >= away.giveMPerN ? toward : away;
    PlateOnFoot.Shapes shapes =
        plate.shapes(withPoints(softer.load), youngPa, densityKgPerM3, root);
    double[][] on = attached(shapes, supports, between, toward.active);
    double[][] off = attached(shapes, supports, between, away.active);
    double[] hz = new double[on[0].length];
    double[] stiffness = new double[hz.length];
    for (int m = 0; m < hz.length; m++) {
      hz[m] = 2 * on[0][m] * off[0][m] / (on[0][m] + off[0][m]);
      boolean firstIsSofter = on[1][m] <= off[1][m];
      double ratio = hz[m] / (firstIsSofter ? on[0][m] : off[0][m]);
      stiffness[m] = Math.min(on[1][m], off[1][m]) * ratio * ratio;
    }
    return new Answer(toward.giveMPerN, away.giveMPerN, hz, stiffness);
  }

  /** How the softest place of the edge gives one way, and what pushes back there. */
  private record Pushed(double giveMPerN, boolean[] active, PlateOnFoot.Place load) {}

  private Pushed pushed(
      OneSidedSupports supports, PlateOnFoot.Give give, double[][] between, double forceN) {
    Pushed worst = null;
    for (PlateOnFoot.Place load : loads) {
      double[] toLoad = Arrays.stream(points).mapToDouble(p -> give.between(p, load)).toArray();
      boolean[] active = supports.pushing(between, toLoad, forceN);
      double gives = supports.giveMPerN(give.between(load, load), between, toLoad, active);
      if (worst == null || gives > worst.giveMPerN) {
        worst = new Pushed(gives, active, load);
      }
    }
    if (worst == null) {
      throw new IllegalStateException("a plate without a place to push at");
    }
    return worst;
  }

  private PlateOnFoot.Place[] withPoints(PlateOnFoot.Place load) {
    PlateOnFoot.Place[] all = Arrays.copyOf(points, points.length + 1);
    all[points.length] = load;
    return all;
  }

  /** Frequencies and stiffnesses at the load, rising, with some supports as springs. */
  private double[][] attached(
      PlateOnFoot.Shapes shapes, OneSidedSupports supports, double[][] between, boolean[] active) {
    int n = shapes.omega().length;
    DMatrixRMaj matrix = new DMatrixRMaj(n, n);
    for (int m = 0; m < n; m++) {
      matrix.set(m, m, shapes.omega()[m] * shapes.omega()[m]);
    }
    for (int s = 0; s < active.length; s++) {
      if (active[s]) {
        double[] shape = shapes.at()[s];
        double shown = 0;
        for (int m = 0; m < n; m++) {
          shown += shape[m] * shape[m] / (shapes.omega()[m] * shapes.omega()[m]);
        }
        double hidden = Math.max(0, between[s][s] - shown);
        double spring = 1 / (1 / supports.spring(s) + hidden);
        for (int i = 0; i < n; i++) {
          for (int j = 0; j < n; j++) {
            matrix.add(i, j, spring * shape[i] * shape[j]);
          }
        }
      }
    }
    return solved(matrix, shapes.at()[active.length]);
  }

  private static double[][] solved(DMatrixRMaj matrix, double[] atLoad) {
    int n = atLoad.length;
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
    if (!eigen.decompose(matrix)) {
      throw new IllegalStateException("the modes of the backed plate did not converge");
    }
    double[][] pairs = new double[n][];
    for (int m = 0; m < n; m++) {
      double square = eigen.getEigenvalue(m).getReal();
      double shape = 0;
      for (int i = 0; i < n; i++) {
        shape += eigen.getEigenVector(m).get(i, 0) * atLoad[i];
      }
      pairs[m] =
          new double[] {
            Math.sqrt(square) / (2 * Math.PI),
            Math.min(PlateMode.NODE_STIFFNESS_N_PER_M, square / (shape * shape))
          };
    }
    Arrays.sort(pairs, (a, b) -> Double.compare(a[0], b[0]));
    double[][] columns = new double[2][n];
    for (int m = 0; m < n; m++) {
      columns[0][m] = pairs[m][0];
      columns[1][m] = pairs[m][1];
    }
    return columns;
  }
}

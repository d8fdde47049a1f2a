package org.standproud.mechanics.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A thin plate standing on a rigid or elastic root, its other three edges free: how far it gives
 * under a point load across it, and how it rings.
 *
 * <p>Kirchhoff's plate by Rayleigh and Ritz: {@code U = D/2 int (w_zz^2 + w_xx^2 + 2 nu w_xx w_zz +
 * 2 (1-nu) w_xz^2) dx dz + 1/2 int (k_w w^2 + k_theta w_z^2) dx}, with {@code D = E
 * h^3/(12(1-nu^2))} (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., from
 * memory). Shapes are products of Legendre polynomials. Ritz answers are bounds: frequencies come
 * out high and deflections low, by less the higher the order.
 *
 * <p>Valid for thickness below about 0.2 of the stick-out; no shear, no large deflection. Checked
 * against Leissa, J. Sound Vib. 31 (1973) 257-293 and Barton, J. Appl. Mech. 18 (1951) 129-134.
 * Confined to one thread.
 */
public final class CantileverPlate {

  /** Springs stiffer than this, in units of D/a^3 and D/a, change no printed digit. */
  static final double STIFFEST_ROOT = 1e6;

  /** Springs softer than this, in the same units, hold nothing and are counted as this. */
  static final double SOFTEST_ROOT = 1e-8;

  private final PlateGeometry plate;
  private final PlateRoot root;
  private final RitzHalf even;
  private final RitzHalf odd;

  /**
   * Sets the problem up.
   *
   * @param plate its sizes and material
   * @param root what holds it
   * @param order how many terms
   */
  public CantileverPlate(PlateGeometry plate, PlateRoot root, RitzOrder order) {
    this.plate = plate;
    this.root = root;
    this.even = new RitzHalf(plate, root, order, 0);
    this.odd = new RitzHalf(plate, root, order, 1);
  }

  /** Root translation in units of D/a^3. */
  static double shiftNumber(PlateGeometry plate, PlateRoot.Elastic springs) {
    double unit = plate.bendingStiffnessNM() / Math.pow(plate.stickOutM(), 3);
    return Math.max(SOFTEST_ROOT, Math.min(STIFFEST_ROOT, springs.translationNPerM2() / unit));
  }

  /** Root rotation in units of D/a. */
  static double turnNumber(PlateGeometry plate, PlateRoot.Elastic springs) {
    double unit = plate.bendingStiffnessNM() / plate.stickOutM();
    return Math.max(SOFTEST_ROOT, Math.min(STIFFEST_ROOT, springs.rotationNPerRad() / unit));
  }

  /**
   * The lowest modes of both symmetries in order of frequency.
   *
   * @param count how many, at least 1
   */
  public List<PlateMode> modes(int count) {
    List<PlateMode> all = new ArrayList<>(2 * count);
    addModes(all, even, true, count);
    addModes(all, odd, false, count);
    all.sort(Comparator.comparingDouble(PlateMode::frequencyHz));
    return List.copyOf(all.subList(0, Math.min(count, all.size())));
  }

  private void addModes(List<PlateMode> to, RitzHalf half, boolean isEven, int count) {
    double unitHz =
        Math.sqrt(plate.bendingStiffnessNM() / (plate.densityKgPerM3() * plate.thicknessM()))
            / (2 * Math.PI * plate.stickOutM() * plate.stickOutM());
    for (RitzHalf.Eigenpair pair : half.lowestModes(count)) {
      double hz = Math.sqrt(pair.stiffness()) * unitHz;
      to.add(new PlateMode(hz, isEven, half, pair.shape(), plate.massKg()));
    }
  }

  /** The lowest modes of one symmetry, in order. */
  List<PlateMode> modes(boolean isEven, int count) {
    List<PlateMode> modes = new ArrayList<>(count);
    addModes(modes, isEven ? even : odd, isEven, count);
    return modes;
  }

  /**
   * Deflection across the stock at one point for a load across the stock at another, m/N; the same
   * with the two points exchanged.
   *
   * @param load where the load acts
   * @param at where the deflection is wanted
   */
  public double flexibilityMPerN(PlatePoint load, PlatePoint at) {
    return unitM()
        * (dot(even.respond(even.vector(load)), even.vector(at))
            + dot(odd.respond(odd.vector(load)), odd.vector(at)));
  }

  /**
   * Deflections per newton along the free top edge, m/N, at equal steps from one end to the other.
   *
   * @param load where the load acts
   * @param points how many points, at least 2
   */
  public double[] topEdgeMPerN(PlatePoint load, int points) {
    double[] evenShape = even.respond(even.vector(load));
    double[] oddShape = odd.respond(odd.vector(load));
    double[] curve = new double[points];
    for (int i = 0; i < points; i++) {
      double x = plate.lengthM() * ((double) i / (points - 1) - 0.5);
      PlatePoint at = new PlatePoint(x, plate.stickOutM());
      curve[i] = unitM() * (dot(evenShape, even.vector(at)) + dot(oddShape, odd.vector(at)));
    }
    return curve;
  }

  /**
   * Bending moment about the jaw line at the root, per metre of root and per newton of load, N.m/m
   * per N; positive where the load bends the plate away from itself.
   *
   * @param load where the load acts
   * @param xM where along the root, m
   */
  public double rootMomentPerMetre(PlatePoint load, double xM) {
    double[] evenShape = even.respond(even.vector(load));
    double[] oddShape = odd.respond(odd.vector(load));
    if (root instanceof PlateRoot.Elastic springs) {
      double slope =
          (dot(evenShape, even.rootSlope(xM)) + dot(oddShape, odd.rootSlope(xM)))
              * unitM()
              / plate.stickOutM();
      double held = Math.abs(xM) <= springs.supportedFraction() * plate.lengthM() / 2 ? 1 : 0;
      return held
          * turnNumber(plate, springs)
          * plate.bendingStiffnessNM()
          / plate.stickOutM()
          * slope;
    }
    double curvature =
        dot(evenShape, even.rootCurvature(xM)) + dot(oddShape, odd.rootCurvature(xM));
    return plate.bendingStiffnessNM()
        * unitM()
        / (plate.stickOutM() * plate.stickOutM())
        * curvature;
  }

  private double unitM() {
    return 2 * Math.pow(plate.stickOutM(), 3) / (plate.bendingStiffnessNM() * plate.lengthM());
  }

  private static double dot(double[] left, double[] right) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += left[i] * right[i];
    }
    return sum;
  }
}

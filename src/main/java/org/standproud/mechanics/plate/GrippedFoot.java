package org.standproud.mechanics.plate;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * The foot of the stock inside the grip: a strip of plate that bends and shears between two elastic
 * layers that can press but not pull.
 *
 * <p>Formula, per metre of jaw, with z from the bottom of the grip up: {@code D w'''' + k_f w + k_m
 * w = 0} while both faces bear (Winkler; Hetenyi, Beams on Elastic Foundation, 1946, from memory),
 * {@code D = E h^3/(12 (1 - nu^2))}, shear of Timoshenko with 5/6. A face bears where its pressure
 * is above zero. Faces that stick add a couple {@code k_t (h/2)^2 w'} a face and height, at most
 * {@code mu p h/2}: they slip beyond; as the stock may rise or sink between them, both count with
 * the harmonic mean of their stiffness. Ratio of tangential to normal stiffness: 1/10 to 1/5 for
 * machined steel and iron faces (Kono and others, Key Engineering Materials 523-524 (2012)
 * 457-462), 0.7 to 0.82 for smooth bodies that stick (Mindlin, J. Appl. Mech. 16 (1949) 259, from
 * memory).
 *
 * <p>Small motions ({@link ClampedFoot#smallSignal}) leave the jaws where they are and change
 * nothing about what bears. Static give ({@link PlateOnFoot#secantMPerN}) keeps the clamping force,
 * so that the foot tips where rigid statics says it does. The layers are discretised at the nodes
 * of Timoshenko elements (exact stiffness, Przemieniecki, Theory of Matrix Structural Analysis,
 * 1968, from memory) with weights that give a rigid foot its turning stiffness {@code k g^3/12}
 * exactly. Own model.
 *
 * @param bendingNM D, bending stiffness of the strip, N.m
 * @param shearNPerM 5/6 G h, shear stiffness of the strip, N per m
 * @param thicknessM h, m
 * @param gripM height in contact, m, 1 mm to 0.5 m
 * @param fixedPaPerM k_f, stiffness of the fixed face, Pa/m
 * @param movablePaPerM k_m, stiffness of the movable face, Pa/m; not used where a line bears
 * @param lineDepthM depth of a packing line of the movable jaw below the jaw top, m; NaN where its
 *     face bears
 * @param lineStiffnessPa stiffness of that line with its jaw, N/m per m; 0 for a force that follows
 * @param tangentialRatio k_t over the normal stiffness, 0 to 1
 * @param friction mu, 0 to 1
 * @param clampingNPerM clamping force per metre of jaw, N/m
 * @param movableLeanRad how far the movable face leans away at its top, rad
 */
public record GrippedFoot(
    double bendingNM,
    double shearNPerM,
    double thicknessM,
    double gripM,
    double fixedPaPerM,
    double movablePaPerM,
    double lineDepthM,
    double lineStiffnessPa,
    double tangentialRatio,
    double friction,
    double clampingNPerM,
    double movableLeanRad) {

  /**
   * Ratio for machined, rolled and rough faces of metal: Kono and others 2012, widened by a third.
   */
  public static final Band TANGENTIAL_RATIO = new Band(0.07, 0.15, 0.3);

  static final int ELEMENTS = 16;

  /**
   * Refuses a foot outside the range of the model.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public GrippedFoot {
    within("bending stiffness of the foot", bendingNM, 1e-6, 1e15, "N.m");
    within("shear stiffness of the foot", shearNPerM, 1, 1e18, "N/m");
    within("stock thickness", thicknessM, 1e-4, 10, "m");
    within("gripped height", gripM, 1e-3, 0.5, "m");
    within("stiffness of the fixed face", fixedPaPerM, 1e6, 1e20, "Pa/m");
    if (Double.isNaN(lineDepthM)) {
      within("stiffness of the movable face", movablePaPerM, 1e6, 1e20, "Pa/m");
    } else {
      within("depth of the packing", lineDepthM, 0, gripM, "m");
      within("stiffness of the packing line", lineStiffnessPa, 0, 1e20, "N/m per m");
    }
    within("ratio of tangential to normal stiffness", tangentialRatio, 0, 1, "");
    within("friction", friction, 0, 1, "");
    within("clamping force per metre", clampingNPerM, 0.1, 1e9, "N/m");
    within("lean of the movable jaw", movableLeanRad, 0, 0.05, "rad");
  }

  /**
   * A foot of stock between two faces.
   *
   * @param youngPa Young's modulus, Pa
   * @param poisson Poisson's ratio
   * @param thicknessM thickness, m
   */
  public static GrippedFoot betweenFaces(
      double youngPa,
      double poisson,
      double thicknessM,
      double gripM,
      double fixedPaPerM,
      double movablePaPerM,
      double tangentialRatio,
      double friction,
      double clampingNPerM,
      double movableLeanRad) {
    return new GrippedFoot(
        bending(youngPa, poisson, thicknessM),
        shear(youngPa, poisson, thicknessM),
        thicknessM,
        gripM,
        fixedPaPerM,
        movablePaPerM,
        Double.NaN,
        0,
        tangentialRatio,
        friction,
        clampingNPerM,
        movableLeanRad);
  }

  /**
   * A foot of stock that a packing line presses on the fixed face.
   *
   * @param youngPa Young's modulus, Pa
   * @param poisson Poisson's ratio
   * @param thicknessM thickness, m
   */
  public static GrippedFoot onPackingLine(
      double youngPa,
      double poisson,
      double thicknessM,
      double gripM,
      double fixedPaPerM,
      double lineDepthM,
      double lineStiffnessPa,
      double clampingNPerM) {
    return new GrippedFoot(
        bending(youngPa, poisson, thicknessM),
        shear(youngPa, poisson, thicknessM),
        thicknessM,
        gripM,
        fixedPaPerM,
        fixedPaPerM,
        lineDepthM,
        lineStiffnessPa,
        0,
        0,
        clampingNPerM,
        0);
  }

  private static double bending(double youngPa, double poisson, double thicknessM) {
    return youngPa * Math.pow(thicknessM, 3) / (12 * (1 - poisson * poisson));
  }

  private static double shear(double youngPa, double poisson, double thicknessM) {
    return 5.0 / 6 * youngPa / (2 * (1 + poisson)) * thicknessM;
  }

  /** Characteristic length {@code (4 D/(k_f + k_m))^(1/4)} of the foot between its layers, m. */
  double bendingLengthM() {
    return Math.pow(4 * bendingNM / (fixedPaPerM + movablePaPerM), 0.25);
  }

  /**
   * The foot as it stands clamped, from which its stiffness is asked.
   *
   * @return empty if no pressure of the faces balances the clamping force
   */
  public Optional<ClampedFoot> clamped() {
    return ClampedFoot.of(this);
  }
}

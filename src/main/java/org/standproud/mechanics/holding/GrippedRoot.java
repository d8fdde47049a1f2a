package org.standproud.mechanics.holding;

import org.standproud.mechanics.holding.jaw.JawBearings;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.plate.FootBending;
import org.standproud.mechanics.plate.RootStiffness;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/**
 * The root of a standing stock: the rigid foot of {@link DrawnHold}, turning about the middle of
 * its grip, with what the stock bends inside the grip.
 *
 * <p>The turning stiffness of the hold, which counts jaws, packing, spots and faces that lift, is
 * taken as it is; to it is added the {@link FootBending} between the faces of the joint, loosened
 * as many times as the hold is softer than with faces that bear everywhere, at most to a foot that
 * bends free over its grip. A stiff foot leaves the hold as it is. Where packing bears on a line
 * only the other face resists bending.
 */
public final class GrippedRoot {

  private final Hold hold;
  private final double gripM;
  private final double lengthM;
  private final boolean fixedFace;
  private final boolean movableFace;
  private final double bendingPerPa;
  private final double shearPerPa;

  private GrippedRoot(Hold hold, Stock stock) {
    this.hold = hold;
    this.gripM = Math.min(hold.gripDepthM(), hold.vise().jawHeightM());
    this.lengthM = JawSpan.of(hold, stock.lengthM()).bearingM();
    this.fixedFace = JawBearings.lineDepthM(hold, JawSide.FIXED, gripM) == null;
    this.movableFace = JawBearings.lineDepthM(hold, JawSide.MOVABLE, gripM) == null;
    double poisson = stock.material().poissonsRatio();
    this.bendingPerPa = Math.pow(stock.thicknessM(), 3) / (12 * (1 - poisson * poisson));
    this.shearPerPa = 5.0 / 6 * stock.thicknessM() / (2 * (1 + poisson));
  }

  /** The root of a set-up. */
  public static GrippedRoot of(Setup setup) {
    return new GrippedRoot(setup.hold(), setup.stock());
  }

  /**
   * What the root is made of in one draw.
   *
   * @param clampingForceN clamping force in N
   * @param jointCoefficient coefficient of the law of pressed faces
   * @param packingPlace place in the band of the modulus of packing, 0 to 1
   * @param modulusPa Young's modulus of the stock in Pa
   * @param fixedJawNPerM stiffness of the fixed jaw in N/m
   * @param movableJawNPerM stiffness of the movable jaw in N/m
   */
  public record Draw(
      double clampingForceN,
      double jointCoefficient,
      double packingPlace,
      double modulusPa,
      double fixedJawNPerM,
      double movableJawNPerM) {}

  /**
   * The root at one draw, as compliances per metre of jaw.
   *
   * @param draw single values
   * @param turningNmPerRad turning stiffness of the rigid foot in N m/rad, greater than zero
   * @param translationNPerM stiffness of the rigid foot across the jaws in N/m
   */
  public Compliance at(Draw draw, double turningNmPerRad, double translationNPerM) {
    JawRoot jaws = jaws(draw);
    double faces =
        (fixedFace ? jaws.layer(JawSide.FIXED) : 0)
            + (movableFace ? jaws.layer(JawSide.MOVABLE) : 0);
    double turn = lengthM / turningNmPerRad;
    double loose = turn * bearingNmPerRad(draw) / lengthM;
    double bendingNM = draw.modulusPa() * bendingPerPa;
    FootBending bends =
        faces > 0
            ? FootBending.of(bendingNM, draw.modulusPa() * shearPerPa, gripM, faces)
                .loosened(loose, gripM / bendingNM)
            : FootBending.NONE;
    return Compliance.of(lengthM / translationNPerM, turn, gripM / 2, bends);
  }

  /** Turning stiffness of a rigid foot whose faces bear everywhere, in N m/rad. */
  public double bearingNmPerRad(Draw draw) {
    JawRoot jaws = jaws(draw);
    double tilting =
        (fixedFace ? jaws.tilting(JawSide.FIXED, draw.fixedJawNPerM()) : 0)
            + (movableFace ? jaws.tilting(JawSide.MOVABLE, draw.movableJawNPerM()) : 0);
    return tilting * lengthM * gripM * gripM * gripM / 12;
  }

  private JawRoot jaws(Draw draw) {
    return new JawRoot(
        hold,
        draw.jointCoefficient(),
        band -> band.part(draw.packingPlace()),
        draw.fixedJawNPerM(),
        draw.movableJawNPerM(),
        lengthM,
        gripM,
        draw.clampingForceN());
  }

  /**
   * How a root gives, per metre of jaw.
   *
   * @param shift shift of the point about which it turns per force, m2/N
   * @param turn turn per moment, rad/N
   * @param depthM depth of that point below the jaw top, m
   */
  public record Compliance(double shift, double turn, double depthM) {

    static Compliance of(double shift, double turn, double depthM, FootBending bends) {
      double allTurn = turn + bends.turn();
      double cross = turn * depthM + bends.cross();
      double atTop = shift + turn * depthM * depthM + bends.shift();
      double depth = cross / allTurn;
      return new Compliance(atTop - cross * depth, allTurn, depth);
    }

    /** The same as a stiffness at the jaw top. */
    public RootStiffness stiffness() {
      return RootStiffness.turningAbout(shift, turn, depthM);
    }
  }
}

package org.standproud.mechanics.vibration;

import org.standproud.mechanics.OutsideValidity;

/**
 * Mean directional factors of a milling cut: how a vibration along and across the feed turns into
 * force along and across the feed, averaged over the arc of cut.
 *
 * <p>With phi measured from the normal to the feed, clockwise seen from above, feed of the cutter
 * +x (a conventional side cut enters at 0, a climb cut leaves at pi):
 *
 * <pre>
 * axx = 1/2 [cos 2phi - 2 Kr phi + Kr sin 2phi]    axy = 1/2 [-sin 2phi - 2 phi + Kr cos 2phi]
 * ayx = 1/2 [-sin 2phi + 2 phi + Kr cos 2phi]      ayy = 1/2 [-cos 2phi - 2 Kr phi - Kr sin 2phi]
 * </pre>
 *
 * from entry to exit (Altintas and Budak, CIRP Annals 44/1 (1995) 357-362). A factor may have
 * either sign: along the feed in climb and across it in conventional milling it may be positive.
 *
 * @param xx along the feed from vibration along it
 * @param xy along the feed from vibration across it
 * @param yx across the feed from vibration along it
 * @param yy across the feed from vibration across it
 */
public record DirectionalFactors(double xx, double xy, double yx, double yy) {

  /**
   * The factors of an arc.
   *
   * @param entryRad where a tooth enters, rad, 0 to pi
   * @param exitRad where it leaves, rad, entry to pi
   * @param radialRatio radial over tangential force, 0 to 3
   * @throws OutsideValidity if an angle or the ratio is out of range
   */
  public static DirectionalFactors of(double entryRad, double exitRad, double radialRatio) {
    OutsideValidity.within("entry angle", entryRad, 0, Math.PI, "rad");
    OutsideValidity.within("exit angle", exitRad, entryRad, Math.PI, "rad");
    OutsideValidity.within("radial force ratio", radialRatio, 0, 3, "");
    double arc = exitRad - entryRad;
    double cos = Math.cos(2 * exitRad) - Math.cos(2 * entryRad);
    double sin = Math.sin(2 * exitRad) - Math.sin(2 * entryRad);
    return new DirectionalFactors(
        0.5 * (cos - 2 * radialRatio * arc + radialRatio * sin),
        0.5 * (-sin - 2 * arc + radialRatio * cos),
        0.5 * (-sin + 2 * arc + radialRatio * cos),
        0.5 * (-cos - 2 * radialRatio * arc - radialRatio * sin));
  }
}

package org.standproud.mechanics.engagement;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Mode;

/**
 * An arc of tooth angles in which the stock is cut, in the feed frame of {@link FeedFrame}.
 *
 * <p>The uncut chip is h = f_z sin(kappa) sin(phi) (circular tooth path; Martellotti, Trans. ASME
 * 1941; Altintas 2012 ch. 2; from memory), true while the feed per tooth is small beside the cutter
 * radius.
 *
 * @param entryRad phi_st, 0 to pi, less than the exit
 * @param exitRad phi_ex, 0 to pi
 */
public record Arc(double entryRad, double exitRad) {

  private static final double SAME_ANGLE_RAD = 1e-9;

  /**
   * Refuses an arc that is empty or lies behind the cutter.
   *
   * @throws OutsideValidity if an end is outside 0 to pi or the exit does not follow the entry
   */
  public Arc {
    OutsideValidity.within("entry angle", entryRad, 0, Math.PI, "rad");
    OutsideValidity.within("exit angle", exitRad, Math.nextUp(entryRad), Math.PI, "rad");
  }

  /** phi_s in rad. */
  public double spanRad() {
    return exitRad - entryRad;
  }

  /** Chip at the entry as a share of f_z sin(kappa), without unit. */
  public double sineAtEntry() {
    return Math.sin(entryRad);
  }

  /** Chip at the exit as a share of f_z sin(kappa), without unit. */
  public double sineAtExit() {
    return Math.sin(exitRad);
  }

  /** Greatest chip as a share of f_z sin(kappa), without unit. */
  public double greatestSine() {
    return holds(Math.PI / 2) ? 1 : Math.max(sineAtEntry(), sineAtExit());
  }

  /** Least chip as a share of f_z sin(kappa), without unit; it stands at one end. */
  public double leastSine() {
    return Math.max(0, Math.min(sineAtEntry(), sineAtExit()));
  }

  /** Mean chip over the arc as a share of f_z sin(kappa): (cos phi_st - cos phi_ex) / phi_s. */
  public double meanSine() {
    double middle = (entryRad + exitRad) / 2;
    double half = spanRad() / 2;
    // the difference of cosines as a product: a narrow arc would lose its digits otherwise
    return Math.sin(middle) * (half < 1e-8 ? 1 : Math.sin(half) / half);
  }

  /** Radial depth of the arc as a share of the cutter radius: cos phi_st - cos phi_ex. */
  public double depthInRadii() {
    return meanSine() * spanRad();
  }

  /** The angle of the greatest chip in rad. */
  public double thickestRad() {
    if (holds(Math.PI / 2)) {
      return Math.PI / 2;
    }
    return sineAtEntry() > sineAtExit() ? entryRad : exitRad;
  }

  /** Whether an angle in rad lies on the arc, ends included. */
  public boolean holds(double angleRad) {
    return angleRad >= entryRad && angleRad <= exitRad;
  }

  /** Climb, conventional or both: by the side of the centre line on which the arc lies. */
  public Mode mode() {
    if (exitRad <= Math.PI / 2 + SAME_ANGLE_RAD) {
      return Mode.CONVENTIONAL;
    }
    return entryRad >= Math.PI / 2 - SAME_ANGLE_RAD ? Mode.CLIMB : Mode.BOTH;
  }

  /** How the chip at the entry compares with the chip at the exit. */
  public ChipTrend trend() {
    double difference = sineAtExit() - sineAtEntry();
    if (Math.abs(difference) < SAME_ANGLE_RAD) {
      return ChipTrend.EVEN;
    }
    return difference > 0 ? ChipTrend.THIN_TO_THICK : ChipTrend.THICK_TO_THIN;
  }
}

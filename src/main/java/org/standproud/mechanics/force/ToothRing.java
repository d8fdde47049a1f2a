package org.standproud.mechanics.force;

import java.util.Arrays;
import java.util.Set;
import org.standproud.mechanics.OutsideValidity;

/**
 * The teeth of a cutter with their radii, and the bite each takes.
 *
 * <p>A tooth of radius error r_i cuts what every earlier tooth left: the bite at angle phi is the
 * least over m of m f_z sin(phi) + r_i - r_(i-m), the teeth that are missing left out, so the tooth
 * behind a gap takes a double bite; below zero it does not cut (Kline and DeVor, Int. J. Mach. Tool
 * Des. Res. 23 (1983); from memory). Run-out is an eccentric cutter, r_i = TIR/2 cos(i pitch -
 * turn), turned so that the first tooth present gains the most over the tooth before it.
 */
final class ToothRing {

  private final int teeth;
  private final boolean[] present;
  private final int[][] gaps;
  private final double[][] gainsM;
  private final boolean alike;

  private ToothRing(int teeth, boolean[] present, int[][] gaps, double[][] gainsM, boolean alike) {
    this.teeth = teeth;
    this.present = present;
    this.gaps = gaps;
    this.gainsM = gainsM;
    this.alike = alike;
  }

  /**
   * The ring of a cutter.
   *
   * @param teeth number of teeth, 1 to 60
   * @param absent numbers of teeth that do not cut
   * @param runOutM total indicator reading in m, 0 to 2 mm
   * @throws OutsideValidity if an input is out of range or no tooth is left
   */
  static ToothRing of(int teeth, Set<Integer> absent, double runOutM) {
    OutsideValidity.within("number of teeth", teeth, 1, 60, "");
    OutsideValidity.within("run-out", runOutM, 0, 2e-3, "m");
    boolean[] present = new boolean[teeth];
    int left = 0;
    for (int i = 0; i < teeth; i++) {
      present[i] = !absent.contains(i);
      left += present[i] ? 1 : 0;
    }
    OutsideValidity.within("number of teeth that cut", left, 1, teeth, "");
    double[] radii = radiiM(present, runOutM);
    int[][] gaps = new int[teeth][];
    double[][] gains = new double[teeth][];
    for (int i = 0; i < teeth; i++) {
      gather(i, present, radii, gaps, gains);
    }
    return new ToothRing(teeth, present, gaps, gains, left == teeth && runOutM == 0);
  }

  private static double[] radiiM(boolean[] present, double runOutM) {
    int teeth = present.length;
    double pitch = 2 * Math.PI / teeth;
    int gap = 1;
    int first = firstBehindTheWidestGap(present);
    while (!present[Math.floorMod(first - gap, teeth)]) {
      gap++;
    }
    double turn = first * pitch - gap * pitch / 2 + Math.PI / 2;
    double[] radii = new double[teeth];
    for (int i = 0; i < teeth; i++) {
      radii[i] = runOutM / 2 * Math.cos(i * pitch - turn);
    }
    return radii;
  }

  private static int firstBehindTheWidestGap(boolean[] present) {
    int best = -1;
    int widest = 0;
    for (int i = 0; i < present.length; i++) {
      int gap = 1;
      while (!present[Math.floorMod(i - gap, present.length)] && gap < present.length) {
        gap++;
      }
      if (present[i] && gap > widest) {
        widest = gap;
        best = i;
      }
    }
    return best;
  }

  /** Keeps only the earlier teeth that can set the bite: those that gain less than nearer ones. */
  private static void gather(
      int tooth, boolean[] present, double[] radii, int[][] gaps, double[][] gains) {
    int teeth = radii.length;
    int[] gap = new int[teeth];
    double[] gain = new double[teeth];
    int kept = 0;
    for (int m = 1; m <= teeth; m++) {
      int earlier = Math.floorMod(tooth - m, teeth);
      double more = radii[tooth] - radii[earlier];
      if (present[earlier] && (kept == 0 || more < gain[kept - 1])) {
        gap[kept] = m;
        gain[kept++] = more;
      }
    }
    gaps[tooth] = Arrays.copyOf(gap, kept);
    gains[tooth] = Arrays.copyOf(gain, kept);
  }

  int teeth() {
    return teeth;
  }

  /** Whether every tooth is there and takes the same bite. */
  boolean alike() {
    return alike;
  }

  boolean cuts(int tooth) {
    return present[tooth];
  }

  /**
   * The bite of a tooth along the radius in m; negative where it does not cut.
   *
   * @param tooth number of the tooth
   * @param feedM f_z in m
   * @param sine sin(phi)
   */
  double biteM(int tooth, double feedM, double sine) {
    int[] gap = gaps[tooth];
    double[] gain = gainsM[tooth];
    double least = gap[0] * feedM * sine + gain[0];
    for (int k = 1; k < gap.length; k++) {
      least = Math.min(least, gap[k] * feedM * sine + gain[k]);
    }
    return least;
  }

  /** The number of the tooth with the greatest bite at an angle of the given sine. */
  int hungriest(double feedM, double sine) {
    int hungriest = -1;
    for (int i = 0; i < teeth; i++) {
      boolean more =
          present[i] && (hungriest < 0 || biteM(i, feedM, sine) > biteM(hungriest, feedM, sine));
      hungriest = more ? i : hungriest;
    }
    return hungriest;
  }

  /** The greatest bite any tooth can take in m. */
  double greatestBiteM(double feedM) {
    return biteM(hungriest(feedM, 1), feedM, 1);
  }
}

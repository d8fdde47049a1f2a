package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.Operation;

/**
 * The marks one pass leaves, as geometry has them.
 *
 * <p>Their distance is the feed per tooth if every tooth stands level with the rest, and the feed
 * per turn if one stands proud; milling cutters nearly always have such a tooth, so the feed per
 * turn is the likely value. The broad side takes the scallops of the periphery, the top edge the
 * marks of the corner. A wiper flat longer than the distance leaves none in theory; there the band
 * runs from nothing, over the marks of half the distance, to the marks without the flat.
 *
 * @param spacingM distance between marks along the feed in m
 * @param rtM peak to valley height in m
 * @param raM arithmetic mean roughness in m
 */
public record FeedMarks(Band spacingM, Band rtM, Band raM) {

  /** Greatest trail angle of an end edge, where no record holds it, in rad: 10 degrees. */
  public static final double TRAIL_ANGLE_RAD = FastMath.toRadians(10);

  /** Least radius of a corner that counts as round, in m. */
  private static final double LEAST_CORNER_M = 1e-6;

  /**
   * The marks of a cutter.
   *
   * @param operation which face is milled
   * @param cutter the cutter
   * @param feedPerToothM f_z in m, 0 to 0.01
   * @throws OutsideValidity if the feed, the corner, or the entering angle is out of the range of
   *     its formula
   */
  public static FeedMarks of(Operation operation, Cutter cutter, Band feedPerToothM) {
    OutsideValidity.within("feed per tooth", feedPerToothM.low(), 0, 0.01, "m");
    OutsideValidity.within("feed per tooth", feedPerToothM.high(), 0, 0.01, "m");
    OutsideValidity.within("teeth", cutter.teeth(), 1, 200, "");
    Band spacing =
        new Band(
            feedPerToothM.low() * teethApart(cutter),
            feedPerToothM.likely() * cutter.teeth(),
            feedPerToothM.high() * cutter.teeth());
    if (operation == Operation.BROAD_SIDE) {
      return new FeedMarks(
          spacing,
          spacing.map(f -> PeripheralMark.rtM(f, cutter.diameterM())),
          spacing.map(f -> PeripheralMark.raM(f, cutter.diameterM())));
    }
    Band rt = spacing.map(f -> cornerRtM(f, cutter));
    Band ra = spacing.map(f -> cornerRaM(f, cutter));
    if (cutter.wiperM() <= 0 || spacing.high() > cutter.wiperM()) {
      return new FeedMarks(spacing, rt, ra);
    }
    Band half = spacing.times(0.5);
    return new FeedMarks(
        spacing,
        new Band(0, cornerRtM(half.likely(), cutter), rt.high()),
        new Band(0, cornerRaM(half.likely(), cutter), ra.high()));
  }

  /**
   * Arithmetic mean roughness of marks at a distance, in m; a wiper flat longer than it leaves the
   * marks of half of it.
   *
   * @param operation which face is milled
   * @param cutter the cutter
   * @param spacingM distance between marks along the feed in m
   */
  public static double raM(Operation operation, Cutter cutter, double spacingM) {
    if (operation == Operation.BROAD_SIDE) {
      return PeripheralMark.raM(spacingM, cutter.diameterM());
    }
    return cornerRaM(spacingM <= cutter.wiperM() ? spacingM / 2 : spacingM, cutter);
  }

  /** Least teeth between marks: one, or two where a tooth fails to cut. */
  public static int teethApart(Cutter cutter) {
    boolean whole = cutter.missingTeeth().isEmpty() && cutter.chippedTeeth().isEmpty();
    return whole ? 1 : FastMath.min(2, cutter.teeth());
  }

  private static double cornerRtM(double spacingM, Cutter cutter) {
    double radius = cutter.cornerRadiusM();
    double round =
        radius < LEAST_CORNER_M ? 0 : CornerMark.rtM(FastMath.min(spacingM, radius), radius);
    return spacingM <= radius ? round : FastMath.max(round, sharpRtM(spacingM, cutter));
  }

  private static double cornerRaM(double spacingM, Cutter cutter) {
    double radius = cutter.cornerRadiusM();
    double round =
        radius < LEAST_CORNER_M ? 0 : CornerMark.raM(FastMath.min(spacingM, radius), radius);
    return spacingM <= radius ? round : FastMath.max(round, sharpRtM(spacingM, cutter) / 4);
  }

  private static double sharpRtM(double spacingM, Cutter cutter) {
    OutsideValidity.within("feed per turn", spacingM, 0, 0.05, "m");
    double lead = FastMath.max(0, FastMath.PI / 2 - cutter.enteringAngleRad());
    return SharpCornerMark.rtM(spacingM, lead, TRAIL_ANGLE_RAD);
  }
}

package org.standproud.mechanics.finish;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CutterFields;
import org.standproud.setup.request.RequestFields;

/**
 * What one pass leaves on the surface, vibration left aside.
 *
 * @param marks the feed marks as geometry has them
 * @param raM roughness in m with the state of the edges counted
 * @param likelyGrade grade of the likely roughness; null if rougher than N12
 * @param worstGrade grade of the greatest roughness; null if rougher than N12
 * @param feedOverFlat feed per turn over the wiper flat; null without a flat or on the broad side
 * @param hollowM hollow of a leaning spindle in m; null on the broad side, whose floor it is not
 * @param reachOverRadius farthest side of the stock from the cutter axis over the cutter radius on
 *     the top edge: 1 is tangent, above 1 the cutter leaves some of the edge standing; null on the
 *     broad side
 * @param assumptions what was assumed
 */
public record SurfaceFinish(
    FeedMarks marks,
    Band raM,
    @Nullable RoughnessGrade likelyGrade,
    @Nullable RoughnessGrade worstGrade,
    @Nullable Band feedOverFlat,
    @Nullable Band hollowM,
    @Nullable Double reachOverRadius,
    List<Assumption> assumptions) {

  private static final Assumption PROUD_TOOTH =
      new Assumption(
          CutterFields.RUN_OUT,
          "one tooth stands proud of the rest, so marks lie one turn apart; at best one tooth apart",
          "common practice, no source");

  private static final Assumption TRAIL_ANGLE =
      new Assumption(
          RequestFields.CUTTER,
          "the end edge trails by up to 10 degrees",
          "common practice, no source");

  private static final Assumption EDGE =
      new Assumption(
          CutterFields.EDGE,
          "the surface is rougher than its feed marks by a factor for the state of the edges, 1 to 8"
              + " if that is not known",
          "common practice, no source");

  /** Copies the list. */
  public SurfaceFinish {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The surface of a set-up.
   *
   * @param setup the set-up
   * @param feedPerToothM f_z in m that the teeth see, hand feed counted
   * @param leanRad lean of the spindle along the feed in rad; null if not indicated
   * @throws OutsideValidity if an input is out of the range of its formula
   */
  public static SurfaceFinish of(Setup setup, Band feedPerToothM, @Nullable Band leanRad) {
    Cutter cutter = setup.cutter();
    FeedMarks marks = FeedMarks.of(setup.cut().operation(), cutter, feedPerToothM);
    Band ra = marks.raM().times(EdgeRoughening.factor(cutter.edge()));
    boolean top = setup.cut().operation() == Operation.TOP_EDGE;
    List<Assumption> assumptions = new ArrayList<>(List.of(PROUD_TOOTH, EDGE));
    if (top && marks.spacingM().high() > cutter.cornerRadiusM()) {
      assumptions.add(TRAIL_ANGLE);
    }
    if (top && leanRad == null) {
      assumptions.add(TramError.ASSUMPTION);
    }
    return new SurfaceFinish(
        marks,
        ra,
        grade(ra.likely()),
        grade(ra.high()),
        top && cutter.wiperM() > 0
            ? WiperFlat.feedOverFlat(feedPerToothM.times(cutter.teeth()), cutter.wiperM())
            : null,
        top ? hollowM(setup, leanRad == null ? TramError.NOT_INDICATED_RAD : leanRad) : null,
        top ? farthestSideM(setup) / (cutter.diameterM() / 2) : null,
        assumptions);
  }

  private static @Nullable RoughnessGrade grade(double raM) {
    return raM > RoughnessGrade.N12.greatestRaM() ? null : RoughnessGrade.of(raM);
  }

  /** The width whose middle is the cutter axis and which holds all of the stock: an upper bound. */
  private static Band hollowM(Setup setup, Band leanRad) {
    double diameter = setup.cutter().diameterM();
    double width = FastMath.min(diameter, 2 * farthestSideM(setup));
    return leanRad.map(lean -> TramError.hollowM(diameter, width, lean));
  }

  private static double farthestSideM(Setup setup) {
    OutsideValidity.within("stock thickness", setup.stock().thicknessM(), 1e-5, 10, "m");
    OutsideValidity.within("offset of the cutter", setup.cut().offsetM(), -10, 10, "m");
    return FastMath.abs(setup.cut().offsetM()) + setup.stock().thicknessM() / 2;
  }
}

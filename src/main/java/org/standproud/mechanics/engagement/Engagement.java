package org.standproud.mechanics.engagement;

import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.Mode;
import org.standproud.setup.Stock;

/** How the cutter meets the stock in steady cutting, or that it passes beside it. */
public sealed interface Engagement {

  /**
   * The engagement of a proposed pass at the likely feed.
   *
   * @param stock the piece
   * @param cutter the cutter
   * @param cut the pass
   * @throws OutsideValidity if a size is out of range
   */
  static Engagement of(Stock stock, Cutter cutter, Cut cut) {
    PassGeometry geometry = PassGeometry.of(stock, cutter, cut);
    Optional<Arc> arc = geometry.steadyArc();
    if (arc.isEmpty()) {
      double nearestM = Math.max(geometry.lowEdgeM(), -geometry.highEdgeM());
      return new Missed(nearestM - geometry.radiusM());
    }
    EdgeInCut edge =
        EdgeInCut.of(cut.axialDepthM(), cutter.enteringAngleRad(), cutter.cornerRadiusM());
    double feedM =
        OutsideValidity.within("feed per tooth", cut.feedPerToothM().likely(), 0, 0.005, "m");
    int teeth = (int) OutsideValidity.within("number of teeth", cutter.teeth(), 1, 60, "");
    return new Cutting(
        geometry, arc.get(), teeth, feedM * edge.sine(), offsetWithin(cut), stock.thicknessM());
  }

  private static double offsetWithin(Cut cut) {
    return OutsideValidity.within("offset of the cutter axis", cut.offsetM(), -1, 1, "m");
  }

  /**
   * The cutter passes beside the stock.
   *
   * @param gapM the gap between cutter and stock in m, not negative
   */
  record Missed(double gapM) implements Engagement {}

  /**
   * The cutter cuts.
   *
   * @param geometry the pass seen from above
   * @param arc phi_st to phi_ex in the feed frame
   * @param teeth number of teeth
   * @param chipFactorM f_z sin(kappa_e), the chip at 90 degrees, in m
   * @param offsetM y of the cutter axis in the vise frame in m
   * @param thicknessM thickness of the stock in m
   */
  record Cutting(
      PassGeometry geometry,
      Arc arc,
      int teeth,
      double chipFactorM,
      double offsetM,
      double thicknessM)
      implements Engagement {

    /** Chip at a tooth angle in m; zero off the arc. */
    public double chipM(double angleRad) {
      return arc.holds(angleRad) ? chipFactorM * Math.sin(angleRad) : 0;
    }

    /** h_m, the mean chip over the arc, in m. */
    public double meanChipM() {
      return chipFactorM * arc.meanSine();
    }

    /** h_max in m. */
    public double greatestChipM() {
      return chipFactorM * arc.greatestSine();
    }

    /** Chip where a tooth enters, in m. */
    public double entryChipM() {
      return chipFactorM * arc.sineAtEntry();
    }

    /** Chip where a tooth leaves, in m. */
    public double exitChipM() {
      return chipFactorM * arc.sineAtExit();
    }

    /** z_e = z phi_s / 2 pi, the mean number of teeth in cut (straight edges). */
    public double teethInCut() {
      return teeth * arc.spanRad() / (2 * Math.PI);
    }

    /** a_e, the width engaged, in m. */
    public double engagedWidthM() {
      return arc.depthInRadii() * geometry.radiusM();
    }

    /** Climb, conventional or both. */
    public Mode mode() {
      return arc.mode();
    }

    /** How far the cutter reaches past the stock on the fixed-jaw side in m; negative if short. */
    public double overhangFixedSideM() {
      return offsetM + geometry.radiusM() - thicknessM / 2;
    }

    /**
     * How far the cutter reaches past the stock on the movable-jaw side in m; negative if short.
     */
    public double overhangMovableSideM() {
      return geometry.radiusM() - offsetM - thicknessM / 2;
    }

    /** Whether the cutter reaches both sides of the stock. */
    public boolean coversStock() {
      return overhangFixedSideM() >= 0 && overhangMovableSideM() >= 0;
    }
  }
}

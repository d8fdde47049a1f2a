package org.standproud.mechanics.engagement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.Stock;

/**
 * A pass seen from above: a circle that travels past a rectangle. Lengths in m, in the feed frame
 * of {@link FeedFrame}, edges measured from the cutter axis.
 *
 * @param frame the signs that lead back to the vise
 * @param radiusM R, half of DC, 0.5 mm to 250 mm
 * @param lowEdgeM y' of the edge of the stock on the climb side
 * @param highEdgeM y' of the edge of the stock on the conventional side, above the low edge
 * @param lengthM length of the stock along the feed
 */
public record PassGeometry(
    FeedFrame frame, double radiusM, double lowEdgeM, double highEdgeM, double lengthM) {

  /**
   * Refuses sizes no milling machine of this kind takes.
   *
   * @throws OutsideValidity if a size is out of range
   */
  public PassGeometry {
    OutsideValidity.within("cutter radius", radiusM, 0.0005, 0.25, "m");
    OutsideValidity.within("offset of the cutter axis", lowEdgeM, -2, 2, "m");
    OutsideValidity.within("stock thickness", highEdgeM - lowEdgeM, 1e-5, 2, "m");
    OutsideValidity.within("stock length", lengthM, 1e-4, 5, "m");
  }

  /**
   * The geometry of a proposed pass.
   *
   * @param stock the piece
   * @param cutter the cutter
   * @param cut the pass
   * @throws OutsideValidity if a size is out of range
   */
  public static PassGeometry of(Stock stock, Cutter cutter, Cut cut) {
    FeedFrame frame = FeedFrame.of(cutter.spin(), cut.feed());
    double half = stock.thicknessM() / 2;
    double middleM = frame.feedY(-cut.offsetM());
    return new PassGeometry(
        frame, cutter.diameterM() / 2, middleM - half, middleM + half, stock.lengthM());
  }

  /** The arc in cut while the stock reaches past the cutter both ways; empty if it is missed. */
  public Optional<Arc> steadyArc() {
    if (lowEdgeM >= radiusM || highEdgeM <= -radiusM) {
      return Optional.empty();
    }
    double entry = Math.acos(Math.min(1, highEdgeM / radiusM));
    double exit = Math.acos(Math.max(-1, lowEdgeM / radiusM));
    return exit > entry ? Optional.of(new Arc(entry, exit)) : Optional.empty();
  }

  /**
   * The arcs in cut at one place of the pass: none, one, or two when the cutter leaves over the end
   * and only the strips at its sides are left.
   *
   * @param travelM how far the cutter axis stands past the end where the pass starts, in m;
   *     negative before it
   */
  public List<Arc> arcsAt(double travelM) {
    List<Arc> arcs = new ArrayList<>(2);
    steadyArc().ifPresent(whole -> addArcs(arcs, whole, -travelM, lengthM - travelM));
    return arcs;
  }

  private void addArcs(List<Arc> arcs, Arc whole, double nearEndM, double farEndM) {
    if (nearEndM >= radiusM || farEndM <= 0) {
      return;
    }
    double nearest = nearEndM <= 0 ? 0 : Math.asin(nearEndM / radiusM);
    double from = Math.max(whole.entryRad(), nearest);
    double to = Math.min(whole.exitRad(), Math.PI - nearest);
    if (farEndM >= radiusM) {
      addIfOpen(arcs, from, to);
      return;
    }
    double farthest = Math.asin(farEndM / radiusM);
    addIfOpen(arcs, from, Math.min(to, farthest));
    addIfOpen(arcs, Math.max(from, Math.PI - farthest), to);
  }

  private static void addIfOpen(List<Arc> arcs, double from, double to) {
    if (to > from) {
      arcs.add(new Arc(from, to));
    }
  }

  /**
   * The x coordinate of the cutter axis in the vise frame, in m from the middle of the stock.
   *
   * @param travelM as for {@link #arcsAt}
   */
  public double viseX(double travelM) {
    return frame.viseX(travelM - lengthM / 2);
  }
}

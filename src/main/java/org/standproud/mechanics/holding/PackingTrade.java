package org.standproud.mechanics.holding;

import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.jaw.BestPackingDepth;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;

/**
 * What laying a wire deeper or shallower at the movable jaw would do to one hold under the load it
 * has: deeper packing takes more push toward the fixed jaw and less away from it, so the best depth
 * follows from which way this cut pushes and how hard. Limits are those of {@link
 * BestPackingDepth}.
 *
 * @param points depths from half a wire below the jaw top to half a wire above the bottom of the
 *     grip, in equal steps
 * @param bestDepthM where the smaller of the two margins is greatest, in m
 * @param shallowestM shallowest depth at which clamping alone leaves no gap, in m
 * @param deepestM deepest depth at which clamping alone leaves no gap, in m
 */
public record PackingTrade(
    List<Point> points, Band bestDepthM, double shallowestM, double deepestM) {

  /** Copies the list. */
  public PackingTrade {
    points = List.copyOf(points);
  }

  /**
   * One depth.
   *
   * @param depthM depth of the wire below the jaw top in m
   * @param towardFixed tip limit toward the fixed jaw over the push that way
   * @param away tip limit away from the fixed jaw over the push that way
   */
  public record Point(double depthM, Band towardFixed, Band away) {}

  /**
   * The trade for a hold.
   *
   * @param input the hold, the stock and the load
   * @param points how many depths, 2 to 1000
   * @throws OutsideValidity if a value lies outside the range of a formula
   */
  public static PackingTrade of(HoldingInput input, int points) {
    OutsideValidity.within("depths of the trade", points, 2, 1000, "");
    HoldingEnds ends = HoldingEnds.of(input);
    double gripM = ends.likely().gripM();
    double edgeM = ends.wireSizeM() / 2;
    List<Point> all = new ArrayList<>(points);
    for (int i = 0; i < points; i++) {
      all.add(point(ends, edgeM + (gripM - 2 * edgeM) * i / (points - 1)));
    }
    return new PackingTrade(
        all,
        ends.bestPackingDepthM(),
        BestPackingDepth.shallowestM(gripM, ends.wireSizeM()),
        BestPackingDepth.deepestM(gripM, ends.wireSizeM()));
  }

  /** The same with the best depth found in another way. */
  public PackingTrade withBest(Band depthM) {
    return new PackingTrade(points, depthM, shallowestM, deepestM);
  }

  private static Point point(HoldingEnds ends, double depthM) {
    return new Point(
        depthM,
        ends.band(e -> Margin.of(limits(e, depthM).towardFixedN(), e.peaks().towardFixedN())),
        ends.band(e -> Margin.of(limits(e, depthM).awayN(), e.peaks().awayN())));
  }

  private static BestPackingDepth limits(HoldingEnd end, double depthM) {
    return BestPackingDepth.at(
        depthM,
        end.gripM(),
        end.input().load().heightAboveJawM(),
        end.clampingForceN(),
        end.shareToward());
  }
}

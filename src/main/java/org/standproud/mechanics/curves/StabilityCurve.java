package org.standproud.mechanics.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.vibration.Lobe;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.setup.Band;
import org.standproud.setup.Machine;
import org.standproud.setup.Setup;

/**
 * The stability chart of one set-up: how deep it may cut at each spindle speed before the stock
 * chatters. Zeroth order, stock modes only, with the range of validity of {@link Stability}.
 *
 * @param points the limit over speed, at speeds in equal ratios, rising
 * @param lobes the lobes of the likely hold one by one, where they lie in the range of speeds
 * @param better speeds of the likely hold near the tops of its lobes, best first
 * @param leastDepthM depth below which no speed chatters in m
 * @param revPerS the speed of the set-up in 1/s
 * @param depthM the depth of the set-up in m
 * @param cautions where the theory stops being true for this cut
 */
public record StabilityCurve(
    List<Point> points,
    List<Lobe> lobes,
    List<Lobe.Point> better,
    Band leastDepthM,
    double revPerS,
    double depthM,
    List<Stability.Caution> cautions) {

  private static final int LOBES = 12;
  private static final int BETTER_SPEEDS = 3;

  /** Copies the lists. */
  public StabilityCurve {
    points = List.copyOf(points);
    lobes = List.copyOf(lobes);
    better = List.copyOf(better);
    cautions = List.copyOf(cautions);
  }

  /**
   * One speed.
   *
   * @param revPerS spindle speed in 1/s
   * @param depthM limit of the axial depth in m: least with the softest hold, least damping and
   *     greatest cutting force
   */
  public record Point(double revPerS, Band depthM) {}

  /**
   * The chart over the speeds of the machine.
   *
   * @param setup a checked set-up
   * @param points how many speeds, 2 to 5000
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<StabilityCurve> of(Setup setup, int points) {
    Machine machine = setup.machine();
    return of(setup, machine.leastSpeedRevPerS(), machine.greatestSpeedRevPerS(), points);
  }

  /**
   * The chart over a range of speeds.
   *
   * @param setup a checked set-up
   * @param leastRevPerS least speed in 1/s, 0.01 to 10 000
   * @param mostRevPerS greatest speed in 1/s, more than the least
   * @param points how many speeds, 2 to 5000
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<StabilityCurve> of(
      Setup setup, double leastRevPerS, double mostRevPerS, int points) {
    OutsideValidity.within("speeds of the chart", points, 2, 5000, "");
    OutsideValidity.within("least speed of the chart", leastRevPerS, 0.01, 1e4, "1/s");
    OutsideValidity.within("greatest speed of the chart", mostRevPerS, leastRevPerS, 1e4, "1/s");
    return StandingCut.of(setup).map(cut -> of(cut, new Range(leastRevPerS, mostRevPerS, points)));
  }

  private static StabilityCurve of(StandingCut cut, Range range) {
    Stability stability = Stability.of(cut.chatter(PlateResponse.of(cut.plate())));
    List<Point> points = new ArrayList<>();
    for (double speed : range.speeds()) {
      points.add(new Point(speed, stability.depthAtM(speed)));
    }
    return new StabilityCurve(
        points,
        stability.likely().lobes(range.least(), range.most(), LOBES),
        stability.likely().bestSpeeds(range.least(), range.most(), BETTER_SPEEDS),
        stability.leastDepthM(),
        cut.setup().cut().spindleSpeedRevPerS(),
        cut.setup().cut().axialDepthM(),
        stability.cautions());
  }

  private record Range(double least, double most, int count) {
    List<Double> speeds() {
      List<Double> speeds = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        speeds.add(least * Math.pow(most / least, (double) i / (count - 1)));
      }
      return speeds;
    }
  }
}

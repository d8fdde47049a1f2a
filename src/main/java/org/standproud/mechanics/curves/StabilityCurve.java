package org.standproud.mechanics.curves;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.stage.DrawnPlate;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.vibration.Lobe;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.StabilityLobes;
import org.standproud.setup.Band;
import org.standproud.setup.Machine;
import org.standproud.setup.Setup;

/**
 * The stability chart of one set-up: how deep it may cut at each spindle speed before stock and
 * cutter chatter. Zeroth order, with the range of validity of {@link Stability}; the limit over
 * speed counts the damping of rubbing flanks at the set depth, the lobes do not.
 *
 * @param points the limit over speed, at speeds in equal ratios, rising
 * @param lobes the lobes of the middle draw one by one, where they lie in the range of speeds
 * @param better speeds of the middle draw near the tops of its lobes, best first
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
   * @param depthM limit of the axial depth in m, its 5th, 50th and 95th percentile
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
    Range range = new Range(leastRevPerS, mostRevPerS, points);
    return DrawnPlate.of(setup)
        .flatMap(plate -> StandingCut.of(setup).map(cut -> of(cut, plate, range)));
  }

  private static StabilityCurve of(StandingCut cut, DrawnPlate plate, Range range) {
    Stability stability = Stability.of(cut.chatter(PlateResponse.of(cut.plate())));
    int[] draws = plate.draws();
    List<Point> points = new ArrayList<>();
    for (double speed : range.speeds()) {
      points.add(
          new Point(
              speed,
              Sample.of(
                      Arrays.stream(draws)
                          .mapToDouble(draw -> plate.chatterDepthM(draw, speed))
                          .toArray())
                  .band()));
    }
    List<StabilityLobes> all =
        Arrays.stream(draws)
            .mapToObj(plate::lobes)
            .sorted(Comparator.comparingDouble(StabilityLobes::leastDepthM))
            .toList();
    StabilityLobes middle = all.get((all.size() - 1) / 2);
    return new StabilityCurve(
        points,
        middle.lobes(range.least(), range.most(), LOBES),
        middle.bestSpeeds(range.least(), range.most(), BETTER_SPEEDS),
        new Band(
            all.get(all.size() / 20).leastDepthM(),
            middle.leastDepthM(),
            all.get(all.size() - 1 - all.size() / 20).leastDepthM()),
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

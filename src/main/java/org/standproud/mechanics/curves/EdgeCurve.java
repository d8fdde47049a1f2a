package org.standproud.mechanics.curves;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.stage.DrawnPlate;
import org.standproud.mechanics.plate.EdgeFlexibility;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * How far the top edge of the stock gives as the cutter travels along it. The end of positive X
 * gives the edge deflection of the evidence; the shape along the edge is that of the likely hold.
 *
 * @param pushN the greatest push across the jaws, either way, in N
 * @param points equal steps along the edge, from the end of negative X
 */
public record EdgeCurve(Band pushN, List<Point> points) {

  /** Copies the list. */
  public EdgeCurve {
    points = List.copyOf(points);
  }

  /**
   * One place of the edge.
   *
   * @param xM along the jaws from the middle of the stock in m
   * @param underCutterM deflection across the jaws with the cutter here, in m, not negative
   * @param cutterAtEndM likely deflection here with the cutter at the end of positive X, in m: the
   *     shape of the bent edge
   */
  public record Point(double xM, Band underCutterM, double cutterAtEndM) {}

  /**
   * The edge of a set-up.
   *
   * @param setup a checked set-up
   * @param points how many points, 2 to 1000
   * @return empty if the cutter passes beside the stock, or the stock lets go in every draw
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<EdgeCurve> of(Setup setup, int points) {
    return DrawnPlate.of(setup)
        .flatMap(plate -> StandingCut.of(setup).map(cut -> of(cut, plate, points)));
  }

  private static EdgeCurve of(StandingCut cut, DrawnPlate plate, int points) {
    Band endM =
        Sample.of(Arrays.stream(plate.draws()).mapToDouble(plate::deflectionM).toArray()).band();
    List<EdgeFlexibility.Place> places = EdgeFlexibility.of(cut.plate(), points).places();
    EdgeFlexibility.Place end = places.get(places.size() - 1);
    return new EdgeCurve(
        cut.forces().path().y().greatestSizeN(),
        places.stream()
            .map(
                place ->
                    new Point(
                        place.xM(),
                        endM.times(place.underLoadMPerN().likely() / end.underLoadMPerN().likely()),
                        endM.likely() * place.underEndLoadMPerN() / end.underEndLoadMPerN()))
            .toList());
  }
}

package org.standproud.mechanics.history;

import java.util.List;
import org.standproud.mechanics.force.PathStation;
import org.standproud.setup.Band;

/**
 * The force as the cut fills: how the peak of a revolution grows from the first touch until the
 * whole arc is in the stock.
 *
 * @param travelM travel of the cutter past the first touch in m, from 0
 * @param greatestInPlaneN greatest force in the plane of the table over a revolution there, in N
 */
public record FillingCurve(List<Double> travelM, List<Band> greatestInPlaneN) {

  /** Copies the lists. */
  public FillingCurve {
    travelM = List.copyOf(travelM);
    greatestInPlaneN = List.copyOf(greatestInPlaneN);
  }

  static FillingCurve of(List<PathStation> filling) {
    double firstM = filling.get(0).travelM();
    return new FillingCurve(
        filling.stream().map(place -> place.travelM() - firstM).toList(),
        filling.stream().map(place -> place.forces().greatestInPlaneN()).toList());
  }
}

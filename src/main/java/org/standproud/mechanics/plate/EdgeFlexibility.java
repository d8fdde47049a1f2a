package org.standproud.mechanics.plate;

import java.util.List;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * How the top edge of the standing stock gives along its length: under a load that travels along
 * it, and everywhere under a load that stands at the end of positive X.
 *
 * <p>The model, its bands and its order are those of {@link PlateResponse}, so that the last point
 * gives what is given there for the corner.
 *
 * @param places equal steps along the edge from the end of negative X to the end of positive X
 */
public record EdgeFlexibility(List<Place> places) {

  /** Copies the list. */
  public EdgeFlexibility {
    places = List.copyOf(places);
  }

  /**
   * One place of the edge.
   *
   * @param xM along the jaws from the middle of the stock, m
   * @param underLoadMPerN deflection here for a load here, m/N
   * @param underEndLoadMPerN likely deflection here for a load at the end of positive X, m/N;
   *     negative where the stock swings the other way; zero where it is too far to be counted
   */
  public record Place(double xM, Band underLoadMPerN, double underEndLoadMPerN) {}

  /**
   * The edge of a standing stock.
   *
   * @param input the stock; the place of its load does not matter
   * @param places how many places, 2 to 1000
   * @throws OutsideValidity if the number is out of range
   */
  public static EdgeFlexibility of(PlateInput input, int places) {
    OutsideValidity.within("places along the edge", places, 2, 1000, "");
    return new StandingStock(input, RitzOrder.EVIDENCE).edge(places);
  }
}

package org.standproud.mechanics.plate;

import java.util.List;
import org.standproud.mechanics.vibration.ModeBand;
import org.standproud.setup.Band;

/**
 * How the standing stock gives and rings, over the band of its hold and of its modulus.
 *
 * <p>Softest: least modulus on the softest root. Stiffest: greatest modulus on the stiffest root.
 * Every value carries the shear correction of {@link StandingStock}.
 *
 * @param flexibilityAtLoadMPerN deflection across the stock under the load point, m/N
 * @param flexibilityAtMidEdgeMPerN the same at the middle of the top edge for a load there, m/N
 * @param flexibilityAtCornerMPerN the same at an end of the top edge for a load there, m/N
 * @param rootMomentPerN greatest of the root moments below a load at the load point, N.m per metre
 *     of jaw and newton
 * @param modesAtLoad the six lowest modes as seen at the load point, by likely frequency
 * @param modesAtMidEdge the same modes as seen at the middle of the top edge
 * @param modesAtCorner the same modes as seen at an end of the top edge
 * @param slenderness what the theory is worth for this stock
 * @param remarks what was simplified, in sentences
 */
public record PlateResponse(
    Band flexibilityAtLoadMPerN,
    Band flexibilityAtMidEdgeMPerN,
    Band flexibilityAtCornerMPerN,
    Band rootMomentPerN,
    List<ModeBand> modesAtLoad,
    List<ModeBand> modesAtMidEdge,
    List<ModeBand> modesAtCorner,
    Slenderness slenderness,
    List<String> remarks) {

  /** What the plate theory is worth for a stock. */
  public enum Slenderness {
    /** Thickness up to a fifth of the stick-out: a plate. */
    PLATE,
    /** Up to the stick-out: a stubby plate, its shear estimated. */
    STUBBY,
    /** Thicker than it stands out: a block; the figures are estimates, its hold governs. */
    BLOCK;

    static Slenderness of(PlateInput input) {
      double ratio = input.thicknessM() / input.stickOutM();
      return ratio <= 0.2 ? PLATE : ratio <= 1 ? STUBBY : BLOCK;
    }
  }

  /** Copies the lists. */
  public PlateResponse {
    modesAtLoad = List.copyOf(modesAtLoad);
    modesAtMidEdge = List.copyOf(modesAtMidEdge);
    modesAtCorner = List.copyOf(modesAtCorner);
    remarks = List.copyOf(remarks);
  }

  /**
   * Computes the response at the order {@link RitzOrder#EVIDENCE}.
   *
   * @param input the standing stock
   */
  public static PlateResponse of(PlateInput input) {
    return of(input, RitzOrder.EVIDENCE);
  }

  /**
   * Computes the response.
   *
   * @param input the standing stock
   * @param order how many terms
   */
  public static PlateResponse of(PlateInput input, RitzOrder order) {
    return new StandingStock(input, order).response();
  }

  /** Natural frequencies of the six lowest modes, Hz. */
  public List<Band> frequenciesHz() {
    return modesAtCorner.stream().map(ModeBand::frequencyHz).toList();
  }

  /**
   * Deflection under the load point, m.
   *
   * @param forceN force across the stock, N, not negative
   */
  public Band deflectionAtLoadM(Band forceN) {
    return flexibilityAtLoadMPerN.times(forceN);
  }

  /**
   * Deflection at the end of the cut, m: a load at an end of the top edge.
   *
   * @param forceN force across the stock, N, not negative
   */
  public Band deflectionAtCornerM(Band forceN) {
    return flexibilityAtCornerMPerN.times(forceN);
  }
}

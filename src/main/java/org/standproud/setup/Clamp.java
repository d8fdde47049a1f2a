package org.standproud.setup;

import org.jspecify.annotations.Nullable;

/**
 * A clamp or strap that stands beside the stock.
 *
 * @param side the side of the stock on which it stands
 * @param alongM place of its middle along X from the middle of the stock in m
 * @param lengthM how long it is along the jaws in m
 * @param gapM distance from the side of the stock to its nearest face along Y in m; null if not
 *     known
 * @param heightM height of its top above the jaw top in m
 */
public record Clamp(
    JawSide side, double alongM, double lengthM, @Nullable Double gapM, double heightM) {

  /** Distance along Y from the middle of a stock to its nearest face in m; 0 if not given. */
  public double faceM(double stockThicknessM) {
    return stockThicknessM / 2 + (gapM == null ? 0 : gapM);
  }

  /** Least X in m. */
  public double fromM() {
    return alongM - lengthM / 2;
  }

  /** Greatest X in m. */
  public double toM() {
    return alongM + lengthM / 2;
  }
}

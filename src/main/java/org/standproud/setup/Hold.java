package org.standproud.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the stock is held in a vise.
 *
 * @param vise the vise
 * @param gripDepthM height of stock inside the jaws in m
 * @param clampingForceN clamping force in N; null if not known
 * @param handleTorqueNm torque on the screw in N m; null if not known
 * @param jawFriction coefficient of friction between stock and jaw; null if not known
 * @param packing the packing, perhaps none
 * @param seat what the underside sits on; null if not known
 * @param stop where a stop stands; null if not known
 * @param viseRunOutM deviation of the fixed jaw from the table travel over its width in m; null if
 *     not indicated
 */
public record Hold(
    Vise vise,
    double gripDepthM,
    @Nullable Band clampingForceN,
    @Nullable Band handleTorqueNm,
    @Nullable Band jawFriction,
    List<Packing> packing,
    @Nullable Seat seat,
    @Nullable Stop stop,
    @Nullable Double viseRunOutM) {

  /** Copies the list of packing. */
  public Hold {
    packing = List.copyOf(packing);
  }

  /**
   * Thickness of what lies between the stock and one jaw.
   *
   * @param side the jaw
   * @return in m; 0 where nothing lies there
   */
  public double packingM(JawSide side) {
    return packing.stream()
        .filter(piece -> piece.side() == side)
        .mapToDouble(Packing::sizeM)
        .max()
        .orElse(0);
  }
}

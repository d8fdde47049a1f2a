package org.standproud.mechanics.holding.other;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.request.RequestFields;

/**
 * The force of one strap clamp on the work.
 *
 * <p>Bolt force {@code F = T/(K d)} with nut factor K of 0.15 to 0.30, likely 0.20 (Shigley,
 * chapter 8, from memory); the strap is a lever on its heel: force on the work {@code F a/(a + b)}
 * with a from heel to bolt and b from bolt to work. Valid while strap and bolt do not yield.
 *
 * @param forceN force on the work in N
 * @param assumptions what was taken for what was not given
 */
public record StrapClamp(Band forceN, List<Assumption> assumptions) {

  private static final Band NUT_FACTOR = new Band(0.15, 0.20, 0.30);
  private static final Band WRENCH_TORQUE_NM = new Band(20, 40, 60);

  /** Copies the list. */
  public StrapClamp {
    within("force of a strap clamp", forceN.low(), 1, 1e6, "N");
    within("force of a strap clamp", forceN.high(), 1, 1e6, "N");
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The clamp from the torque on its nut.
   *
   * @param torqueNm torque in N m; null if not known
   * @param boltDiameterM d in m
   * @param heelToBoltM a in m
   * @param boltToWorkM b in m
   * @throws OutsideValidity if a value is out of range
   */
  public static StrapClamp tightened(
      @Nullable Band torqueNm, double boltDiameterM, double heelToBoltM, double boltToWorkM) {
    within("bolt diameter", boltDiameterM, 3e-3, 0.06, "m");
    within("heel to bolt", heelToBoltM, 1e-3, 1, "m");
    within("bolt to work", boltToWorkM, 1e-3, 1, "m");
    Band torque = torqueNm == null ? WRENCH_TORQUE_NM : torqueNm;
    within("torque on a clamp nut", torque.low(), 0.1, 2000, "N.m");
    Band bolt = torque.over(NUT_FACTOR.times(boltDiameterM));
    List<Assumption> assumptions =
        torqueNm != null
            ? List.of()
            : List.of(
                new Assumption(
                    RequestFields.HOLD,
                    "clamp nut torque taken as 20 to 60 N.m",
                    "common practice, no source"));
    return new StrapClamp(bolt.times(heelToBoltM / (heelToBoltM + boltToWorkM)), assumptions);
  }
}

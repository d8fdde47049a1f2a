package org.standproud.mechanics.holding;

import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.holding.jaw.BackingHold;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.holding.screw.ClampingForce;
import org.standproud.setup.Hold;
import org.standproud.setup.Stock;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.StockFields;

/** What is taken of a hold for what the caller does not give. */
public final class HoldAssumptions {

  static final Assumption SEAT =
      new Assumption(
          HoldFields.SEAT,
          "parallels or the bed under the stock in nine shops of ten",
          "common practice, no source",
          "what the underside of the stock sits on");

  static final Assumption STOP =
      new Assumption(
          HoldFields.STOP,
          "no stop in half of the shops, one at the end that the cut pushes to in the others",
          "common practice, no source",
          "whether a stop stands at either end");

  private static final Assumption SPOT =
      new Assumption(
          StockFields.HIGH_SPOT,
          "the highest spot of the gripped faces drawn from what such faces have: half of machined"
              + " ones over 0.005 mm and a twentieth over 0.03; rolled 0.03 and 0.12, sawn 0.08 and"
              + " 0.25, cast 0.15 and 0.5",
          "common practice, no source",
          "the highest spot of the gripped faces, with a straight edge and feelers");

  private HoldAssumptions() {}

  /** The assumptions of a hold and its stock. */
  public static List<Assumption> of(Hold hold, Stock stock) {
    List<Assumption> all = new ArrayList<>();
    if (hold.clampingForceN() == null && hold.handleTorqueNm() == null) {
      all.add(ClampingForce.HAND_TORQUE);
    }
    all.addAll(JawFriction.of(hold, stock.surface(), FaceState.of(hold)).assumptions());
    if (stock.highSpotM() == null) {
      all.add(SPOT);
    }
    if (hold.seat() == null) {
      all.add(SEAT);
    }
    if (hold.stop() == null) {
      all.add(STOP);
    }
    all.addAll(BackingHold.assumptions(hold));
    return all;
  }
}

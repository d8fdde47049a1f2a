package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.CLAMP_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_LENGTH_LEFT;
import static org.standproud.mechanics.evidence.Vocabulary.HEIGHT_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.HOLDER_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.STOP_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.TRAVEL_CLEARANCE;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.reach.Body;
import org.standproud.mechanics.reach.Clearance;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.reach.SideView;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** Whether it goes in, and what meets what on the way. */
final class ReachFacts {

  private static final Basis ROOM =
      Basis.on("machine", "hold.vise", "stock.height", "hold.gripDepth", "cutter");

  private ReachFacts() {}

  static void state(Setup setup, FactSheet sheet) {
    Reach reach = Reach.of(setup);
    Basis basis = ROOM.assuming(reach.assumptions());
    sheet.number(HEIGHT_CLEARANCE, Math.min(reach.daylightM(), reach.downwardM()), basis);
    sheet.number(TRAVEL_CLEARANCE, Math.min(reach.travelXM(), reach.travelYM()), basis);
    Set<Body> jaws = EnumSet.of(Body.FIXED_JAW, Body.MOVABLE_JAW);
    clearance(JAW_CLEARANCE, reach, jaws, sheet, basis);
    clearance(HOLDER_CLEARANCE, reach, EnumSet.complementOf(EnumSet.copyOf(jaws)), sheet, basis);
    stops(reach, setup.hold().stopHeightM() != null, sheet);
    sheet.given(
        CLAMP_CLEARANCE,
        reach.clampClearanceM(),
        "hold.clamps",
        "where the clamps beside the stock stand and how high");
    sheet.number(
        EDGE_LENGTH_LEFT,
        setup.cutter().greatestDepthM() - setup.cut().axialDepthM(),
        Basis.on("cutter", "cut.axialDepth"));
  }

  private static void stops(Reach reach, boolean heightTold, FactSheet sheet) {
    Basis basis =
        ROOM.and(Basis.on("hold.stop", "hold.stopHeight", "cut.leadIn", "cut.axialDepth"))
            .assuming(heightTold ? List.of() : List.of(SideView.STOP_HEIGHT));
    Band roomM = reach.stopClearanceM();
    if (roomM == null) {
      sheet.missing(STOP_CLEARANCE, "there is no stop that the cutter could meet", basis);
    } else {
      sheet.number(STOP_CLEARANCE, roomM, basis);
    }
  }

  private static void clearance(
      Fact fact, Reach reach, Set<Body> standing, FactSheet sheet, Basis basis) {
    reach.clearances().stream()
        .filter(clearance -> standing.contains(clearance.standing()))
        .mapToDouble(Clearance::marginM)
        .min()
        .ifPresentOrElse(
            marginM -> sheet.number(fact, marginM, basis),
            () -> sheet.missing(fact, "the sizes of cutter and holder", basis));
  }
}

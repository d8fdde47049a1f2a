package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.CLAMP_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_LENGTH_LEFT;
import static org.standproud.mechanics.evidence.Vocabulary.HEIGHT_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.HOLDER_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.STOP_CLEARANCE;
import static org.standproud.mechanics.evidence.Vocabulary.TRAVEL_CLEARANCE;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.reach.Body;
import org.standproud.mechanics.reach.Clearance;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.reach.SideView;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** Whether it goes in, and what meets what on the way. */
final class ReachFacts {

  private static final Basis ROOM =
      Basis.on(
          RequestFields.MACHINE,
          HoldFields.VISE,
          StockFields.HEIGHT,
          HoldFields.GRIP_DEPTH,
          RequestFields.CUTTER);

  /** Steps of the height of a stop that is not given, with straight lines between. */
  private static final int HEIGHTS = 16;

  private static final Assumption NO_CLAMP =
      new Assumption(
          HoldFields.CLAMPS,
          "no clamp or strap beside the stock is given, so the cutter is not checked against one",
          "common practice, no source: in a vise there seldom is one",
          "where the clamps beside the stock stand and how high");

  private ReachFacts() {}

  static void state(Setup setup, JointSample sample, FactSheet sheet) {
    Reach reach = Reach.of(setup);
    Basis basis = ROOM.assuming(reach.assumptions());
    sheet.number(HEIGHT_CLEARANCE, Math.min(reach.daylightM(), reach.downwardM()), basis);
    sheet.number(TRAVEL_CLEARANCE, Math.min(reach.travelXM(), reach.travelYM()), basis);
    Set<Body> jaws = EnumSet.of(Body.FIXED_JAW, Body.MOVABLE_JAW);
    clearance(JAW_CLEARANCE, reach, jaws, sheet, basis);
    clearance(HOLDER_CLEARANCE, reach, EnumSet.complementOf(EnumSet.copyOf(jaws)), sheet, basis);
    stops(reach, setup, sample, sheet);
    Double toClampsM = toClampsM(reach, setup);
    Basis clamps = Basis.on(HoldFields.CLAMPS);
    if (toClampsM == null) {
      sheet.missing(CLAMP_CLEARANCE, clamps.assuming(List.of(NO_CLAMP)));
    } else {
      sheet.number(CLAMP_CLEARANCE, toClampsM, clamps);
    }
    sheet.number(
        EDGE_LENGTH_LEFT,
        setup.cutter().greatestDepthM() - setup.cut().axialDepthM(),
        Basis.on(RequestFields.CUTTER, CutFields.AXIAL_DEPTH));
  }

  private static void stops(Reach reach, Setup setup, JointSample sample, FactSheet sheet) {
    Double heightM = setup.hold().stopHeightM();
    Basis basis =
        ROOM.and(
                Basis.on(
                    HoldFields.STOP,
                    HoldFields.STOP_HEIGHT,
                    CutFields.LEAD_IN,
                    CutFields.AXIAL_DEPTH))
            .assuming(heightM != null ? List.of() : List.of(SideView.STOP_HEIGHT));
    if (reach.stopClearanceM() == null) {
      sheet.missing(STOP_CLEARANCE, basis);
    } else if (heightM != null) {
      sheet.number(STOP_CLEARANCE, reach.stopClearanceM(), basis);
    } else {
      SideView view = new SideView(setup);
      double[] atM = new double[HEIGHTS + 1];
      Arrays.setAll(atM, k -> view.toStopM(k * setup.stickOutM() / HEIGHTS));
      sheet.number(
          STOP_CLEARANCE,
          sample.draws(),
          draw -> between(atM, sample.at(Unknown.STOP_HEIGHT, draw) * HEIGHTS),
          basis);
    }
  }

  /**
   * Room to the clamps. A height told of a stop that is said not to be there, or of which nobody
   * says where it is, is the height of something: it counts with the clamps, at either end.
   */
  private static @Nullable Double toClampsM(Reach reach, Setup setup) {
    Double told = reach.clampClearanceM();
    Double heightM = setup.hold().stopHeightM();
    if (!isUnnamedBlock(setup) || heightM == null) {
      return told;
    }
    double blocks = new SideView(setup).toBlocksM(heightM);
    return told == null ? blocks : (Double) Math.min(told, blocks);
  }

  /** Whether a height is told of a stop without a stop being told. */
  static boolean isUnnamedBlock(Setup setup) {
    Stop stop = setup.hold().stop();
    return setup.hold().stopHeightM() != null && (stop == null || stop == Stop.NONE);
  }

  private static double between(double[] values, double place) {
    int from = Math.min(values.length - 2, (int) place);
    return values[from] + (place - from) * (values[from + 1] - values[from]);
  }

  private static void clearance(
      Fact fact, Reach reach, Set<Body> standing, FactSheet sheet, Basis basis) {
    reach.clearances().stream()
        .filter(clearance -> standing.contains(clearance.standing()))
        .mapToDouble(Clearance::marginM)
        .min()
        .ifPresentOrElse(
            marginM -> sheet.number(fact, marginM, basis), () -> sheet.missing(fact, basis));
  }
}

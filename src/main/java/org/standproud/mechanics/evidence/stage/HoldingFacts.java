package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.BEST_PACKING_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMPING_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMP_BOW;
import static org.standproud.mechanics.evidence.Vocabulary.CONTACT_LENGTH;
import static org.standproud.mechanics.evidence.Vocabulary.CONTACT_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.EXIT_OVERHANG;
import static org.standproud.mechanics.evidence.Vocabulary.HOLDING_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_FRICTION;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_GAP_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_PRESSURE_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.LEAST_HOLD_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.LIFT_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.MAY_ROCK;
import static org.standproud.mechanics.evidence.Vocabulary.NO_GAP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.RACKING_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.SLIP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.STATED_CLAMPING_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.TIP_MARGIN_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.TIP_MARGIN_MOVABLE;
import static org.standproud.mechanics.evidence.Vocabulary.TURNING_STIFFNESS_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.TURNING_STIFFNESS_MOVABLE;
import static org.standproud.mechanics.evidence.Vocabulary.VISE_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.WEAKEST_WAY;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.coupling.EndLoad;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.mechanics.holding.HoldAssumptions;
import org.standproud.mechanics.holding.WeakestWay;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Hold;
import org.standproud.setup.Setup;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** Whether the vise holds the stock against the cut. */
final class HoldingFacts {

  private static final Basis VISE =
      Basis.on(
          HoldFields.VISE,
          HoldFields.CLAMPING_FORCE,
          HoldFields.HANDLE_TORQUE,
          HoldFields.JAW_FRICTION,
          HoldFields.GRIP_DEPTH,
          HoldFields.PACKING,
          HoldFields.SEAT,
          HoldFields.STOP,
          HoldFields.BACKING,
          RequestFields.STOCK);

  /** One draw of so many is among the weakest. */
  private static final int WEAKEST_DRAWS = 16;

  private HoldingFacts() {}

  static void state(DrawnCut cut, FactSheet sheet) {
    cut.checkHold();
    Setup setup = cut.setup();
    Hold hold = setup.hold();
    List<Assumption> assumed = HoldAssumptions.of(hold, setup.stock());
    Basis basis =
        ForceFacts.basis(cut).and(VISE).assuming(assumed).assuming(List.of(EndLoad.REBOUND));
    Basis vise = VISE.assuming(assumed);
    int n = cut.draws();
    stateClaim(cut, sheet);
    sheet.yesNo(MAY_ROCK, DrawSet.where(n, draw -> rocks(cut, draw)), vise);
    sheet.number(CLAMPING_FORCE, n, cut::clampingForceN, vise);
    sheet.number(JAW_FRICTION, n, draw -> cut.sample().at(Unknown.FRICTION, draw), vise);
    sheet.number(SLIP_MARGIN, n, cut.ofHold(s -> s.margins().slip()), basis);
    sheet.number(LIFT_MARGIN, n, cut.ofHold(s -> s.margins().lift()), basis);
    sheet.number(TIP_MARGIN_FIXED, n, cut.ofHold(s -> s.margins().tipTowardFixed()), basis);
    sheet.number(TIP_MARGIN_MOVABLE, n, cut.ofHold(s -> s.margins().tipAway()), basis);
    sheet.number(NO_GAP_MARGIN, n, cut.ofHold(DrawnHold.State::gapMargin), basis);
    sheet.number(HOLDING_MARGIN, n, cut.ofHold(s -> s.margins().combined()), basis);
    sheet.number(LEAST_HOLD_MARGIN, n, cut.ofHold(s -> s.margins().hold()), basis);
    stateWeakestWay(cut, sheet, basis);
    sheet.number(CONTACT_RATIO, n, cut.ofHold(s -> s.contactHeightM() / cut.hold().gripM()), basis);
    sheet.number(JAW_GAP_DEPTH, n, cut.ofHold(s -> cut.hold().gripM() - s.contactHeightM()), basis);
    sheet.number(CONTACT_LENGTH, cut.hold().lengthM(), vise);
    sheet.number(
        TURNING_STIFFNESS_FIXED, n, cut.ofHold(DrawnHold.State::turningTowardNmPerRad), basis);
    sheet.number(
        TURNING_STIFFNESS_MOVABLE, n, cut.ofHold(DrawnHold.State::turningAwayNmPerRad), basis);
    sheet.number(JAW_PRESSURE_RATIO, n, held(cut, DrawnHold.State::pressureRatio), basis);
    sheet.number(CLAMP_BOW, n, cut.ofHold(DrawnHold.State::bowM), vise);
    sheet.number(BEST_PACKING_DEPTH, cut.bestPackingDepthM(), basis);
  }

  /** Where the stock sits along the jaws. */
  static void statePlace(Setup setup, FactSheet sheet) {
    Hold hold = setup.hold();
    double lengthM = setup.stock().lengthM();
    Basis basis = Basis.on(HoldFields.ALONG, HoldFields.VISE, StockFields.LENGTH_X);
    int feed = setup.cut().feed() == FeedDirection.PLUS_X ? 1 : -1;
    sheet.number(EXIT_OVERHANG, JawSpan.exitOverhangM(hold, lengthM, feed), basis);
    if (hold.alongM() == null) {
      sheet.missing(RACKING_RATIO, basis);
    } else {
      sheet.number(RACKING_RATIO, JawSpan.of(hold, lengthM).rackingRatio(), basis);
    }
  }

  private static void stateWeakestWay(DrawnCut cut, FactSheet sheet, Basis basis) {
    List<DrawnHold.Margins> weakest =
        IntStream.range(0, cut.draws())
            .mapToObj(cut::state)
            .filter(Objects::nonNull)
            .map(DrawnHold.State::margins)
            .sorted(Comparator.comparingDouble(DrawnHold.Margins::hold))
            .limit(Math.max(1, cut.draws() / WEAKEST_DRAWS))
            .toList();
    Map<WeakestWay, Integer> counts = new EnumMap<>(WeakestWay.class);
    weakest.forEach(margins -> counts.merge(WeakestWay.of(margins), 1, Integer::sum));
    counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .ifPresent(way -> sheet.word(WEAKEST_WAY, way.getKey(), basis));
  }

  private static boolean rocks(DrawnCut cut, int draw) {
    DrawnHold.State state = cut.state(draw);
    return state != null && state.rocks();
  }

  /** A number of the draws that hold. */
  private static IntToDoubleFunction held(DrawnCut cut, ToDoubleFunction<DrawnHold.State> number) {
    IntToDoubleFunction all = cut.ofHold(number);
    return draw -> cut.holds(draw) ? all.applyAsDouble(draw) : Double.NaN;
  }

  private static void stateClaim(DrawnCut cut, FactSheet sheet) {
    Hold hold = cut.setup().hold();
    Basis stated = Basis.of(STATED_CLAMPING_FORCE);
    if (hold.clampingForceN() == null) {
      sheet.missing(STATED_CLAMPING_FORCE, stated);
    } else {
      sheet.number(
          STATED_CLAMPING_FORCE,
          cut.draws(),
          draw -> cut.sample().at(Unknown.CLAMPING_FORCE, draw),
          stated);
    }
    sheet.stated(VISE_FORCE, hold.vise().greatestClampingForceN());
  }
}

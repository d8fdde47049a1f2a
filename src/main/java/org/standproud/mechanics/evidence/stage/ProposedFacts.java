package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.AXIAL_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.BACKLASH;
import static org.standproud.mechanics.evidence.Vocabulary.CHIPPED_TEETH;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMPS_TOLD;
import static org.standproud.mechanics.evidence.Vocabulary.COOLANT;
import static org.standproud.mechanics.evidence.Vocabulary.CORNER_RADIUS;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_DIAMETER;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_KIND;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_OFFSET;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_RUN_OUT;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_STICK_OUT;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTING_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.DEBURRED;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_CONDITION;
import static org.standproud.mechanics.evidence.Vocabulary.FEED_DIRECTION;
import static org.standproud.mechanics.evidence.Vocabulary.FEED_DRIVE;
import static org.standproud.mechanics.evidence.Vocabulary.FEED_PER_TOOTH;
import static org.standproud.mechanics.evidence.Vocabulary.FIXED_JAW_PACKING;
import static org.standproud.mechanics.evidence.Vocabulary.FIXED_PACKING_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.FORCE_LAW;
import static org.standproud.mechanics.evidence.Vocabulary.GRIP_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.HIGH_SPOT;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_HEIGHT;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_SURFACE;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_WIDTH;
import static org.standproud.mechanics.evidence.Vocabulary.MACHINE_KIND;
import static org.standproud.mechanics.evidence.Vocabulary.MARKED_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.MATERIAL_GROUP;
import static org.standproud.mechanics.evidence.Vocabulary.MISSING_TEETH;
import static org.standproud.mechanics.evidence.Vocabulary.MOVABLE_JAW_PACKING;
import static org.standproud.mechanics.evidence.Vocabulary.MOVABLE_PACKING_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.OPERATION;
import static org.standproud.mechanics.evidence.Vocabulary.OTHER_SLIDES_LOCKED;
import static org.standproud.mechanics.evidence.Vocabulary.PRELOADED_SCREW;
import static org.standproud.mechanics.evidence.Vocabulary.SEAT;
import static org.standproud.mechanics.evidence.Vocabulary.SLIDE_LOCKED;
import static org.standproud.mechanics.evidence.Vocabulary.SPINDLE_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.STAGE;
import static org.standproud.mechanics.evidence.Vocabulary.STICK_OUT;
import static org.standproud.mechanics.evidence.Vocabulary.STOCK_DENSITY;
import static org.standproud.mechanics.evidence.Vocabulary.STOCK_HEIGHT;
import static org.standproud.mechanics.evidence.Vocabulary.STOCK_LENGTH;
import static org.standproud.mechanics.evidence.Vocabulary.STOCK_SURFACE;
import static org.standproud.mechanics.evidence.Vocabulary.STOCK_THICKNESS;
import static org.standproud.mechanics.evidence.Vocabulary.STOP;
import static org.standproud.mechanics.evidence.Vocabulary.STOP_HEIGHT;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_FEED;
import static org.standproud.mechanics.evidence.Vocabulary.TOOL_MATERIAL;
import static org.standproud.mechanics.evidence.Vocabulary.TOOTH_COUNT;
import static org.standproud.mechanics.evidence.Vocabulary.TOOTH_FREQUENCY;
import static org.standproud.mechanics.evidence.Vocabulary.VISE_RUN_OUT;
import static org.standproud.mechanics.evidence.Vocabulary.WIPER;

import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Machine;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** The facts that the request itself states, or that follow from it by plain arithmetic. */
final class ProposedFacts {

  private ProposedFacts() {}

  /**
   * States them.
   *
   * @param sample the draws of the feed
   * @param assumedFeed what was assumed of the feed
   */
  static void state(
      Setup setup, JointSample sample, List<Assumption> assumedFeed, FactSheet sheet) {
    stateStock(setup, sheet);
    stateHold(setup.hold(), ReachFacts.isUnnamedBlock(setup), sheet);
    stateMachine(setup.machine(), sheet);
    stateCutter(setup.cutter(), sheet);
    stateCut(setup, sample, assumedFeed, sheet);
  }

  private static void stateStock(Setup setup, FactSheet sheet) {
    Stock stock = setup.stock();
    sheet.stated(MATERIAL_GROUP, stock.material().group());
    sheet.stated(FORCE_LAW, stock.material().forceLaw());
    sheet.stated(STOCK_DENSITY, stock.material().densityKgPerM3());
    sheet.stated(STOCK_SURFACE, stock.surface());
    sheet.stated(STOCK_LENGTH, stock.lengthM());
    sheet.stated(STOCK_THICKNESS, stock.thicknessM());
    sheet.stated(STOCK_HEIGHT, stock.heightM());
    sheet.stated(HIGH_SPOT, stock.highSpotM());
    sheet.stated(DEBURRED, stock.deburred());
    sheet.number(STICK_OUT, setup.stickOutM(), Basis.on(StockFields.HEIGHT, HoldFields.GRIP_DEPTH));
  }

  private static void stateHold(Hold hold, boolean unnamedBlock, FactSheet sheet) {
    sheet.stated(GRIP_DEPTH, hold.gripDepthM());
    sheet.stated(SEAT, hold.seat());
    sheet.stated(STOP, hold.stop());
    sheet.stated(STOP_HEIGHT, hold.stopHeightM());
    sheet.stated(CLAMPS_TOLD, !hold.beside().isEmpty() || unnamedBlock);
    sheet.stated(JAW_SURFACE, hold.vise().jawSurface());
    sheet.stated(JAW_WIDTH, hold.vise().jawWidthM());
    sheet.stated(JAW_HEIGHT, hold.vise().jawHeightM());
    sheet.stated(VISE_RUN_OUT, hold.viseRunOutM());
    statePacking(hold, JawSide.FIXED, FIXED_JAW_PACKING, FIXED_PACKING_DEPTH, sheet);
    statePacking(hold, JawSide.MOVABLE, MOVABLE_JAW_PACKING, MOVABLE_PACKING_DEPTH, sheet);
  }

  private static void statePacking(
      Hold hold, JawSide side, Fact kind, Fact depth, FactSheet sheet) {
    Optional<Packing> packing =
        hold.packing().stream().filter(piece -> piece.side() == side).findFirst();
    if (packing.isPresent()) {
      sheet.stated(kind, packing.get().kind());
      sheet.stated(depth, packing.get().depthM());
    } else {
      sheet.put(kind, new Value.Text("none"), Basis.of(kind));
      sheet.missing(depth, Basis.of(depth));
    }
  }

  private static void stateMachine(Machine machine, FactSheet sheet) {
    sheet.stated(MACHINE_KIND, machine.kind());
    sheet.stated(BACKLASH, machine.backlashM());
    sheet.stated(PRELOADED_SCREW, machine.preloadedScrew());
  }

  private static void stateCutter(Cutter cutter, FactSheet sheet) {
    sheet.stated(CUTTER_KIND, cutter.kind());
    sheet.stated(TOOL_MATERIAL, cutter.toolMaterial());
    sheet.stated(EDGE_CONDITION, cutter.edge());
    sheet.stated(CUTTER_DIAMETER, cutter.diameterM());
    sheet.stated(TOOTH_COUNT, (double) cutter.teeth());
    sheet.stated(MISSING_TEETH, (double) cutter.missingTeeth().size());
    sheet.stated(CHIPPED_TEETH, (double) cutter.chippedTeeth().size());
    sheet.stated(CORNER_RADIUS, cutter.cornerRadiusM());
    sheet.stated(WIPER, cutter.wiperM());
    sheet.stated(CUTTER_STICK_OUT, cutter.stickOutM());
    sheet.stated(CUTTER_RUN_OUT, cutter.runOutM());
    sheet.stated(MARKED_SPEED, cutter.greatestSpeedRevPerS());
  }

  private static void stateCut(
      Setup setup, JointSample sample, List<Assumption> assumedFeed, FactSheet sheet) {
    Cut cut = setup.cut();
    Cutter cutter = setup.cutter();
    double teethPerS = cut.spindleSpeedRevPerS() * cutter.teeth();
    Basis speed = Basis.on(CutFields.SPINDLE, RequestFields.CUTTER);
    Basis feed = Basis.of(FEED_PER_TOOTH).assuming(assumedFeed);
    sheet.stated(OPERATION, cut.operation());
    sheet.stated(STAGE, cut.stage());
    sheet.stated(AXIAL_DEPTH, cut.axialDepthM());
    sheet.stated(CUTTER_OFFSET, cut.offsetM());
    sheet.stated(FEED_DIRECTION, cut.feed());
    sheet.stated(FEED_DRIVE, cut.feedDrive());
    sheet.number(FEED_PER_TOOTH, sample.draws(), draw -> sample.at(Unknown.FEED, draw), feed);
    sheet.stated(SPINDLE_SPEED, cut.spindleSpeedRevPerS());
    sheet.number(
        TABLE_FEED,
        sample.draws(),
        draw -> teethPerS * sample.at(Unknown.FEED, draw),
        speed.and(feed));
    sheet.number(CUTTING_SPEED, Math.PI * cutter.diameterM() * cut.spindleSpeedRevPerS(), speed);
    sheet.number(TOOTH_FREQUENCY, teethPerS, speed);
    sheet.stated(SLIDE_LOCKED, cut.slideLocked());
    sheet.stated(OTHER_SLIDES_LOCKED, cut.otherSlidesLocked());
    sheet.stated(COOLANT, cut.coolant());
  }
}

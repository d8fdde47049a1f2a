package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.AXIAL_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.BACKLASH;
import static org.standproud.mechanics.evidence.Vocabulary.CHIPPED_TEETH;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMPS_TOLD;
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
import org.standproud.mechanics.evidence.Assumption;
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
    sheet.word(MATERIAL_GROUP, stock.material().group(), Basis.on("stock.material"));
    sheet.word(
        FORCE_LAW, stock.material().forceLaw(), Basis.on("stock.material.forceCoefficients"));
    sheet.number(STOCK_DENSITY, stock.material().densityKgPerM3(), Basis.on("stock.material"));
    sheet.given(
        STOCK_SURFACE,
        stock.surface(),
        "stock.surface",
        "whether the gripped faces are machined, rolled, sawn or cast");
    sheet.number(STOCK_LENGTH, stock.lengthM(), Basis.on("stock.length"));
    sheet.number(STOCK_THICKNESS, stock.thicknessM(), Basis.on("stock.thickness"));
    sheet.number(STOCK_HEIGHT, stock.heightM(), Basis.on("stock.height"));
    sheet.given(
        HIGH_SPOT,
        stock.highSpotM(),
        "stock.highSpot",
        "the highest spot of the gripped faces, with a straight edge and feelers");
    sheet.given(
        DEBURRED, stock.deburred(), "stock.deburred", "whether the gripped edges were deburred");
    sheet.number(STICK_OUT, setup.stickOutM(), Basis.on("stock.height", "hold.gripDepth"));
  }

  private static void stateHold(Hold hold, boolean unnamedBlock, FactSheet sheet) {
    sheet.number(GRIP_DEPTH, hold.gripDepthM(), Basis.on("hold.gripDepth"));
    sheet.given(SEAT, hold.seat(), "hold.seat", "what the underside of the stock sits on");
    sheet.given(STOP, hold.stop(), "hold.stop", "whether a stop stands at either end");
    sheet.given(
        STOP_HEIGHT,
        hold.stopHeightM(),
        "hold.stopHeight",
        "the height of the top of the stop above the jaws");
    sheet.yesNo(CLAMPS_TOLD, !hold.clamps().isEmpty() || unnamedBlock, Basis.on("hold.clamps"));
    sheet.word(JAW_SURFACE, hold.vise().jawSurface(), Basis.on("hold.vise"));
    sheet.number(JAW_WIDTH, hold.vise().jawWidthM(), Basis.on("hold.vise"));
    sheet.number(JAW_HEIGHT, hold.vise().jawHeightM(), Basis.on("hold.vise"));
    sheet.given(
        VISE_RUN_OUT,
        hold.viseRunOutM(),
        "hold.viseRunOut",
        "the run of the fixed jaw along the table travel, with an indicator");
    statePacking(hold, JawSide.FIXED, FIXED_JAW_PACKING, FIXED_PACKING_DEPTH, sheet);
    statePacking(hold, JawSide.MOVABLE, MOVABLE_JAW_PACKING, MOVABLE_PACKING_DEPTH, sheet);
  }

  private static void statePacking(
      Hold hold, JawSide side, Fact kind, Fact depth, FactSheet sheet) {
    Basis basis = Basis.on("hold.packing");
    Optional<Packing> packing =
        hold.packing().stream().filter(piece -> piece.side() == side).findFirst();
    if (packing.isPresent()) {
      sheet.word(kind, packing.get().kind(), basis);
      sheet.number(depth, packing.get().depthM(), basis);
    } else {
      sheet.put(kind, new Value.Text("none"), basis);
      sheet.missing(depth, "there is no packing on the " + side.words(), basis);
    }
  }

  private static void stateMachine(Machine machine, FactSheet sheet) {
    Basis basis = Basis.on("machine");
    sheet.word(MACHINE_KIND, machine.kind(), basis);
    sheet.number(BACKLASH, machine.backlashM(), basis);
    sheet.yesNo(PRELOADED_SCREW, machine.preloadedScrew(), basis);
  }

  private static void stateCutter(Cutter cutter, FactSheet sheet) {
    Basis basis = Basis.on("cutter");
    sheet.word(CUTTER_KIND, cutter.kind(), basis);
    sheet.word(TOOL_MATERIAL, cutter.toolMaterial(), basis);
    sheet.given(
        EDGE_CONDITION,
        cutter.edge(),
        "cutter.edge",
        "the state of the cutting edges, with a loupe");
    sheet.number(CUTTER_DIAMETER, cutter.diameterM(), basis);
    sheet.number(TOOTH_COUNT, cutter.teeth(), basis);
    sheet.number(MISSING_TEETH, cutter.missingTeeth().size(), basis);
    sheet.number(CHIPPED_TEETH, cutter.chippedTeeth().size(), basis);
    sheet.number(CORNER_RADIUS, cutter.cornerRadiusM(), basis);
    sheet.number(WIPER, cutter.wiperM(), basis);
    sheet.number(CUTTER_STICK_OUT, cutter.stickOutM(), basis);
    sheet.given(
        CUTTER_RUN_OUT,
        cutter.runOutM(),
        "cutter.runOut",
        "the run-out of the cutter in the spindle, with an indicator");
  }

  private static void stateCut(
      Setup setup, JointSample sample, List<Assumption> assumedFeed, FactSheet sheet) {
    Cut cut = setup.cut();
    Cutter cutter = setup.cutter();
    double teethPerS = cut.spindleSpeedRevPerS() * cutter.teeth();
    Basis speed = Basis.on("cut.spindleSpeed", "cutter");
    Basis feed = Basis.on("cut.feedPerTooth").assuming(assumedFeed);
    sheet.word(OPERATION, cut.operation(), Basis.on("cut.operation"));
    sheet.word(STAGE, cut.stage(), Basis.on("cut.stage"));
    sheet.number(AXIAL_DEPTH, cut.axialDepthM(), Basis.on("cut.axialDepth"));
    sheet.number(CUTTER_OFFSET, cut.offsetM(), Basis.on("cut.offset"));
    sheet.word(FEED_DIRECTION, cut.feed(), Basis.on("cut.feed"));
    sheet.word(FEED_DRIVE, cut.feedDrive(), Basis.on("cut.feedDrive"));
    sheet.number(FEED_PER_TOOTH, sample.draws(), draw -> sample.at(Unknown.FEED, draw), feed);
    sheet.number(SPINDLE_SPEED, cut.spindleSpeedRevPerS(), Basis.on("cut.spindleSpeed"));
    sheet.number(
        TABLE_FEED,
        sample.draws(),
        draw -> teethPerS * sample.at(Unknown.FEED, draw),
        speed.and(feed));
    sheet.number(CUTTING_SPEED, Math.PI * cutter.diameterM() * cut.spindleSpeedRevPerS(), speed);
    sheet.number(TOOTH_FREQUENCY, teethPerS, speed);
    sheet.given(
        SLIDE_LOCKED,
        cut.slideLocked(),
        "cut.slideLocked",
        "whether the X slide is partly locked for drag");
    sheet.given(
        OTHER_SLIDES_LOCKED,
        cut.otherSlidesLocked(),
        "cut.otherSlidesLocked",
        "whether the slides that do not feed are locked");
  }
}

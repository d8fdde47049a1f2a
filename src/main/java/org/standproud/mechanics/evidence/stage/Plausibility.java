package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.screw.ScrewThread;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Hold;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.CutterFields;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.MachineFields;
import org.standproud.setup.request.StockFields;

/**
 * Whether the values of a set-up go together. A value may lie within the range of its field and
 * still be a slip of a digit when it is set against the rest; what was meant is then asked, and
 * nothing is computed from it. The limits lie well beyond anything a shop has: common practice, no
 * source.
 */
final class Plausibility {

  private static final double MOST_TORQUE_NM = 200;
  private static final double MOST_OVER_VISE = 2.5;
  private static final double MOST_VISE_RUN_OUT_M = 1e-3;
  private static final double MOST_CUTTER_RUN_OUT_M = 0.5e-3;
  private static final double MOST_HIGH_SPOT_M = 2e-3;
  private static final double LEAST_SPINDLE_N_PER_M = 2e6;
  private static final double MOST_SHANK = 2;
  private static final double COMMON_SHANK_M = 12e-3;

  /** A little over the greatest feed is no slip: the cut is judged at it, and a card says so. */
  private static final double MOST_OVER_FEED = 1.5;

  private static final double MOST_HAND_FEED_M_PER_S = 3.0 / 60;

  /**
   * Note of a cantilever strip in units of {@code sqrt(D/(rho h))/a^2}: beam formula 3.516/(2 pi);
   * a plate clamped at one edge lies within a hundredth or two of it (Leissa, NASA SP-160, 1969).
   */
  private static final double CANTILEVER_NOTE = 3.516 / (2 * Math.PI);

  /** How far a measured note may lie above that of a plate clamped in rock: error of both. */
  private static final double MOST_OVER_ROCK = 1.2;

  private static final String FEED =
      FieldPointer.to(CutFields.FEED_PER_TOOTH) + ", " + FieldPointer.to(CutFields.SPINDLE);

  private final List<String> questions = new ArrayList<>();

  private Plausibility() {}

  /** What has to be asked before a set-up can be judged; empty if its values go together. */
  static List<String> questions(Setup setup) {
    Plausibility plausibility = new Plausibility();
    plausibility.hold(setup.hold());
    plausibility.stock(setup);
    plausibility.note(setup);
    plausibility.cutter(setup.cutter());
    plausibility.machine(setup.machine());
    plausibility.feed(setup.machine(), setup.cut(), setup.cutter());
    return plausibility.questions;
  }

  private void ask(boolean odd, String question, Object... values) {
    if (odd) {
      questions.add(String.format(Locale.ROOT, question, values));
    }
  }

  private void hold(Hold hold) {
    Band torque = hold.handleTorqueNm();
    if (torque != null) {
      double forceN = forceN(hold, torque);
      double allowedN = hold.vise().greatestClampingForceN();
      ask(
          torque.likely() > MOST_TORQUE_NM || forceN > MOST_OVER_VISE * allowedN,
          "the torque on the handle ("
              + FieldPointer.to(HoldFields.HANDLE_TORQUE)
              + "): %.0f N.m is no pull of a hand, and would"
              + " press with %.0f kN in a vise that allows %.0f kN",
          torque.likely(),
          forceN / 1e3,
          allowedN / 1e3);
    }
    Double runOut = hold.viseRunOutM();
    ask(
        runOut != null && runOut > MOST_VISE_RUN_OUT_M,
        "how far the fixed jaw runs out ("
            + FieldPointer.to(HoldFields.VISE_RUN_OUT)
            + "): %.1f mm is more than any vise that was"
            + " indicated",
        runOut == null ? 0 : runOut * 1e3);
  }

  /** Force of a torque; nothing where the screw is outside its formula, which then refuses it. */
  private static double forceN(Hold hold, Band torque) {
    try {
      return ScrewThread.forceN(hold.vise().screw(), torque).likely();
    } catch (OutsideValidity refused) {
      return 0;
    }
  }

  private void stock(Setup setup) {
    Double spot = setup.stock().highSpotM();
    ask(
        spot != null && spot > MOST_HIGH_SPOT_M,
        "the high spot of the gripped faces ("
            + FieldPointer.to(StockFields.HIGH_SPOT)
            + "): %.1f mm is a step, not a spot",
        spot == null ? 0 : spot * 1e3);
  }

  private void note(Setup setup) {
    Band note = setup.hold().measured().noteHz();
    if (note == null) {
      return;
    }
    Stock stock = setup.stock();
    Material material = stock.material();
    double poisson = material.poissonsRatio();
    double rockHz =
        CANTILEVER_NOTE
            * stock.thicknessM()
            / (setup.stickOutM() * setup.stickOutM())
            * Math.sqrt(
                material.youngsModulusPa().high()
                    / (12 * (1 - poisson * poisson) * material.densityKgPerM3()));
    ask(
        note.low() > MOST_OVER_ROCK * rockHz,
        "the note of the plate when tapped ("
            + FieldPointer.to(HoldFields.MEASURED_NOTE)
            + "): %.0f Hz is more than this plate"
            + " could have if it were clamped in rock, %.0f Hz; it is not its lowest note",
        note.low(),
        rockHz);
  }

  private void cutter(Cutter cutter) {
    double shank = cutter.shankDiameterM();
    ask(
        cutter.kind() == CutterKind.END_MILL
            && shank > COMMON_SHANK_M
            && shank > MOST_SHANK * cutter.diameterM(),
        "the diameter of the shank ("
            + FieldPointer.to(CutterFields.SHANK)
            + "): %.0f mm on a cutter of %.1f mm",
        shank * 1e3,
        cutter.diameterM() * 1e3);
    Double runOut = cutter.runOutM();
    ask(
        runOut != null && runOut > MOST_CUTTER_RUN_OUT_M,
        "the run-out of the cutter ("
            + FieldPointer.to(CutterFields.RUN_OUT)
            + "): %.2f mm leaves one tooth to cut alone",
        runOut == null ? 0 : runOut * 1e3);
  }

  private void machine(Machine machine) {
    double stiffness = machine.spindleStiffnessNPerM().likely();
    ask(
        stiffness < LEAST_SPINDLE_N_PER_M,
        "the stiffness of the spindle ("
            + FieldPointer.to(MachineFields.SPINDLE_STIFFNESS)
            + "): %.2f N/um is that of a hand"
            + " drill",
        stiffness / 1e6);
  }

  private void feed(Machine machine, Cut cut, Cutter cutter) {
    double feed = cut.feedPerToothM().likely() * cutter.teeth() * cut.spindleSpeedRevPerS();
    boolean power = cut.feedDrive() == FeedDrive.POWER;
    Double greatest = machine.greatestFeedMPerS();
    ask(
        power && greatest != null && feed > MOST_OVER_FEED * greatest,
        "the feed ("
            + FEED
            + "): together they ask for %.0f mm/min of a"
            + " machine that feeds at most %.0f mm/min",
        feed * 6e4,
        greatest == null ? 0 : greatest * 6e4);
    ask(
        !power && feed > MOST_HAND_FEED_M_PER_S,
        "the feed (" + FEED + "): no hand winds %.0f mm/min",
        feed * 6e4);
  }
}

package org.standproud.mechanics.evidence;

import static org.standproud.setup.units.QuantityKind.ANGLE;
import static org.standproud.setup.units.QuantityKind.FORCE;
import static org.standproud.setup.units.QuantityKind.FREQUENCY;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.SMALL_LENGTH;
import static org.standproud.setup.units.QuantityKind.STIFFNESS;
import static org.standproud.setup.units.QuantityKind.TIME;
import static org.standproud.setup.units.QuantityKind.TORQUE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.mechanics.evidence.Fact.Leeway;
import org.standproud.setup.CutterKind;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.MachineKind;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Mode;
import org.standproud.setup.Operation;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Seat;
import org.standproud.setup.Stage;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.Worded;
import org.standproud.setup.units.QuantityKind;

/**
 * The names that rule cards may use, each with its meaning, unit, range and the formula behind it.
 * Margins are capacity over demand: above one it holds.
 */
public final class Vocabulary {

  private static final List<Fact> ALL = new ArrayList<>();

  private static final String SAID = "as the request says";

  /** Greatest margin ever reported; a larger one means the demand is next to nothing. */
  public static final double GREATEST_MARGIN = 1000;

  // What is proposed.
  public static final Fact OPERATION =
      word("operation", Operation.values(), "Which face of the standing plate is milled.");
  public static final Fact STAGE = word("stage", Stage.values(), "What the pass is for.");
  public static final Fact MATERIAL_GROUP =
      word("material group", MaterialGroup.values(), "ISO 513 group of the stock.");
  public static final Fact STOCK_DENSITY =
      number(
          "stock density",
          QuantityKind.DENSITY,
          100,
          25_000,
          "Density of the stock, which tells magnesium and titanium from heavier metal.",
          SAID);
  public static final Fact STOCK_SURFACE =
      word("stock surface", StockSurface.values(), "Condition of the gripped faces.");
  public static final Fact STOCK_LENGTH = length("stock length", 6, "Length along the jaws.");
  public static final Fact STOCK_THICKNESS =
      length("stock thickness", 1, "Thickness across the jaws.");
  public static final Fact STOCK_HEIGHT = length("stock height", 2, "Whole height of the stock.");
  public static final Fact HIGH_SPOT =
      length(
          "high spot", 0.01, "Greatest height of a high spot on a gripped face.", new Leeway(0, 1));
  public static final Fact DEBURRED = yesNo("deburred", "Whether the gripped edges were deburred.");
  public static final Fact GRIP_DEPTH =
      length("grip depth", 1, "Height of stock inside the jaws.", new Leeway(0.5, 4));
  public static final Fact STICK_OUT =
      computed("stick-out", LENGTH, 0, 2, "Height of stock above the jaws.", "Setup.stickOutM");
  public static final Fact WALL_LEFT =
      computed(
          "wall left",
          LENGTH,
          0,
          1,
          "Thickness of the standing wall once the pass is done.",
          "stock thickness, less radial depth on a broad side");
  public static final Fact SEAT = word("seat", Seat.values(), "What the underside sits on.");
  public static final Fact STOP = word("stop", Stop.values(), "Where a stop stands.");
  public static final Fact STOP_HEIGHT =
      length("stop height", 0.5, "Height of the top of a stop above the jaws.", new Leeway(0.2, 2));
  public static final Fact CLAMPS_TOLD =
      yesNo("clamps told", "Whether the request tells of clamps that stand beside the stock.");
  public static final Fact JAW_SURFACE =
      word("jaw surface", JawSurface.values(), "The faces of the jaws.");
  public static final Fact JAW_WIDTH = length("jaw width", 2, "Width of the jaws.");
  public static final Fact JAW_HEIGHT = length("jaw height", 0.5, "Height of the jaw face.");
  public static final Fact VISE_RUN_OUT =
      length(
          "vise run-out",
          0.01,
          "Deviation of the fixed jaw from the table travel.",
          new Leeway(0, 1));
  public static final Fact FIXED_JAW_PACKING =
      packing("fixed jaw packing", "Packing against the fixed jaw.");
  public static final Fact MOVABLE_JAW_PACKING =
      packing("movable jaw packing", "Packing against the movable jaw.");
  public static final Fact FIXED_PACKING_DEPTH =
      length(
          "fixed packing depth",
          0.5,
          "Depth of the packing on the fixed jaw below its top.",
          new Leeway(0.2, 5));
  public static final Fact MOVABLE_PACKING_DEPTH =
      length(
          "movable packing depth",
          0.5,
          "Depth of the packing on the movable jaw below its top.",
          new Leeway(0.2, 5));
  public static final Fact MACHINE_KIND =
      word("machine kind", MachineKind.values(), "How the machine is driven.");
  public static final Fact BACKLASH = length("backlash", 0.01, "Lost motion of the X screw.");
  public static final Fact PRELOADED_SCREW =
      yesNo("preloaded screw", "Whether the X screw has no lost motion under load.");
  public static final Fact SLIDE_LOCKED =
      yesNo("slide locked", "Whether the X slide is partly locked to add drag.");
  public static final Fact OTHER_SLIDES_LOCKED =
      yesNo("other slides locked", "Whether the slides that do not feed are locked.");
  public static final Fact CUTTER_KIND =
      word("cutter kind", CutterKind.values(), "Family of the cutter.");
  public static final Fact TOOL_MATERIAL =
      word("tool material", ToolMaterial.values(), "What the edge is made of.");
  public static final Fact EDGE_CONDITION =
      word("edge condition", EdgeCondition.values(), "State of the cutting edges.");
  public static final Fact CUTTER_DIAMETER =
      length("cutter diameter", 1, "DC, the cutting diameter.", new Leeway(0.5, 2));
  public static final Fact TOOTH_COUNT = count("tooth count", 100, "ZEFP, effective teeth.");
  public static final Fact MISSING_TEETH = count("missing teeth", 100, "Teeth that are not there.");
  public static final Fact CHIPPED_TEETH = count("chipped teeth", 100, "Teeth that are chipped.");
  public static final Fact CORNER_RADIUS = length("corner radius", 0.1, "RE of the cutter.");
  public static final Fact WIPER = length("wiper flat", 0.05, "BS, length of the wiper flat.");
  public static final Fact CUTTER_STICK_OUT =
      length(
          "cutter stick-out",
          1,
          "Length from the holder face to the cutting end.",
          new Leeway(0.5, 1.5));
  public static final Fact CUTTER_RUN_OUT =
      length("cutter run-out", 0.005, "Radial run-out, total reading.", new Leeway(0, 1));
  public static final Fact AXIAL_DEPTH =
      length("axial depth", 0.5, "a_p, depth along the axis.", new Leeway(0.05, 1));
  public static final Fact CUTTER_OFFSET =
      number(
          "cutter offset",
          LENGTH,
          -1,
          1,
          "Cutter axis from mid-thickness, positive toward the fixed jaw.",
          SAID);
  public static final Fact FEED_DIRECTION =
      word("feed direction", FeedDirection.values(), "Which way the cutter moves along the jaws.");
  public static final Fact FEED_DRIVE =
      word("feed drive", FeedDrive.values(), "What moves the table.");
  public static final Fact FEED_PER_TOOTH =
      length("feed per tooth", 0.01, "f_z.", new Leeway(0.5, 1.5));
  public static final Fact SPINDLE_SPEED =
      add(
          new Fact(
              "spindle speed",
              new Fact.Number(QuantityKind.SPINDLE_SPEED, 0, 4000),
              "n, turns in a time.",
              SAID,
              new Leeway(0.5, 2)));
  public static final Fact TABLE_FEED =
      computed("table feed", QuantityKind.TABLE_FEED, 0, 2, "v_f = f_z z n.", "f_z z n");
  public static final Fact CUTTING_SPEED =
      computed("cutting speed", QuantityKind.CUTTING_SPEED, 0, 100, "v_c = pi DC n.", "pi DC n");

  // The passes planned: judged by their numbers, computed for none but the cut asked about.
  public static final Fact PASSES_TOLD =
      yesNo("passes told", "Whether the request tells the passes planned on this set-up.");
  public static final Fact NUMBER_OF_PASSES =
      count("number of passes", PlannedCut.MOST, "How many passes are planned.");
  public static final Fact AXIAL_DEPTHS =
      lengths("axial depths of passes", 0, "a_p of each planned pass, in order.", SAID);
  public static final Fact RADIAL_DEPTHS =
      lengths(
          "radial depths of passes",
          0,
          "a_e of each planned pass of a broad side, in order.",
          SAID);
  public static final Fact FEEDS_OF_PASSES =
      list("feeds of passes", SMALL_LENGTH, 0, 0.01, "f_z of each planned pass, in order.", SAID);
  public static final Fact ROUGHING_DEPTHS =
      lengths(
          "roughing depths",
          0,
          "What each planned roughing pass takes off the face, in order.",
          "a_p on a top edge, a_e on a broad side");
  public static final Fact FINISHING_DEPTHS =
      lengths(
          "finishing depths",
          0,
          "What each planned finishing pass takes off the face, in order.",
          "a_p on a top edge, a_e on a broad side");
  public static final Fact ROUGHING_RISES =
      lengths(
          "roughing rises",
          -1,
          "By how much each planned roughing pass but the first takes more off the face than the"
              + " least of those before it; negative where it takes less.",
          "roughing depth less the least before it");
  public static final Fact EARLIER_DEPTHS =
      lengths(
          "earlier depths",
          0,
          "What each planned pass but the last takes off the face, in order.",
          "a_p on a top edge, a_e on a broad side");
  public static final Fact LAST_PASS_DEPTH =
      computed(
          "last pass depth",
          LENGTH,
          0,
          1,
          "What the last planned pass takes off the face.",
          "a_p on a top edge, a_e on a broad side");

  // Engagement.
  public static final Fact MODE = word("mode", Mode.values(), "Climb, conventional or both.");
  public static final Fact RADIAL_DEPTH =
      computed("radial depth", LENGTH, 0, 1, "a_e, width of stock in the cutter.", "Engagement");
  public static final Fact COVERS_STOCK =
      yesNo("cutter spans stock", "Whether the cutter reaches past both sides of the stock.");
  public static final Fact LEAST_COVER =
      computed(
          "least cover",
          LENGTH,
          -1,
          1,
          "Least distance by which the cutter reaches past a side of the stock.",
          "Engagement");
  public static final Fact ENGAGED_TEETH =
      computed("engaged teeth", NUMBER, 0, 100, "Mean number of teeth cutting.", "Engagement");
  public static final Fact ENGAGEMENT_ANGLE =
      computed("engagement angle", ANGLE, 0, 7, "Arc in cut.", "Engagement");
  public static final Fact GREATEST_CHIP =
      computed("greatest chip", SMALL_LENGTH, 0, 0.01, "Greatest chip thickness.", "ChipThickness");
  public static final Fact MEAN_CHIP =
      computed("mean chip", SMALL_LENGTH, 0, 0.01, "Mean chip thickness.", "ChipThickness");
  public static final Fact ENTRY_CHIP =
      computed("entry chip", SMALL_LENGTH, 0, 0.01, "Chip where a tooth enters.", "ChipThickness");
  public static final Fact EXIT_CHIP =
      computed("exit chip", SMALL_LENGTH, 0, 0.01, "Chip where a tooth leaves.", "ChipThickness");

  // Forces on the stock.
  public static final Fact FORCE_LAW =
      word(
          "force law",
          ForceCoefficients.values(),
          "What the cutting force is worked out from: Kienzle's law or a published set.");
  public static final Fact PEAK_TANGENTIAL_FORCE =
      force("peak tangential force", "Greatest tangential force of the cutter.");
  public static final Fact PUSH_PLUS_X =
      force("plus x push", "Greatest push of the cut toward positive X.");
  public static final Fact PUSH_MINUS_X =
      force("minus x push", "Greatest push of the cut toward negative X.");
  public static final Fact PUSH_FIXED =
      force("fixed jaw push", "Greatest push of the cut toward the fixed jaw.");
  public static final Fact PUSH_MOVABLE =
      force("movable jaw push", "Greatest push of the cut toward the movable jaw.");
  public static final Fact LIFT_FORCE = force("lift force", "Greatest pull out of the jaws.");
  public static final Fact LENGTHWISE_FORCE =
      force("lengthwise force", "Greatest force along the jaws, either way.");
  public static final Fact UNSTOPPED_PUSH =
      force("unstopped push", "Greatest force along the jaws toward a side without a stop.");
  public static final Fact LENGTHWISE_BOTH_WAYS =
      yesNo("lengthwise both ways", "Whether the cut pushes both ways along the jaws.");
  public static final Fact LOAD_JAW =
      word("load jaw", JawSide.values(), "The jaw that the cut pushes toward the harder.");

  // First contact.
  public static final Fact FIRST_CONTACT_PULLS =
      yesNo("first contact pulls", "Whether the first bite pulls the stock toward the cutter.");
  public static final Fact FIRST_CONTACT_PULL =
      number(
          "first contact pull",
          FORCE,
          -1e7,
          1e7,
          "Pull of the first bite across the stock toward the side where the cutter stands;"
              + " negative where it pushes into the stock, zero where the cutter axis stands over"
              + " the stock.",
          "FirstContact");
  public static final Fact FIRST_CONTACT_JAW =
      word("first contact jaw", JawSide.values(), "The jaw that the first bite pushes toward.");
  public static final Fact FIRST_CONTACT_FORCE =
      force("first contact force", "Push of the first bites across the stock, to that jaw.");
  public static final Fact FILLING_JUMP =
      computed(
          "filling jump",
          FORCE,
          0,
          1e7,
          "Rise of the force in the plane of the table from the first blow until the whole arc is"
              + " in the stock.",
          "FirstContact: F_fill - F_first");

  // Holding.
  public static final Fact CLAMPING_FORCE = force("clamping force", "Force of the jaws.");
  public static final Fact STATED_CLAMPING_FORCE =
      number("stated clamping force", FORCE, 0, 1e7, "Force the request claims.", SAID);
  public static final Fact VISE_FORCE =
      number("vise force", FORCE, 0, 1e7, "Greatest force the vise may give.", SAID);
  public static final Fact MAY_ROCK =
      yesNo(
          "may rock",
          "Whether the stock may rock in the jaws: on a high spot, a worn or a lifting jaw that"
              + " packing does not take up.");
  public static final Fact JAW_FRICTION =
      computed("jaw friction", NUMBER, 0, 2, "Coefficient of friction at the jaws.", "JawFriction");
  public static final Fact SLIP_MARGIN =
      margin("slip margin", "Friction of the jaws over the force along and out of them.");
  public static final Fact LIFT_MARGIN =
      margin("lift margin", "Friction of the jaws over the pull out of them.");
  public static final Fact TIP_MARGIN_FIXED =
      margin("fixed jaw tip margin", "Limit of tipping over that push.");
  public static final Fact TIP_MARGIN_MOVABLE =
      margin("movable jaw tip margin", "Limit of tipping over that push.");
  public static final Fact NO_GAP_MARGIN =
      margin("gap margin", "Push at which a gap opens at a jaw over the push there is.");
  public static final Fact HOLDING_MARGIN =
      margin("holding margin", "Least multiple of the load that slips, tips and lifts together.");
  public static final Fact CONTACT_RATIO =
      computed(
          "contact ratio", NUMBER, 0, 1, "Part of the grip depth still touching.", "ElasticJaws");
  public static final Fact CONTACT_LENGTH =
      computed(
          "contact length",
          LENGTH,
          0,
          5,
          "Length of stock between the jaws along them.",
          "ViseHolding: the lesser of stock length and jaw width");
  public static final Fact JAW_GAP_DEPTH =
      computed(
          "jaw gap depth",
          LENGTH,
          0,
          0.5,
          "Height of the grip that comes off the fixed jaw at the worst of the cut.",
          "FaceContact: grip depth less the height in contact");
  public static final Fact TURNING_STIFFNESS_FIXED =
      computed(
          "fixed jaw turning stiffness",
          TORQUE,
          0,
          1e9,
          "Moment per radian by which the stock in its jaws withstands a push toward the fixed"
              + " jaw; nothing for a hinge.",
          "ElasticRoot");
  public static final Fact TURNING_STIFFNESS_MOVABLE =
      computed(
          "movable jaw turning stiffness",
          TORQUE,
          0,
          1e9,
          "Moment per radian by which the stock in its jaws withstands a push toward the movable"
              + " jaw; nothing for a hinge.",
          "ElasticRoot");
  public static final Fact JAW_PRESSURE_RATIO =
      computed(
          "jaw pressure ratio",
          NUMBER,
          0,
          1000,
          "Greatest pressure of jaw or packing over the yield of the stock.",
          "JawPressure");
  public static final Fact CLAMP_BOW =
      computed("clamp bow", SMALL_LENGTH, 0, 0.1, "Bow of the stock under the jaws.", "ClampBow");
  public static final Fact BEST_PACKING_DEPTH =
      computed(
          "best packing depth",
          LENGTH,
          0,
          0.5,
          "Depth of a wire on the movable jaw that suits this cut: deeper takes more push toward"
              + " the fixed jaw and less away from it.",
          "BestPackingDepth");

  // The standing plate.
  public static final Fact EDGE_DEFLECTION =
      computed(
          "edge deflection",
          SMALL_LENGTH,
          0,
          0.05,
          "Static deflection under the peak force at the worse of middle and end.",
          "PlateResponse");
  public static final Fact EDGE_STIFFNESS =
      computed(
          "edge stiffness",
          STIFFNESS,
          0,
          1e12,
          "Stiffness across the plate at the softer of middle and end.",
          "PlateResponse");
  public static final Fact NATURAL_FREQUENCY =
      computed(
          "natural frequency",
          FREQUENCY,
          0,
          1e6,
          "First natural frequency of the standing plate on its jaws.",
          "PlateResponse");
  public static final Fact TOOTH_FREQUENCY =
      computed("tooth frequency", FREQUENCY, 0, 1e5, "z n, tooth passing.", "z n");
  public static final Fact TUNING =
      computed(
          "tuning",
          NUMBER,
          0,
          1000,
          "Nearest of the first four tooth-passing harmonics over the first natural frequency; one"
              + " is resonance.",
          "ForcedResponse");
  public static final Fact SLOWER_QUIET_SPEED =
      computed(
          "slower quiet speed",
          QuantityKind.SPINDLE_SPEED,
          0,
          4000,
          "Greatest spindle speed at or below the set one whose tooth blows lie midway between"
              + " harmonics of the first natural frequency.",
          "QuietSpeeds");
  public static final Fact FASTER_QUIET_SPEED =
      computed(
          "faster quiet speed",
          QuantityKind.SPINDLE_SPEED,
          0,
          4000,
          "Least spindle speed above the set one whose tooth blows lie midway between harmonics of"
              + " the first natural frequency, or well above it.",
          "QuietSpeeds");
  public static final Fact VIBRATION_AMPLITUDE =
      computed(
          "vibration amplitude",
          SMALL_LENGTH,
          0,
          0.05,
          "Forced vibration of plate and cutter against each other at the cut.",
          "ForcedResponse");
  public static final Fact STABILITY_MARGIN =
      margin("stability margin", "Depth at which the cut starts to chatter over the depth.");
  public static final Fact SOFTER_MEMBER =
      word(
          "softer member",
          CutMember.values(),
          "Which of cutter and plate has the greater share in what starts the chatter.");
  public static final Fact LOW_IMMERSION =
      yesNo("low immersion", "Whether the arc is too short for the stability model.");

  // Cutter and spindle.
  public static final Fact CUTTER_DEFLECTION =
      computed(
          "cutter deflection",
          SMALL_LENGTH,
          0,
          0.05,
          "Deflection of the cutter, its holder and the spindle.",
          "CutterDeflection");
  public static final Fact CUTTER_STRENGTH_MARGIN =
      margin("cutter strength margin", "Strength of the cutter over its bending stress.");
  public static final Fact CUTTER_SLENDERNESS =
      computed("cutter slenderness", NUMBER, 0, 100, "Cutter stick-out over diameter.", "L over D");
  public static final Fact POWER_MARGIN =
      margin("power margin", "Power at the cutter over the power of the cut.");
  public static final Fact TORQUE_MARGIN =
      margin("torque margin", "Torque at the spindle over the peak torque of the cut.");
  public static final Fact SPEED_RATIO =
      computed(
          "speed ratio",
          NUMBER,
          0,
          1000,
          "Cutting speed over the greatest published.",
          "CuttingSpeedRange");
  public static final Fact FEED_RATIO =
      computed(
          "feed ratio",
          NUMBER,
          0,
          1000,
          "Feed per tooth over the greatest published.",
          "FeedPerToothRange");
  public static final Fact CHIP_MARGIN =
      margin("chip margin", "Greatest chip over the least chip that cuts rather than rubs.");
  public static final Fact SPEED_AVAILABLE =
      yesNo("speed available", "Whether the machine can turn at that speed.");

  // Feed drive.
  public static final Fact POWER_FEED_FITTED =
      yesNo("power feed fitted", "Whether the machine has the drive that the pass asks for.");
  public static final Fact TABLE_FEED_RATIO =
      computed(
          "table feed ratio",
          NUMBER,
          0,
          1000,
          "Table feed under power over the greatest the machine has.",
          "TableFeed");
  public static final Fact TABLE_PULL =
      force("table pull", "Greatest pull of the cut on the table in the direction of its feed.");
  public static final Fact MEAN_TABLE_PULL =
      number(
          "mean table pull",
          FORCE,
          -1e7,
          1e7,
          "Mean pull on the table in the direction of its feed; negative where it is held back.",
          "TablePull");
  public static final Fact TABLE_HOLD_MARGIN =
      margin("table hold margin", "Friction that holds the table over the pull on it.");
  public static final Fact BITE_AFTER_LURCH =
      computed(
          "bite after lurch",
          SMALL_LENGTH,
          0,
          0.05,
          "Chip of the tooth that follows when the table lurches.",
          "TableLurch");

  // Reach.
  public static final Fact HEIGHT_CLEARANCE =
      clearance("height clearance", "Room left between cutter and stock at the knee's lowest.");
  public static final Fact TRAVEL_CLEARANCE =
      clearance("travel clearance", "Table travel left over what the pass needs, worse of X, Y.");
  public static final Fact JAW_CLEARANCE =
      clearance("jaw clearance", "Distance of the cutter from the jaws along the pass.");
  public static final Fact HOLDER_CLEARANCE =
      clearance("holder clearance", "Distance of shank, arbor and holder from the stock.");
  public static final Fact STOP_CLEARANCE =
      clearance(
          "stop clearance",
          "Distance of cutter and holder from the stops, lead-in and run-out counted.");
  public static final Fact CLAMP_CLEARANCE =
      clearance(
          "clamp clearance",
          "Distance of cutter and holder from the clamps beside the stock, lead-in and run-out"
              + " counted.");
  public static final Fact EDGE_LENGTH_LEFT =
      clearance("edge length left", "Cutting edge length less axial depth.");

  // Finish and time.
  public static final Fact ROUGHNESS =
      computed("roughness", QuantityKind.ROUGHNESS, 0, 0.01, "Ra left by the feed.", "FeedMarks");
  public static final Fact SIZE_ERROR =
      computed(
          "size error",
          SMALL_LENGTH,
          0,
          0.05,
          "Deflection of plate and cutter left in the surface.",
          "SurfaceError");
  public static final Fact PASS_TIME =
      computed("pass time", TIME, 0, 1e6, "Time of the pass.", "PassTime");

  private Vocabulary() {}

  /** Every fact, in the order in which evidence lists them. */
  public static List<Fact> all() {
    return List.copyOf(ALL);
  }

  /** Whether the request itself states the fact, so that the shop can change it. */
  public static boolean isStated(Fact fact) {
    return fact.formula().equals(SAID) && fact.number() != null;
  }

  private static Fact add(Fact fact) {
    ALL.add(fact);
    return fact;
  }

  private static Fact number(
      String name, QuantityKind kind, double least, double greatest, String says, String how) {
    return add(new Fact(name, new Fact.Number(kind, least, greatest), says, how));
  }

  private static Fact computed(
      String name, QuantityKind kind, double least, double greatest, String says, String how) {
    return number(name, kind, least, greatest, says, how);
  }

  private static Fact length(String name, double greatest, String says) {
    return number(name, LENGTH, 0, greatest, says, SAID);
  }

  private static Fact length(String name, double greatest, String says, Leeway leeway) {
    return add(new Fact(name, new Fact.Number(LENGTH, 0, greatest), says, SAID, leeway));
  }

  private static Fact lengths(String name, double least, String says, String how) {
    return list(name, LENGTH, least, 1, says, how);
  }

  private static Fact list(
      String name, QuantityKind kind, double least, double greatest, String says, String how) {
    Fact.Number each = new Fact.Number(kind, least, greatest);
    return add(new Fact(name, new Fact.Numbers(each), says, how));
  }

  private static Fact clearance(String name, String says) {
    return number(name, LENGTH, -10, 10, says, "Reach");
  }

  private static Fact count(String name, double greatest, String says) {
    return number(name, NUMBER, 0, greatest, says, SAID);
  }

  private static Fact force(String name, String says) {
    return number(name, FORCE, 0, 1e7, says, "PassForces");
  }

  private static Fact margin(String name, String says) {
    return number(name, NUMBER, 0, GREATEST_MARGIN, says, "capacity over demand");
  }

  private static Fact yesNo(String name, String says) {
    return add(new Fact(name, new Fact.YesNo(), says, SAID));
  }

  private static Fact word(String name, Worded[] allowed, String says) {
    List<String> words = Arrays.stream(allowed).map(Worded::words).toList();
    return add(new Fact(name, new Fact.Word(words), says, SAID));
  }

  private static Fact packing(String name, String says) {
    List<String> words =
        Stream.concat(
                Stream.of("none"), Arrays.stream(PackingKind.values()).map(PackingKind::words))
            .toList();
    return add(new Fact(name, new Fact.Word(words), says, SAID));
  }
}

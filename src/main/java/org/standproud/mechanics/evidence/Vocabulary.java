package org.standproud.mechanics.evidence;

import static org.standproud.setup.units.QuantityKind.ANGLE;
import static org.standproud.setup.units.QuantityKind.FORCE;
import static org.standproud.setup.units.QuantityKind.FREQUENCY;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.STIFFNESS;
import static org.standproud.setup.units.QuantityKind.TIME;
import static org.standproud.setup.units.QuantityKind.TORQUE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.cutter.CutterBeam;
import org.standproud.mechanics.cutter.CutterStanding;
import org.standproud.mechanics.cutter.DrawnCutter;
import org.standproud.mechanics.cutter.LeastChip;
import org.standproud.mechanics.cutter.PublishedRange;
import org.standproud.mechanics.direction.FirstContact;
import org.standproud.mechanics.drive.TableFeed;
import org.standproud.mechanics.drive.TableFriction;
import org.standproud.mechanics.drive.TableLurch;
import org.standproud.mechanics.drive.TablePull;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.evidence.Fact.Leeway;
import org.standproud.mechanics.finish.FeedMarks;
import org.standproud.mechanics.finish.LayerRemoval;
import org.standproud.mechanics.finish.SurfaceError;
import org.standproud.mechanics.force.DrawnForces;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.mechanics.holding.WeakestWay;
import org.standproud.mechanics.holding.contact.ElasticRoot;
import org.standproud.mechanics.holding.contact.StockBow;
import org.standproud.mechanics.holding.jaw.BestPackingDepth;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.jaw.Rocking;
import org.standproud.mechanics.holding.screw.ClampingForce;
import org.standproud.mechanics.holding.slip.GripLimit;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.mechanics.plate.PlateOnFoot;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.reach.SideView;
import org.standproud.mechanics.spindle.SpindleLoad;
import org.standproud.mechanics.time.PassTime;
import org.standproud.mechanics.vibration.CoupledDepth;
import org.standproud.mechanics.vibration.ForcedResponse;
import org.standproud.mechanics.vibration.QuietSpeeds;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.SteadySwing;
import org.standproud.setup.Coolant;
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
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.Worded;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.CutterFields;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.MachineFields;
import org.standproud.setup.request.MaterialFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;
import org.standproud.setup.request.ViseFields;
import org.standproud.setup.units.QuantityKind;

/**
 * The facts that rule cards may use, each with its meaning, unit, range and origin: the field of
 * the request that states it, or the class of the formula that gives it. Margins are capacity over
 * demand: above one it holds.
 */
public final class Vocabulary {

  private static final List<Fact> ALL = new ArrayList<>();

  /** Greatest margin ever reported; a larger one means the demand is next to nothing. */
  public static final double GREATEST_MARGIN = 1000;

  // What is proposed.
  public static final Fact OPERATION =
      word(
          "operation",
          Operation.values(),
          "Which face of the standing plate is milled.",
          at(CutFields.OPERATION));
  public static final Fact STAGE =
      word("stage", Stage.values(), "What the pass is for.", at(CutFields.STAGE));
  public static final Fact MATERIAL_GROUP =
      word(
          "material group",
          MaterialGroup.values(),
          "ISO 513 group of the stock.",
          at(MaterialFields.GROUP));
  public static final Fact STOCK_DENSITY =
      number(
          "stock density",
          QuantityKind.DENSITY,
          100,
          25_000,
          "Density of the stock, which tells magnesium and titanium from heavier metal.",
          at(MaterialFields.DENSITY_RHO));
  public static final Fact STOCK_SURFACE =
      word(
          "stock surface",
          StockSurface.values(),
          "Condition of the gripped faces.",
          at(StockFields.SURFACE, "whether the gripped faces are machined, rolled, sawn or cast"));
  public static final Fact STOCK_LENGTH =
      length("stock length", 6, "Length along the jaws.", at(StockFields.LENGTH_X));
  public static final Fact STOCK_THICKNESS =
      length("stock thickness", 1, "Thickness across the jaws.", at(StockFields.THICKNESS));
  public static final Fact STOCK_HEIGHT =
      length("stock height", 2, "Whole height of the stock.", at(StockFields.HEIGHT));
  public static final Fact HIGH_SPOT =
      length(
          "high spot",
          0.01,
          "Greatest height of a high spot on a gripped face.",
          at(
              StockFields.HIGH_SPOT,
              "the highest spot of the gripped faces, with a straight edge and feelers"),
          new Leeway(0, 1));
  public static final Fact DEBURRED =
      yesNo(
          "deburred",
          "Whether the gripped edges were deburred.",
          at(StockFields.DEBURRED, "whether the gripped edges were deburred"));
  public static final Fact GRIP_DEPTH =
      length(
          "grip depth",
          1,
          "Height of stock inside the jaws.",
          at(HoldFields.GRIP_DEPTH),
          new Leeway(0.5, 4));
  public static final Fact STICK_OUT =
      number("stick-out", LENGTH, 0, 2, "Height of stock above the jaws.", by(Setup.class));
  public static final Fact WALL_LEFT =
      number(
          "wall left",
          LENGTH,
          0,
          1,
          "Thickness of the standing wall once the pass is done.",
          by(StandingCut.class));
  public static final Fact SEAT =
      word(
          "seat",
          Seat.values(),
          "What the underside sits on.",
          at(HoldFields.SEAT, "what the underside of the stock sits on"));
  public static final Fact STOP =
      word(
          "stop",
          Stop.values(),
          "Where a stop stands.",
          at(HoldFields.STOP, "whether a stop stands at either end"));
  public static final Fact STOP_HEIGHT =
      length(
          "stop height",
          0.5,
          "Height of the top of a stop above the jaws.",
          at(HoldFields.STOP_HEIGHT, "the height of the top of the stop above the jaws"),
          new Leeway(0.2, 2));
  public static final Fact CLAMPS_TOLD =
      yesNo(
          "clamps told",
          "Whether the request tells of clamps that stand beside the stock.",
          at(HoldFields.CLAMPS));
  public static final Fact RACKING_RATIO =
      number(
          "racking ratio",
          NUMBER,
          0,
          1000,
          "How far the stock sits beside the screw over how far it may without the movable jaw"
              + " leaving one of its ends.",
          by(JawSpan.class, "where the middle of the stock sits along the jaws"));
  public static final Fact EXIT_OVERHANG =
      number(
          "exit overhang",
          LENGTH,
          0,
          3,
          "Length of stock beyond the jaws at the end where the cutter leaves.",
          by(JawSpan.class));
  public static final Fact JAW_SURFACE =
      word(
          "jaw surface", JawSurface.values(), "The faces of the jaws.", at(ViseFields.JAW_SURFACE));
  public static final Fact JAW_WIDTH =
      length("jaw width", 2, "Width of the jaws.", at(ViseFields.JAW_WIDTH));
  public static final Fact JAW_HEIGHT =
      length("jaw height", 0.5, "Height of the jaw face.", at(ViseFields.JAW_HEIGHT));
  public static final Fact VISE_RUN_OUT =
      length(
          "vise run-out",
          0.01,
          "Deviation of the fixed jaw from the table travel.",
          at(
              HoldFields.VISE_RUN_OUT,
              "the run of the fixed jaw along the table travel, with an indicator"),
          new Leeway(0, 1));
  public static final Fact FIXED_JAW_PACKING =
      packing("fixed jaw packing", "Packing against the fixed jaw.", at(HoldFields.PACKING));
  public static final Fact MOVABLE_JAW_PACKING =
      packing("movable jaw packing", "Packing against the movable jaw.", at(HoldFields.PACKING));
  public static final Fact FIXED_PACKING_DEPTH =
      length(
          "fixed packing depth",
          0.5,
          "Depth of the packing on the fixed jaw below its top.",
          at(HoldFields.PACKING, "there is no packing on the fixed jaw"),
          new Leeway(0.2, 5));
  public static final Fact MOVABLE_PACKING_DEPTH =
      length(
          "movable packing depth",
          0.5,
          "Depth of the packing on the movable jaw below its top.",
          at(HoldFields.PACKING, "there is no packing on the movable jaw"),
          new Leeway(0.2, 5));
  public static final Fact MACHINE_KIND =
      word(
          "machine kind",
          MachineKind.values(),
          "How the machine is driven.",
          at(MachineFields.KIND));
  public static final Fact BACKLASH =
      length("backlash", 0.01, "Lost motion of the X screw.", at(MachineFields.BACKLASH));
  public static final Fact PRELOADED_SCREW =
      yesNo(
          "preloaded screw",
          "Whether the X screw has no lost motion under load.",
          at(MachineFields.PRELOADED));
  public static final Fact SLIDE_LOCKED =
      yesNo(
          "slide locked",
          "Whether the X slide is partly locked to add drag.",
          at(CutFields.SLIDE_LOCKED, "whether the X slide is partly locked for drag"));
  public static final Fact OTHER_SLIDES_LOCKED =
      yesNo(
          "other slides locked",
          "Whether the slides that do not feed are locked.",
          at(CutFields.OTHERS_LOCKED, "whether the slides that do not feed are locked"));
  public static final Fact CUTTER_KIND =
      word("cutter kind", CutterKind.values(), "Family of the cutter.", at(CutterFields.KIND));
  public static final Fact TOOL_MATERIAL =
      word(
          "tool material",
          ToolMaterial.values(),
          "What the edge is made of.",
          at(CutterFields.TOOL_MATERIAL));
  public static final Fact EDGE_CONDITION =
      word(
          "edge condition",
          EdgeCondition.values(),
          "State of the cutting edges.",
          at(CutterFields.EDGE, "the state of the cutting edges, with a loupe"));
  public static final Fact CUTTER_DIAMETER =
      length(
          "cutter diameter",
          1,
          "DC, the cutting diameter.",
          at(CutterFields.DIAMETER),
          new Leeway(0.5, 2));
  public static final Fact TOOTH_COUNT =
      count("tooth count", 100, "ZEFP, effective teeth.", at(CutterFields.TEETH));
  public static final Fact MISSING_TEETH =
      count("missing teeth", 100, "Teeth that are not there.", at(CutterFields.MISSING));
  public static final Fact CHIPPED_TEETH =
      count("chipped teeth", 100, "Teeth that are chipped.", at(CutterFields.CHIPPED));
  public static final Fact CORNER_RADIUS =
      length("corner radius", 0.1, "RE of the cutter.", at(CutterFields.CORNER_RADIUS));
  public static final Fact WIPER =
      length("wiper flat", 0.05, "BS, length of the wiper flat.", at(CutterFields.WIPER));
  public static final Fact CUTTER_STICK_OUT =
      length(
          "cutter stick-out",
          1,
          "Length from the holder face to the cutting end.",
          at(CutterFields.STICK_OUT),
          new Leeway(0.5, 1.5));
  public static final Fact CUTTER_RUN_OUT =
      length(
          "cutter run-out",
          0.005,
          "Radial run-out, total reading.",
          at(CutterFields.RUN_OUT, "the run-out of the cutter in the spindle, with an indicator"),
          new Leeway(0, 1));
  public static final Fact MARKED_SPEED =
      number(
          "marked speed",
          QuantityKind.SPINDLE_SPEED,
          0,
          4000,
          "Greatest spindle speed marked on cutter or holder.",
          at(CutterFields.GREATEST_SPEED, "the greatest speed marked on cutter and holder"));
  public static final Fact COOLANT =
      word(
          "coolant",
          Coolant.values(),
          "What runs over the cutter.",
          at(CutFields.COOLANT, "what runs over the cutter, or that it is cut dry"));
  public static final Fact AXIAL_DEPTH =
      length(
          "axial depth",
          0.5,
          "a_p, depth along the axis.",
          at(CutFields.AXIAL_DEPTH),
          new Leeway(0.05, 1));
  public static final Fact CUTTER_OFFSET =
      number(
          "cutter offset",
          LENGTH,
          -1,
          1,
          "Cutter axis from mid-thickness, positive toward the fixed jaw.",
          at(CutFields.OFFSET));
  public static final Fact FEED_DIRECTION =
      word(
          "feed direction",
          FeedDirection.values(),
          "Which way the cutter moves along the jaws.",
          at(CutFields.FEED));
  public static final Fact FEED_DRIVE =
      word("feed drive", FeedDrive.values(), "What moves the table.", at(CutFields.FEED_DRIVE));
  public static final Fact FEED_PER_TOOTH =
      length("feed per tooth", 0.01, "f_z.", at(CutFields.FEED_PER_TOOTH), new Leeway(0.5, 1.5));
  public static final Fact SPINDLE_SPEED =
      add(
          new Fact(
              "spindle speed",
              new Fact.Number(QuantityKind.SPINDLE_SPEED, 0, 4000),
              "n, turns in a time.",
              at(CutFields.SPINDLE),
              new Leeway(0.5, 2)));
  public static final Fact TABLE_FEED =
      number("table feed", QuantityKind.TABLE_FEED, 0, 2, "v_f = f_z z n.", by(TableFeed.class));
  public static final Fact CUTTING_SPEED =
      number(
          "cutting speed",
          QuantityKind.CUTTING_SPEED,
          0,
          100,
          "v_c = pi DC n.",
          by(SpindleLoad.class));

  // The passes planned: judged by their numbers, computed for none but the cut asked about.
  public static final Fact PASSES_TOLD =
      yesNo(
          "passes told",
          "Whether the request tells the passes planned on this set-up.",
          at(RequestFields.PASSES));
  public static final Fact NUMBER_OF_PASSES =
      count(
          "number of passes",
          PlannedCut.MOST,
          "How many passes are planned.",
          at(RequestFields.PASSES, "the passes planned on this set-up, in order"));
  public static final Fact AXIAL_DEPTHS =
      lengths(
          "axial depths of passes",
          0,
          "a_p of each planned pass, in order.",
          at(RequestFields.PASSES, "the passes planned on this set-up, in order"));
  public static final Fact RADIAL_DEPTHS =
      lengths(
          "radial depths of passes",
          0,
          "a_e of each planned pass of a broad side, in order.",
          at(RequestFields.PASSES, "the passes planned on a broad side"));
  public static final Fact FEEDS_OF_PASSES =
      list(
          "feeds of passes",
          LENGTH,
          0,
          0.01,
          "f_z of each planned pass, in order.",
          at(RequestFields.PASSES, "the feed per tooth of every planned pass"));
  public static final Fact ROUGHING_DEPTHS =
      lengths(
          "roughing depths",
          0,
          "What each planned roughing pass takes off the face, in order.",
          by(PlannedCut.class, "the passes planned on this set-up, in order"));
  public static final Fact FINISHING_DEPTHS =
      lengths(
          "finishing depths",
          0,
          "What each planned finishing pass takes off the face, in order.",
          by(PlannedCut.class, "the passes planned on this set-up, in order"));
  public static final Fact ROUGHING_RISES =
      lengths(
          "roughing rises",
          -1,
          "By how much each planned roughing pass but the first takes more off the face than the"
              + " least of those before it; negative where it takes less.",
          by(PlannedCut.class, "the passes planned on this set-up, in order"));
  public static final Fact EARLIER_DEPTHS =
      lengths(
          "earlier depths",
          0,
          "What each planned pass but the last takes off the face, in order.",
          by(PlannedCut.class, "the passes planned on this set-up, in order"));
  public static final Fact LAST_PASS_DEPTH =
      number(
          "last pass depth",
          LENGTH,
          0,
          1,
          "What the last planned pass takes off the face.",
          by(PlannedCut.class, "the passes planned on this set-up, in order"));

  // Engagement.
  public static final Fact MODE =
      word("mode", Mode.values(), "Climb, conventional or both.", by(Engagement.class));
  public static final Fact RADIAL_DEPTH =
      number(
          "radial depth", LENGTH, 0, 1, "a_e, width of stock in the cutter.", by(Engagement.class));
  public static final Fact COVERS_STOCK =
      yesNo(
          "cutter spans stock",
          "Whether the cutter reaches past both sides of the stock.",
          by(Engagement.class));
  public static final Fact LEAST_COVER =
      number(
          "least cover",
          LENGTH,
          -1,
          1,
          "Least distance by which the cutter reaches past a side of the stock.",
          by(Engagement.class));
  public static final Fact ENGAGED_TEETH =
      number(
          "engaged teeth", NUMBER, 0, 100, "Mean number of teeth cutting.", by(Engagement.class));
  public static final Fact ENGAGEMENT_ANGLE =
      number("engagement angle", ANGLE, 0, 7, "Arc in cut.", by(Engagement.class));
  public static final Fact GREATEST_CHIP =
      number("greatest chip", LENGTH, 0, 0.01, "Greatest chip thickness.", by(Engagement.class));
  public static final Fact MEAN_CHIP =
      number("mean chip", LENGTH, 0, 0.01, "Mean chip thickness.", by(Engagement.class));
  public static final Fact ENTRY_CHIP =
      number("entry chip", LENGTH, 0, 0.01, "Chip where a tooth enters.", by(Engagement.class));
  public static final Fact EXIT_CHIP =
      number("exit chip", LENGTH, 0, 0.01, "Chip where a tooth leaves.", by(Engagement.class));

  // Forces on the stock.
  public static final Fact FORCE_LAW =
      word(
          "force law",
          ForceCoefficients.values(),
          "What the cutting force is worked out from: Kienzle's law or a published set.",
          at(MaterialFields.FORCE_COEFFICIENTS));
  public static final Fact PEAK_TANGENTIAL_FORCE =
      force(
          "peak tangential force",
          "Greatest tangential force of the cutter.",
          by(DrawnForces.class));
  public static final Fact PUSH_PLUS_X =
      force("plus x push", "Greatest push of the cut toward positive X.", by(DrawnForces.class));
  public static final Fact PUSH_MINUS_X =
      force("minus x push", "Greatest push of the cut toward negative X.", by(DrawnForces.class));
  public static final Fact PUSH_FIXED =
      force(
          "fixed jaw push",
          "Greatest push of the cut toward the fixed jaw.",
          by(DrawnForces.class));
  public static final Fact PUSH_MOVABLE =
      force(
          "movable jaw push",
          "Greatest push of the cut toward the movable jaw.",
          by(DrawnForces.class));
  public static final Fact LIFT_FORCE =
      force("lift force", "Greatest pull out of the jaws.", by(DrawnForces.class));
  public static final Fact LENGTHWISE_FORCE =
      force(
          "lengthwise force", "Greatest force along the jaws, either way.", by(DrawnForces.class));
  public static final Fact UNSTOPPED_PUSH =
      force(
          "unstopped push",
          "Greatest force along the jaws toward a side without a stop.",
          by(DrawnForces.class));
  public static final Fact LENGTHWISE_BOTH_WAYS =
      yesNo(
          "lengthwise both ways",
          "Whether the cut pushes both ways along the jaws.",
          by(DrawnForces.class));
  public static final Fact LOAD_JAW =
      word(
          "load jaw",
          JawSide.values(),
          "The jaw that the cut pushes toward the harder.",
          by(DrawnForces.class));

  // First contact.
  public static final Fact FIRST_CONTACT_PULLS =
      yesNo(
          "first contact pulls",
          "Whether the first bite pulls the stock toward the cutter.",
          by(FirstContact.class));
  public static final Fact FIRST_CONTACT_PULL =
      number(
          "first contact pull",
          FORCE,
          -1e7,
          1e7,
          "Pull of the first bite across the stock toward the side where the cutter stands;"
              + " negative where it pushes into the stock, zero where the cutter axis stands over"
              + " the stock.",
          by(FirstContact.class));
  public static final Fact FIRST_CONTACT_JAW =
      word(
          "first contact jaw",
          JawSide.values(),
          "The jaw that the first bite pushes toward.",
          by(FirstContact.class));
  public static final Fact FIRST_CONTACT_FORCE =
      force(
          "first contact force",
          "Push of the first bites across the stock, to that jaw.",
          by(FirstContact.class));
  public static final Fact FILLING_JUMP =
      number(
          "filling jump",
          FORCE,
          0,
          1e7,
          "Rise of the force in the plane of the table from the first blow until the whole arc is"
              + " in the stock.",
          by(FirstContact.class));

  // Holding.
  public static final Fact CLAMPING_FORCE =
      force("clamping force", "Force of the jaws.", by(ClampingForce.class));
  public static final Fact STATED_CLAMPING_FORCE =
      number(
          "stated clamping force",
          FORCE,
          0,
          1e7,
          "Force the request claims.",
          at(HoldFields.CLAMPING_FORCE, "the clamping force, if it was measured"));
  public static final Fact VISE_FORCE =
      number(
          "vise force",
          FORCE,
          0,
          1e7,
          "Greatest force the vise may give.",
          at(ViseFields.GREATEST_FORCE));
  public static final Fact MAY_ROCK =
      yesNo(
          "may rock",
          "Whether the stock may rock in the jaws: on a high spot, a worn or a lifting jaw that"
              + " packing does not take up.",
          by(Rocking.class));
  public static final Fact JAW_FRICTION =
      number(
          "jaw friction",
          NUMBER,
          0,
          2,
          "Coefficient of friction at the jaws.",
          by(JawFriction.class));
  public static final Fact SLIP_MARGIN =
      margin(
          "slip margin",
          "Friction of the jaws over the force along and out of them.",
          by(JawGrip.class));
  public static final Fact LIFT_MARGIN =
      margin("lift margin", "Friction of the jaws over the pull out of them.", by(JawGrip.class));
  public static final Fact TIP_MARGIN_FIXED =
      margin("fixed jaw tip margin", "Limit of tipping over that push.", by(RigidLimits.class));
  public static final Fact TIP_MARGIN_MOVABLE =
      margin("movable jaw tip margin", "Limit of tipping over that push.", by(RigidLimits.class));
  public static final Fact NO_GAP_MARGIN =
      margin(
          "gap margin",
          "Push at which a gap opens at a jaw over the push there is.",
          by(RigidLimits.class));
  public static final Fact HOLDING_MARGIN =
      margin(
          "holding margin",
          "Least multiple of the load that slips, tips and lifts together.",
          by(GripLimit.class));
  public static final Fact LEAST_HOLD_MARGIN =
      margin(
          "least hold margin",
          "Least of the holding margin and of both tip margins, in which friction does not count.",
          by(GripLimit.class));
  public static final Fact WEAKEST_WAY =
      word(
          "weakest way",
          WeakestWay.values(),
          "How the stock would leave the jaws first, in the draws that hold least.",
          by(WeakestWay.class));
  public static final Fact CONTACT_RATIO =
      number(
          "contact ratio",
          NUMBER,
          0,
          1,
          "Part of the grip depth still touching.",
          by(ElasticRoot.class));
  public static final Fact CONTACT_LENGTH =
      number(
          "contact length",
          LENGTH,
          0,
          5,
          "Length of stock between the jaws along them.",
          by(DrawnHold.class));
  public static final Fact JAW_GAP_DEPTH =
      number(
          "jaw gap depth",
          LENGTH,
          0,
          0.5,
          "Height of the grip that comes off the fixed jaw at the worst of the cut.",
          by(ElasticRoot.class));
  public static final Fact TURNING_STIFFNESS_FIXED =
      number(
          "fixed jaw turning stiffness",
          TORQUE,
          0,
          1e9,
          "Moment per radian by which the stock in its jaws withstands a push toward the fixed"
              + " jaw; nothing for a hinge.",
          by(ElasticRoot.class));
  public static final Fact TURNING_STIFFNESS_MOVABLE =
      number(
          "movable jaw turning stiffness",
          TORQUE,
          0,
          1e9,
          "Moment per radian by which the stock in its jaws withstands a push toward the movable"
              + " jaw; nothing for a hinge.",
          by(ElasticRoot.class));
  public static final Fact JAW_PRESSURE_RATIO =
      number(
          "jaw pressure ratio",
          NUMBER,
          0,
          1000,
          "Greatest pressure of jaw or packing over the yield of the stock.",
          by(DrawnHold.class));
  public static final Fact CLAMP_BOW =
      number("clamp bow", LENGTH, 0, 0.1, "Bow of the stock under the jaws.", by(StockBow.class));
  public static final Fact BEST_PACKING_DEPTH =
      number(
          "best packing depth",
          LENGTH,
          0,
          0.5,
          "Depth of a wire on the movable jaw that suits this cut: deeper takes more push toward"
              + " the fixed jaw and less away from it.",
          by(BestPackingDepth.class));

  // The standing plate.
  public static final Fact EDGE_DEFLECTION =
      number(
          "edge deflection",
          LENGTH,
          0,
          0.05,
          "Static deflection under the peak force at the worse of middle and end.",
          by(PlateOnFoot.class));
  public static final Fact EDGE_STIFFNESS =
      number(
          "edge stiffness",
          STIFFNESS,
          0,
          1e12,
          "Stiffness across the plate at the softer of middle and end.",
          by(PlateOnFoot.class));
  public static final Fact NATURAL_FREQUENCY =
      number(
          "natural frequency",
          FREQUENCY,
          0,
          1e6,
          "First natural frequency of the standing plate on its jaws.",
          by(PlateOnFoot.class));
  public static final Fact TOOTH_FREQUENCY =
      number("tooth frequency", FREQUENCY, 0, 1e5, "z n, tooth passing.", by(QuietSpeeds.class));
  public static final Fact TUNING =
      number(
          "tuning",
          NUMBER,
          0,
          1000,
          "Nearest of the first four tooth-passing harmonics over the first natural frequency; one"
              + " is resonance.",
          by(ForcedResponse.class));
  public static final Fact SLOWER_QUIET_SPEED =
      number(
          "slower quiet speed",
          QuantityKind.SPINDLE_SPEED,
          0,
          4000,
          "Greatest spindle speed at or below the set one whose tooth blows lie midway between"
              + " harmonics of the first natural frequency.",
          by(QuietSpeeds.class));
  public static final Fact FASTER_QUIET_SPEED =
      number(
          "faster quiet speed",
          QuantityKind.SPINDLE_SPEED,
          0,
          4000,
          "Least spindle speed above the set one whose tooth blows lie midway between harmonics of"
              + " the first natural frequency, or well above it.",
          by(QuietSpeeds.class));
  public static final Fact VIBRATION_AMPLITUDE =
      number(
          "vibration amplitude",
          LENGTH,
          0,
          0.05,
          "Forced vibration of plate and cutter against each other at the cut.",
          by(SteadySwing.class));
  public static final Fact STABILITY_MARGIN =
      margin(
          "stability margin",
          "Depth at which the cut starts to chatter over the depth.",
          by(CoupledDepth.class));
  public static final Fact SOFTER_MEMBER =
      word(
          "softer member",
          CutMember.values(),
          "Which of cutter and plate has the greater share in what starts the chatter.",
          by(CoupledDepth.class));
  public static final Fact LOW_IMMERSION =
      yesNo(
          "low immersion",
          "Whether the arc is too short for the stability model.",
          by(Stability.class));

  // Cutter and spindle.
  public static final Fact CUTTER_DEFLECTION =
      number(
          "cutter deflection",
          LENGTH,
          0,
          0.05,
          "Deflection of the cutter, its holder and the spindle.",
          by(CutterBeam.class));
  public static final Fact CUTTER_STRENGTH_MARGIN =
      margin(
          "cutter strength margin",
          "Strength of the cutter over its bending stress.",
          by(CutterStanding.class));
  public static final Fact CUTTER_SLENDERNESS =
      number(
          "cutter slenderness",
          NUMBER,
          0,
          100,
          "Cutter stick-out over diameter.",
          by(DrawnCutter.class));
  public static final Fact POWER_MARGIN =
      margin(
          "power margin", "Power at the cutter over the power of the cut.", by(SpindleLoad.class));
  public static final Fact TORQUE_MARGIN =
      margin(
          "torque margin",
          "Torque at the spindle over the peak torque of the cut.",
          by(SpindleLoad.class));
  public static final Fact SPEED_RATIO =
      number(
          "speed ratio",
          NUMBER,
          0,
          1000,
          "Cutting speed over the greatest published.",
          by(PublishedRange.class));
  public static final Fact FEED_RATIO =
      number(
          "feed ratio",
          NUMBER,
          0,
          1000,
          "Feed per tooth over the greatest published.",
          by(PublishedRange.class));
  public static final Fact CHIP_MARGIN =
      margin(
          "chip margin",
          "Greatest chip over the least chip that cuts rather than rubs.",
          by(LeastChip.class));
  public static final Fact SPEED_AVAILABLE =
      yesNo(
          "speed available", "Whether the machine can turn at that speed.", by(SpindleLoad.class));

  // Feed drive.
  public static final Fact POWER_FEED_FITTED =
      yesNo(
          "power feed fitted",
          "Whether the machine has the drive that the pass asks for.",
          by(TableFeed.class));
  public static final Fact TABLE_FEED_RATIO =
      number(
          "table feed ratio",
          NUMBER,
          0,
          1000,
          "Table feed under power over the greatest the machine has.",
          by(TableFeed.class, "the greatest table feed of the machine under power"));
  public static final Fact TABLE_PULL =
      force(
          "table pull",
          "Greatest pull of the cut on the table in the direction of its feed.",
          by(TablePull.class));
  public static final Fact MEAN_TABLE_PULL =
      number(
          "mean table pull",
          FORCE,
          -1e7,
          1e7,
          "Mean pull on the table in the direction of its feed; negative where it is held back.",
          by(TablePull.class));
  public static final Fact TABLE_HOLD_MARGIN =
      margin(
          "table hold margin",
          "Friction that holds the table over the pull on it.",
          by(TableFriction.class));
  public static final Fact BITE_AFTER_LURCH =
      number(
          "bite after lurch",
          LENGTH,
          0,
          0.05,
          "Chip of the tooth that follows when the table lurches.",
          by(TableLurch.class));

  // Reach.
  public static final Fact HEIGHT_CLEARANCE =
      clearance(
          "height clearance",
          "Room left between cutter and stock at the knee's lowest.",
          by(Reach.class));
  public static final Fact TRAVEL_CLEARANCE =
      clearance(
          "travel clearance",
          "Table travel left over what the pass needs, worse of X, Y.",
          by(Reach.class));
  public static final Fact JAW_CLEARANCE =
      clearance(
          "jaw clearance",
          "Distance of the cutter from the jaws along the pass.",
          by(Reach.class, "the sizes of cutter and holder"));
  public static final Fact HOLDER_CLEARANCE =
      clearance(
          "holder clearance",
          "Distance of shank, arbor and holder from the stock.",
          by(Reach.class, "the sizes of cutter and holder"));
  public static final Fact STOP_CLEARANCE =
      clearance(
          "stop clearance",
          "Distance of cutter and holder from the stops, lead-in and run-out counted.",
          by(SideView.class, "there is no stop that the cutter could meet"));
  public static final Fact CLAMP_CLEARANCE =
      clearance(
          "clamp clearance",
          "Distance of cutter and holder from the clamps beside the stock, lead-in and run-out"
              + " counted.",
          by(Reach.class, "where the clamps beside the stock stand and how high"));
  public static final Fact EDGE_LENGTH_LEFT =
      clearance("edge length left", "Cutting edge length less axial depth.", by(Reach.class));

  // Finish and time.
  public static final Fact ROUGHNESS =
      number(
          "roughness",
          QuantityKind.ROUGHNESS,
          0,
          0.01,
          "Ra left by the feed.",
          by(FeedMarks.class));
  public static final Fact SIZE_ERROR =
      number(
          "size error",
          LENGTH,
          0,
          0.05,
          "Deflection of plate and cutter left in the surface.",
          by(SurfaceError.class));
  public static final Fact RELEASED_BOW =
      length(
          "released bow",
          0.05,
          "Bow of the stock once this pass has let go the stress locked in it.",
          by(LayerRemoval.class));
  public static final Fact PASS_TIME =
      number("pass time", TIME, 0, 1e6, "Time of the pass.", by(PassTime.class));

  private Vocabulary() {}

  /** Every fact, in the order in which evidence lists them. */
  public static List<Fact> all() {
    return List.copyOf(ALL);
  }

  /** The request states it, always. */
  private static Fact.Origin at(Field<?, ?> field) {
    return new Fact.Stated(FieldPointer.to(field), null);
  }

  /** The request states it, or a question asks for it. */
  private static Fact.Origin at(Field<?, ?> field, String question) {
    return new Fact.Stated(FieldPointer.to(field), question);
  }

  /** Mechanics computes it. */
  private static Fact.Origin by(Class<?> formula) {
    return new Fact.Computed(formula, null);
  }

  /** Mechanics computes it, or a question asks for what it lacks. */
  private static Fact.Origin by(Class<?> formula, String question) {
    return new Fact.Computed(formula, question);
  }

  private static Fact add(Fact fact) {
    ALL.add(fact);
    return fact;
  }

  private static Fact number(
      String name,
      QuantityKind kind,
      double least,
      double greatest,
      String says,
      Fact.Origin origin) {
    return add(new Fact(name, new Fact.Number(kind, least, greatest), says, origin));
  }

  private static Fact length(String name, double greatest, String says, Fact.Origin origin) {
    return number(name, LENGTH, 0, greatest, says, origin);
  }

  private static Fact length(
      String name, double greatest, String says, Fact.Origin origin, Leeway leeway) {
    return add(new Fact(name, new Fact.Number(LENGTH, 0, greatest), says, origin, leeway));
  }

  private static Fact lengths(String name, double least, String says, Fact.Origin origin) {
    return list(name, LENGTH, least, 1, says, origin);
  }

  private static Fact list(
      String name,
      QuantityKind kind,
      double least,
      double greatest,
      String says,
      Fact.Origin origin) {
    Fact.Number each = new Fact.Number(kind, least, greatest);
    return add(new Fact(name, new Fact.Numbers(each), says, origin));
  }

  private static Fact clearance(String name, String says, Fact.Origin origin) {
    return number(name, LENGTH, -10, 10, says, origin);
  }

  private static Fact count(String name, double greatest, String says, Fact.Origin origin) {
    return number(name, NUMBER, 0, greatest, says, origin);
  }

  private static Fact force(String name, String says, Fact.Origin origin) {
    return number(name, FORCE, 0, 1e7, says, origin);
  }

  private static Fact margin(String name, String says, Fact.Origin origin) {
    return number(name, NUMBER, 0, GREATEST_MARGIN, says, origin);
  }

  private static Fact yesNo(String name, String says, Fact.Origin origin) {
    return add(new Fact(name, new Fact.YesNo(), says, origin));
  }

  private static Fact word(String name, Worded[] allowed, String says, Fact.Origin origin) {
    List<String> words = Arrays.stream(allowed).map(Worded::words).toList();
    return add(new Fact(name, new Fact.Word(words), says, origin));
  }

  private static Fact packing(String name, String says, Fact.Origin origin) {
    List<String> words =
        Stream.concat(
                Stream.of("none"), Arrays.stream(PackingKind.values()).map(PackingKind::words))
            .toList();
    return add(new Fact(name, new Fact.Word(words), says, origin));
  }
}

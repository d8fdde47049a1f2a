package org.standproud.mechanics.sampling;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.CutterFields;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.MachineFields;
import org.standproud.setup.request.StockFields;

/**
 * What is drawn, with the field of the request by which a better value comes in. Each is one
 * dimension of the joint sample, in this order: a new one goes to the end, so that the others keep
 * their draws.
 */
public enum Unknown {
  /** kc1.1 of the stock, its published exponent with it. */
  SPECIFIC_FORCE("specific cutting force of the stock", StockFields.MATERIAL),
  /** mc of the stock, as far as kc1.1 leaves it open. */
  EXPONENT("chip exponent of the stock", StockFields.MATERIAL),
  /** Wear of the edges, with all that goes with it. */
  WEAR("state of the edges", CutterFields.EDGE, "look at the edges with a loupe"),
  /** Milling against turning, from which the published figures come. */
  PROCESS(
      "milling against turning, where the figures of the stock come from", StockFields.MATERIAL),
  /** High-speed steel against carbide. */
  TOOL("force of high-speed steel against carbide", CutterFields.TOOL_MATERIAL),
  /** Effect of the rake. */
  RAKE("effect of the rake", CutterFields.RAKE),
  /** Normal to tangential force. */
  NORMAL_RATIO(
      "thrust of the edges against their pull",
      CutterFields.EDGE,
      "look at the edges with a loupe"),
  /** Along-edge to tangential force. */
  LIFT_RATIO("lift of the helix", CutterFields.HELIX),
  /** Feed per tooth. */
  FEED("feed per tooth", CutFields.FEED_PER_TOOTH, "feed by power, or time a stretch of the table"),
  /** Run-out. */
  RUN_OUT("run-out of the cutter", CutterFields.RUN_OUT, "indicate the cutter in the spindle"),
  /** Clamping force, or the torque on the handle that gives it. */
  CLAMPING_FORCE(
      "clamping force",
      HoldFields.CLAMPING_FORCE,
      "pull the handle with a torque wrench, or put a load cell between the jaws"),
  /** Friction in the screw of the vise, thread and collar alike. */
  SCREW_FRICTION(
      "friction in the screw of the vise",
      HoldFields.CLAMPING_FORCE,
      "put a load cell between the jaws once at a known torque"),
  /** Jaw friction, of both jaws from one wiping. */
  FRICTION(
      "friction of the jaws",
      HoldFields.JAW_FRICTION,
      "clamp lightly with a known force and pull the stock along the jaws with a spring balance"),
  /** How much of its face the movable jaw bears on when it is pushed over. */
  BEARING(
      "where the movable jaw bears",
      HoldFields.PACKING,
      "lay a soft wire at the movable jaw, so that it bears where the wire lies"),
  /** Height of a high spot. */
  HIGH_SPOT(
      "high spots of the gripped faces",
      StockFields.HIGH_SPOT,
      "lay a straight edge on the gripped faces and find the gap with feelers"),
  /** Place of the high spot between jaw top and bottom of the grip. */
  SPOT_PLACE(
      "where the high spot lies",
      StockFields.HIGH_SPOT,
      "blue the gripped faces and see where they bear"),
  /** Which jaw the high spot bears on. */
  SPOT_SIDE(
      "which jaw the high spot bears on",
      StockFields.HIGH_SPOT,
      "blue the gripped faces and see where they bear"),
  /** Stiffness of the fixed jaw. */
  FIXED_JAW(
      "stiffness of the fixed jaw",
      HoldFields.VISE,
      "push the jaw with a known force and read an indicator on it"),
  /** Stiffness of the movable jaw. */
  MOVABLE_JAW(
      "stiffness of the movable jaw",
      HoldFields.VISE,
      "push the jaw with a known force and read an indicator on it"),
  /** Lift of the movable jaw. */
  JAW_LIFT("lift of the movable jaw", HoldFields.VISE),
  /** How far pressed faces give. */
  JOINT("how far the pressed faces give", StockFields.SURFACE),
  /** Stiffness of packing that covers a face. */
  PACKING("give of the packing", HoldFields.PACKING),
  /** Yield of packing. */
  PACKING_YIELD("hardness of the packing", HoldFields.PACKING),
  /** Young's modulus of the stock. */
  MODULUS("modulus of the stock", StockFields.MATERIAL),
  /** Yield of the stock. */
  YIELD("yield of the stock", StockFields.MATERIAL),
  /** Damping of the standing stock. */
  DAMPING(
      "damping of the stock in its vise",
      HoldFields.MEASURED_DAMPING,
      "tap the plate, record it and see how its note dies away"),
  /** Friction of the X slide. */
  SLIDE_FRICTION(
      "friction of the table slide",
      MachineFields.SLIDE_FRICTION,
      "pull the table with a spring balance"),
  /** Force of the gib. */
  GIB("force of the gib", MachineFields.GIB_PRELOAD),
  /** Drag of a slide that is partly locked. */
  SLIDE_LOCK(
      "drag of the table lock",
      CutFields.SLIDE_LOCKED,
      "say whether the X slide is partly locked, and pull the table with a spring balance"),
  /** Stiffness of the spindle. */
  SPINDLE(
      "stiffness of the spindle",
      MachineFields.SPINDLE_STIFFNESS,
      "push the spindle with a known force and read an indicator on it"),
  /** Point about which the spindle tilts. */
  SPINDLE_PIVOT("where the spindle tilts", MachineFields.SPINDLE_STIFFNESS),
  /** Modulus of the tool material. */
  TOOL_MODULUS("modulus of the tool", CutterFields.TOOL_MATERIAL),
  /** Strength of the tool or of its arbor. */
  TOOL_STRENGTH("strength of the tool", CutterFields.TOOL_MATERIAL),
  /** Least chip over the rounding of the edge. */
  LEAST_CHIP("least chip that an edge cuts", CutterFields.EDGE_RADIUS),
  /** Rounding of the edge. */
  EDGE_ROUNDING("rounding of the edges", CutterFields.EDGE),
  /** Power at the cutter over power at the motor. */
  EFFICIENCY("losses between motor and cutter", MachineFields.EFFICIENCY),
  /** Distance of the feed marks: one tooth or one turn apart. */
  FEED_MARKS("how level the teeth stand", CutterFields.RUN_OUT),
  /** Roughness over that of the feed marks. */
  ROUGHENING("how cleanly the edges cut", CutterFields.EDGE),
  /** Whether a stop that is not given stands there. */
  STOP(
      "whether a stop stands at either end",
      HoldFields.STOP,
      "say whether a stop stands at either end"),
  /** Height of a stop. */
  STOP_HEIGHT(
      "height of the stop", HoldFields.STOP_HEIGHT, "measure the top of the stop above the jaws"),
  /** Whether the underside is seated. */
  SEAT(
      "what the underside of the stock sits on", HoldFields.SEAT, "say what the underside sits on"),
  /** Whether a high place is a bow or a bump. */
  SPOT_SPAN(
      "how long the high spot is",
      StockFields.HIGH_SPOT,
      "blue the gripped faces and see where they bear"),
  /** Frequency of the spindle without a tool. */
  SPINDLE_FREQUENCY("natural frequency of the spindle", MachineFields.SPINDLE_STIFFNESS),
  /** Turning stiffness of the taper. */
  TAPER("stiffness of the taper in the spindle", MachineFields.SPINDLE_STIFFNESS),
  /** Damping of spindle and taper. */
  SPINDLE_DAMPING("damping of the spindle", MachineFields.SPINDLE_STIFFNESS),
  /** Worn land behind the edges. */
  LAND("land worn behind the edges", CutterFields.EDGE, "look at the edges with a loupe"),
  /** Measured lowest note of the stock in its hold; no number if it was not measured. */
  NOTE("lowest note of the stock in its vise", HoldFields.MEASURED_NOTE),
  /** Measured stiffness of its top edge; no number if it was not measured. */
  EDGE_STIFFNESS("stiffness of the top edge", HoldFields.MEASURED_STIFFNESS),
  /** Place in the bands of what a backing gives and withstands. */
  BACKING(
      "stiffness of the backing",
      HoldFields.BACKING,
      "push the backing with a known force and read an indicator on it");

  private final String words;
  private final FieldPointer input;
  private final @Nullable String measure;

  Unknown(String words, Field<?, ?> input) {
    this(words, input, null);
  }

  Unknown(String words, Field<?, ?> input, @Nullable String measure) {
    this.words = words;
    this.input = FieldPointer.to(input);
    this.measure = measure;
  }

  /** How a shop would find it out; null for what only a laboratory can. */
  public @Nullable String measure() {
    return measure;
  }

  /** Whether the margins of a hold hang on it. */
  boolean decidesTheHold() {
    return compareTo(JAW_LIFT) < 0
        || this == SPOT_SPAN
        || this == STOP
        || this == SEAT
        || this == BACKING;
  }

  /** As a machinist would say it. */
  public String words() {
    return words;
  }

  /** The field of the request by which a better value comes in. */
  public FieldPointer input() {
    return input;
  }
}

package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.FORCE;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.MASS;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.POWER;
import static org.standproud.setup.units.QuantityKind.SPINDLE_SPEED;
import static org.standproud.setup.units.QuantityKind.STIFFNESS;
import static org.standproud.setup.units.QuantityKind.TABLE_FEED;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.MachineKind;
import org.standproud.setup.PowerPoint;

/** The fields of a machine. */
public final class MachineFields {

  /** Above this no spindle that holds a milling cutter turns: 200,000 rpm. */
  static final double GREATEST_SPEED_REV_PER_S = 90_000.0 / 60;

  public static final Quantity<PowerPoint> AT_SPEED =
      Quantity.of(
          "speed",
          SPINDLE_SPEED,
          0,
          GREATEST_SPEED_REV_PER_S,
          PowerPoint::speedRevPerS,
          "spindle speed");
  public static final Quantity<PowerPoint> POWER_THERE =
      Quantity.of("power", POWER, 1, 1e6, PowerPoint::powerW, "power at the motor");
  static final ObjectSchema<PowerPoint> POWER_POINT =
      new ObjectSchema<>("point of the power curve", List.of(AT_SPEED, POWER_THERE));

  public static final Text<Machine> NAME =
      new Text<>("name", 80, true, Machine::name, "name in the catalogue");
  public static final Choice<Machine, MachineKind> KIND =
      Choice.of("kind", MachineKind.class, Machine::kind, "how it is driven");
  public static final Quantity<Machine> TRAVEL_X =
      Quantity.of("travelX", LENGTH, 0.05, 10, Machine::travelXM, "table travel along X");
  public static final Quantity<Machine> TRAVEL_Y =
      Quantity.of("travelY", LENGTH, 0.03, 10, Machine::travelYM, "saddle travel along Y");
  public static final Quantity<Machine> TRAVEL_Z =
      Quantity.of("travelZ", LENGTH, 0.03, 5, Machine::travelZM, "knee or head travel along Z");
  public static final Quantity<Machine> NOSE_TO_TABLE =
      Quantity.of(
          "noseToTable",
          LENGTH,
          0.05,
          5,
          Machine::noseToTableM,
          "greatest distance from spindle nose to table");
  public static final Quantity<Machine> QUILL =
      Quantity.of("quillTravel", LENGTH, 0, 1, Machine::quillTravelM, "quill travel, zero if none");
  public static final Quantities<Machine> SPEEDS =
      new Quantities<>(
          "speeds",
          new Range(SPINDLE_SPEED, 0.1, GREATEST_SPEED_REV_PER_S),
          64,
          Machine::speedsRevPerS,
          "speeds of a geared or stepped head, rising; none if stepless");
  public static final Quantity<Machine> LEAST_SPEED =
      Quantity.of(
          "leastSpeed",
          SPINDLE_SPEED,
          0.1,
          GREATEST_SPEED_REV_PER_S,
          Machine::leastSpeedRevPerS,
          "least spindle speed");
  public static final Quantity<Machine> GREATEST_SPEED =
      Quantity.of(
          "greatestSpeed",
          SPINDLE_SPEED,
          0.1,
          GREATEST_SPEED_REV_PER_S,
          Machine::greatestSpeedRevPerS,
          "greatest spindle speed");
  public static final ListField<Machine, PowerPoint> POWER_CURVE =
      new ListField<>(
          "power", POWER_POINT, 64, true, Machine::power, "power curve of the motor, rising speed");
  public static final BandField<Machine> EFFICIENCY =
      BandField.of(
          "driveEfficiency",
          NUMBER,
          0.2,
          1,
          Machine::driveEfficiency,
          "power at the cutter over power at the motor");
  public static final Quantity<Machine> BACKLASH =
      Quantity.of("backlash", LENGTH, 0, 5e-3, Machine::backlashM, "lost motion of the X screw");
  public static final BooleanField<Machine> PRELOADED =
      new BooleanField<>(
          "preloadedScrew",
          true,
          Machine::preloadedScrew,
          "whether the X screw is free of lost motion either way");
  public static final Quantity<Machine> MOVING_MASS =
      Quantity.of(
          "movingMass",
          MASS,
          1,
          50_000,
          Machine::movingMassKg,
          "mass of table, vise and stock that the X screw moves");
  public static final BandField<Machine> SLIDE_FRICTION =
      BandField.of(
          "slideFriction",
          NUMBER,
          0,
          0.6,
          Machine::slideFriction,
          "coefficient of friction of the X slide");
  public static final BandField<Machine> GIB_PRELOAD =
      BandField.of(
          "gibPreload", FORCE, 0, 50_000, Machine::gibPreloadN, "force of the gib on the X slide");
  public static final BandField<Machine> SPINDLE_STIFFNESS =
      BandField.of(
          "spindleStiffness",
          STIFFNESS,
          5e5,
          5e9,
          Machine::spindleStiffnessNPerM,
          "stiffness of spindle and holder across the axis at the nose");
  public static final Quantity<Machine> GREATEST_FEED =
      Quantity.<Machine>of(
              "greatestFeed",
              TABLE_FEED,
              1e-4,
              5,
              Machine::greatestFeedMPerS,
              "greatest table feed; left out if hand feed only")
          .mayBeUnknown();

  static final ObjectSchema<Machine> SHAPE =
      new ObjectSchema<>(
          "machine",
          List.of(
              NAME,
              KIND,
              TRAVEL_X,
              TRAVEL_Y,
              TRAVEL_Z,
              NOSE_TO_TABLE,
              QUILL,
              SPEEDS,
              LEAST_SPEED,
              GREATEST_SPEED,
              POWER_CURVE,
              EFFICIENCY,
              BACKLASH,
              PRELOADED,
              MOVING_MASS,
              SLIDE_FRICTION,
              GIB_PRELOAD,
              SPINDLE_STIFFNESS,
              GREATEST_FEED),
          MachineFields::check);

  private MachineFields() {}

  private static void check(Values v, FieldLocation place) {
    OrderCheck.check(v, LEAST_SPEED, GREATEST_SPEED, place);
    List<Double> speeds = v.get(SPEEDS);
    if (speeds != null && !rises(speeds)) {
      place.child(SPEEDS.name()).fault(null, "the speeds must rise from one to the next");
    }
    List<Values> power = v.get(POWER_CURVE);
    if (power != null) {
      checkPower(power, place.child(POWER_CURVE.name()));
    }
  }

  private static void checkPower(List<Values> power, FieldLocation place) {
    if (power.isEmpty()) {
      place.fault(null, "the power curve needs at least one point");
    }
    List<@Nullable Double> speeds = power.stream().map(p -> p.get(AT_SPEED)).toList();
    if (!speeds.contains(null) && !rises(speeds)) {
      place.fault(null, "the speeds must rise from one point to the next");
    }
  }

  private static boolean rises(List<Double> values) {
    for (int i = 1; i < values.size(); i++) {
      if (values.get(i) <= values.get(i - 1)) {
        return false;
      }
    }
    return true;
  }

  static Machine machine(Values v) {
    List<Double> speeds = v.get(SPEEDS);
    return MachineBuilder.builder()
        .name(v.need(NAME))
        .kind(v.need(KIND))
        .travelXM(v.need(TRAVEL_X))
        .travelYM(v.need(TRAVEL_Y))
        .travelZM(v.need(TRAVEL_Z))
        .noseToTableM(v.need(NOSE_TO_TABLE))
        .quillTravelM(v.need(QUILL))
        .speedsRevPerS(speeds == null ? List.of() : speeds)
        .leastSpeedRevPerS(v.need(LEAST_SPEED))
        .greatestSpeedRevPerS(v.need(GREATEST_SPEED))
        .power(
            v.need(POWER_CURVE).stream()
                .map(p -> new PowerPoint(p.need(AT_SPEED), p.need(POWER_THERE)))
                .toList())
        .driveEfficiency(v.need(EFFICIENCY))
        .backlashM(v.need(BACKLASH))
        .preloadedScrew(v.need(PRELOADED))
        .movingMassKg(v.need(MOVING_MASS))
        .slideFriction(v.need(SLIDE_FRICTION))
        .gibPreloadN(v.need(GIB_PRELOAD))
        .spindleStiffnessNPerM(v.need(SPINDLE_STIFFNESS))
        .greatestFeedMPerS(v.get(GREATEST_FEED))
        .build();
  }
}

package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.ANGLE;
import static org.standproud.setup.units.QuantityKind.FORCE;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.STIFFNESS;

import java.util.List;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/** The fields of a vise. */
public final class ViseFields {

  public static final Quantity<ClampScrew> MEAN_DIAMETER =
      Quantity.of(
          "meanDiameter", LENGTH, 4e-3, 0.1, ClampScrew::meanDiameterM, "mean thread diameter");
  public static final Quantity<ClampScrew> LEAD =
      Quantity.of("lead", LENGTH, 0.5e-3, 0.03, ClampScrew::leadM, "axial travel per turn");
  public static final Quantity<ClampScrew> HALF_ANGLE =
      Quantity.of(
          "threadHalfAngle",
          ANGLE,
          0,
          Math.toRadians(45),
          ClampScrew::threadHalfAngleRad,
          "half of the thread angle, zero for a square thread");
  public static final BandField<ClampScrew> THREAD_FRICTION =
      BandField.of(
          "threadFriction",
          NUMBER,
          0.01,
          0.6,
          ClampScrew::threadFriction,
          "coefficient of friction in the thread");
  public static final Quantity<ClampScrew> COLLAR_DIAMETER =
      Quantity.of(
          "collarDiameter",
          LENGTH,
          0,
          0.2,
          ClampScrew::collarDiameterM,
          "mean diameter of the thrust collar");
  public static final BandField<ClampScrew> COLLAR_FRICTION =
      BandField.of(
          "collarFriction",
          NUMBER,
          0,
          0.6,
          ClampScrew::collarFriction,
          "coefficient of friction of the thrust collar");
  static final ObjectSchema<ClampScrew> SCREW_SHAPE =
      new ObjectSchema<>(
          "screw",
          List.of(
              MEAN_DIAMETER, LEAD, HALF_ANGLE, THREAD_FRICTION, COLLAR_DIAMETER, COLLAR_FRICTION));

  public static final Text<Vise> NAME =
      new Text<>("name", 80, true, Vise::name, "name in the catalogue");
  public static final Quantity<Vise> JAW_WIDTH =
      Quantity.of("jawWidth", LENGTH, 0.02, 1, Vise::jawWidthM, "width of the jaws along X");
  public static final Quantity<Vise> JAW_HEIGHT =
      Quantity.of("jawHeight", LENGTH, 5e-3, 0.3, Vise::jawHeightM, "height of the jaw face");
  public static final Quantity<Vise> OPENING =
      Quantity.of("greatestOpening", LENGTH, 0.01, 1, Vise::greatestOpeningM, "greatest opening");
  public static final Quantity<Vise> BED_HEIGHT =
      Quantity.of(
          "bedHeight",
          LENGTH,
          5e-3,
          0.5,
          Vise::bedHeightM,
          "height of the bed of the vise above the table");
  public static final ObjectField<Vise, ClampScrew> SCREW =
      ObjectField.of("screw", SCREW_SHAPE, Vise::screw, "the screw");
  public static final Quantity<Vise> GREATEST_FORCE =
      Quantity.of(
          "greatestClampingForce",
          FORCE,
          500,
          500_000,
          Vise::greatestClampingForceN,
          "the force its maker allows");
  public static final Choice<Vise, JawSurface> JAW_SURFACE =
      Choice.of("jawSurface", JawSurface.class, Vise::jawSurface, "the jaw faces");
  public static final BandField<Vise> FIXED_STIFFNESS =
      BandField.of(
          "fixedJawStiffness",
          STIFFNESS,
          1e6,
          1e10,
          Vise::fixedJawStiffnessNPerM,
          "stiffness of the fixed jaw against a force across it at the jaw top");
  public static final BandField<Vise> MOVABLE_STIFFNESS =
      BandField.of(
          "movableJawStiffness",
          STIFFNESS,
          1e6,
          1e10,
          Vise::movableJawStiffnessNPerM,
          "stiffness of the movable jaw against a force across it at the jaw top");
  public static final BandField<Vise> LIFT =
      BandField.of(
          "movableJawLift",
          ANGLE,
          0,
          Math.toRadians(3),
          Vise::movableJawLiftRad,
          "tilt of the movable jaw under clamping");

  static final ObjectSchema<Vise> SHAPE =
      new ObjectSchema<>(
          "vise",
          List.of(
              NAME,
              JAW_WIDTH,
              JAW_HEIGHT,
              OPENING,
              BED_HEIGHT,
              SCREW,
              GREATEST_FORCE,
              JAW_SURFACE,
              FIXED_STIFFNESS,
              MOVABLE_STIFFNESS,
              LIFT));

  private ViseFields() {}

  static Vise vise(Values v) {
    Values screw = v.need(SCREW);
    return ViseBuilder.builder()
        .name(v.need(NAME))
        .jawWidthM(v.need(JAW_WIDTH))
        .jawHeightM(v.need(JAW_HEIGHT))
        .greatestOpeningM(v.need(OPENING))
        .bedHeightM(v.need(BED_HEIGHT))
        .screw(
            new ClampScrew(
                screw.need(MEAN_DIAMETER),
                screw.need(LEAD),
                screw.need(HALF_ANGLE),
                screw.need(THREAD_FRICTION),
                screw.need(COLLAR_DIAMETER),
                screw.need(COLLAR_FRICTION)))
        .greatestClampingForceN(v.need(GREATEST_FORCE))
        .jawSurface(v.need(JAW_SURFACE))
        .fixedJawStiffnessNPerM(v.need(FIXED_STIFFNESS))
        .movableJawStiffnessNPerM(v.need(MOVABLE_STIFFNESS))
        .movableJawLiftRad(v.need(LIFT))
        .build();
  }
}

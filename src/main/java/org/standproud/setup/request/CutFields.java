package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.CUTTING_SPEED;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.SPINDLE_SPEED;
import static org.standproud.setup.units.QuantityKind.TABLE_FEED;

import java.util.List;
import org.standproud.setup.Coolant;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.HandFeedPace;
import org.standproud.setup.JawSide;
import org.standproud.setup.Mode;
import org.standproud.setup.Operation;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Stage;

/**
 * The fields of the pass. Some say one thing in two ways; {@link PlannedPassFields} brings them to
 * the one way in which a {@link Cut} keeps them.
 */
public final class CutFields {

  public static final Choice<Cut, Operation> OPERATION =
      Choice.of("operation", Operation.class, Cut::operation, "which face is milled");
  public static final Choice<Cut, Stage> STAGE =
      Choice.of("stage", Stage.class, Cut::stage, "rough or finish");
  public static final Quantity<Cut> AXIAL_DEPTH =
      Quantity.of(
          "axialDepth", LENGTH, 1e-6, 0.3, Cut::axialDepthM, "a_p, depth along the cutter axis");
  public static final Quantity<Cut> OFFSET =
      Quantity.<Cut>of(
              "offset",
              LENGTH,
              -0.6,
              0.6,
              Cut::offsetM,
              "cutter axis from the middle of the thickness, positive toward the fixed jaw")
          .called("cutter offset")
          .mayBeUnknown();
  public static final Choice<Cut, JawSide> SIDE =
      Choice.<Cut, JawSide>of(
              "side", JawSide.class, cut -> null, "broad side only: the side that is milled")
          .mayBeUnknown();
  public static final Quantity<Cut> RADIAL_DEPTH =
      Quantity.<Cut>of(
              "radialDepth",
              LENGTH,
              1e-6,
              0.5,
              cut -> null,
              "broad side only: a_e, taken off across the jaws; with side, in place of offset")
          .mayBeUnknown();
  public static final Choice<Cut, FeedDirection> FEED =
      Choice.<Cut, FeedDirection>of(
              "feed", FeedDirection.class, Cut::feed, "which way the cutter moves along the jaws")
          .called("feed direction")
          .mayBeUnknown();
  public static final Choice<Cut, Mode> MODE =
      Choice.<Cut, Mode>of(
              "mode",
              Mode.class,
              cut -> null,
              "climb or conventional; in place of feed, or with it")
          .mayBeUnknown();
  public static final Quantity<Cut> SPINDLE =
      Quantity.<Cut>of(
              "spindleSpeed",
              SPINDLE_SPEED,
              0.1,
              MachineFields.GREATEST_SPEED_REV_PER_S,
              Cut::spindleSpeedRevPerS,
              "n, spindle speed")
          .mayBeUnknown();
  public static final Quantity<Cut> CUTTING =
      Quantity.<Cut>of(
              "cuttingSpeed",
              CUTTING_SPEED,
              0.5 / 60,
              6000.0 / 60,
              cut -> null,
              "v_c, cutting speed, in place of spindleSpeed")
          .mayBeUnknown();
  public static final BandField<Cut> FEED_PER_TOOTH =
      BandField.<Cut>of(
              "feedPerTooth", LENGTH, 0.1e-6, 2e-3, Cut::feedPerToothM, "f_z, feed per tooth")
          .mayBeUnknown();
  public static final BandField<Cut> TABLE =
      BandField.<Cut>of(
              "tableFeed",
              TABLE_FEED,
              1e-6,
              5,
              cut -> null,
              "v_f, table feed, in place of feedPerTooth")
          .mayBeUnknown();
  public static final Choice<Cut, HandFeedPace> HAND_FEED =
      Choice.<Cut, HandFeedPace>of(
              "handFeed",
              HandFeedPace.class,
              cut -> null,
              "how fast the hand wheel is turned, in place of feedPerTooth and tableFeed")
          .mayBeUnknown();
  public static final Choice<Cut, FeedDrive> FEED_DRIVE =
      Choice.of("feedDrive", FeedDrive.class, Cut::feedDrive, "hand or power feed");
  public static final BooleanField<Cut> SLIDE_LOCKED =
      new BooleanField<>(
          "slideLocked",
          false,
          Cut::slideLocked,
          "whether the X slide is partly locked to add drag",
          "X slide snugged");
  public static final BooleanField<Cut> OTHERS_LOCKED =
      new BooleanField<>(
          "otherSlidesLocked",
          false,
          Cut::otherSlidesLocked,
          "whether the slides that do not feed are locked");
  public static final Choice<Cut, Coolant> COOLANT =
      Choice.<Cut, Coolant>of(
              "coolant", Coolant.class, Cut::coolant, "what runs over the cutter, or dry")
          .mayBeUnknown();
  public static final Quantity<Cut> LEAD_IN =
      Quantity.<Cut>of(
              "leadIn",
              LENGTH,
              0,
              2,
              Cut::leadInM,
              "cutter axis to the end of the stock where the feed starts; just clear of the stock"
                  + " if left out")
          .called("lead-in")
          .mayBeUnknown();

  public static final Choice<PlannedCut, Stage> PLANNED_STAGE =
      Choice.of("stage", Stage.class, PlannedCut::stage, "rough or finish");
  public static final Quantity<PlannedCut> PLANNED_AXIAL_DEPTH =
      Quantity.of(
          "axialDepth",
          LENGTH,
          AXIAL_DEPTH.range().least(),
          AXIAL_DEPTH.range().greatest(),
          PlannedCut::axialDepthM,
          "a_p, depth along the cutter axis");
  public static final Quantity<PlannedCut> PLANNED_RADIAL_DEPTH =
      Quantity.<PlannedCut>of(
              "radialDepth",
              LENGTH,
              RADIAL_DEPTH.range().least(),
              RADIAL_DEPTH.range().greatest(),
              PlannedCut::radialDepthM,
              "a_e, taken off across the jaws: needed on a broad side, not for a top edge")
          .mayBeUnknown();
  public static final BandField<PlannedCut> PLANNED_FEED =
      BandField.<PlannedCut>of(
              "feedPerTooth",
              LENGTH,
              FEED_PER_TOOTH.range().least(),
              FEED_PER_TOOTH.range().greatest(),
              PlannedCut::feedPerToothM,
              "f_z, feed per tooth")
          .mayBeUnknown();
  static final ObjectSchema<PlannedCut> PLANNED_SHAPE =
      new ObjectSchema<>(
          "planned pass",
          List.of(PLANNED_STAGE, PLANNED_AXIAL_DEPTH, PLANNED_RADIAL_DEPTH, PLANNED_FEED));

  static final ObjectSchema<Cut> SHAPE =
      new ObjectSchema<>(
          "cut",
          List.of(
              OPERATION,
              STAGE,
              AXIAL_DEPTH,
              OFFSET,
              SIDE,
              RADIAL_DEPTH,
              FEED,
              MODE,
              SPINDLE,
              CUTTING,
              FEED_PER_TOOTH,
              TABLE,
              HAND_FEED,
              FEED_DRIVE,
              SLIDE_LOCKED,
              OTHERS_LOCKED,
              COOLANT,
              LEAD_IN));

  private CutFields() {}

  static PlannedCut planned(Values v) {
    return new PlannedCut(
        v.need(PLANNED_STAGE),
        v.need(PLANNED_AXIAL_DEPTH),
        v.get(PLANNED_RADIAL_DEPTH),
        v.get(PLANNED_FEED));
  }

  static Cut cut(Values v) {
    return CutBuilder.builder()
        .operation(v.need(OPERATION))
        .stage(v.need(STAGE))
        .axialDepthM(v.need(AXIAL_DEPTH))
        .offsetM(v.need(OFFSET))
        .feed(v.need(FEED))
        .spindleSpeedRevPerS(v.need(SPINDLE))
        .feedPerToothM(v.need(FEED_PER_TOOTH))
        .feedDrive(v.need(FEED_DRIVE))
        .slideLocked(v.get(SLIDE_LOCKED))
        .otherSlidesLocked(v.get(OTHERS_LOCKED))
        .coolant(v.get(COOLANT))
        .leadInM(v.need(LEAD_IN))
        .build();
  }
}

package org.standproud.advice.whatif;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Backing;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.HeldMeasurement;
import org.standproud.setup.Hold;
import org.standproud.setup.Packing;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;

/** Builds a changed copy of a set-up. Units as in the model. */
public final class SetupEditor {

  private final Setup of;
  private Stock stock;
  private Hold hold;
  private Cutter cutter;
  private Cut cut;

  private SetupEditor(Setup of) {
    this.of = of;
    this.stock = of.stock();
    this.hold = of.hold();
    this.cutter = of.cutter();
    this.cut = of.cut();
  }

  /** Starts with a set-up as it is. */
  public static SetupEditor of(Setup setup) {
    return new SetupEditor(setup);
  }

  /** The changed set-up; its planned passes change with its cut. */
  public Setup done() {
    Setup changed =
        new Setup(of.job(), stock, hold, of.machine(), cutter, cut, of.passes(), of.units());
    return changed.asked().equals(of.asked())
        ? changed
        : changed.with(cut, PlannedCut.changed(of.passes(), of.asked(), changed.asked()));
  }

  /** Another piece of the same material and faces: thickness and height in m. */
  public SetupEditor size(double thicknessM, double heightM) {
    stock = StockBuilder.builder(stock).thicknessM(thicknessM).heightM(heightM).build();
    hold = hold.but().measured(HeldMeasurement.NONE).held();
    return this;
  }

  /** The known state of the gripped faces. */
  public SetupEditor faces(
      @Nullable StockSurface surface, @Nullable Double highSpotM, @Nullable Boolean deburred) {
    stock =
        StockBuilder.builder(stock)
            .surface(surface)
            .highSpotM(highSpotM)
            .deburred(deburred)
            .build();
    return this;
  }

  /** Another hold. */
  public SetupEditor hold(Hold other) {
    hold = other;
    return this;
  }

  /** Another grip depth in m. */
  public SetupEditor grip(double gripM) {
    return grip(gripM, hold.packing());
  }

  /** Another grip depth in m with its packing. */
  public SetupEditor grip(double gripM, List<Packing> packing) {
    return hold(hold.but().grip(gripM).packing(packing).held());
  }

  /** Other packing. */
  public SetupEditor packing(List<Packing> packing) {
    return hold(hold.but().packing(packing).held());
  }

  /** Another clamping: force, torque on the handle and friction, each null if not known. */
  public SetupEditor clamping(
      @Nullable Band forceN, @Nullable Band torqueNm, @Nullable Band jawFriction) {
    return hold(hold.but().clamping(forceN, torqueNm, jawFriction).held());
  }

  /** Another seat, stop and run of the fixed jaw in m, each null if not known. */
  public SetupEditor seating(
      @Nullable Seat seat, @Nullable Stop stop, @Nullable Double viseRunOutM) {
    return hold(hold.but().seat(seat).stop(stop).viseRunOut(viseRunOutM).held());
  }

  /** Something else behind the plate. */
  public SetupEditor backing(List<Backing> behind) {
    return hold(hold.but().backing(behind).held());
  }

  /** Another stop. */
  public SetupEditor stop(Stop stop) {
    return hold(hold.but().stop(stop).held());
  }

  /** Another cutter. */
  public SetupEditor cutter(Cutter other) {
    cutter = other;
    return this;
  }

  /** Another state of the edges and run-out in m of the same cutter, each null if not known. */
  public SetupEditor edges(@Nullable EdgeCondition edge, @Nullable Double runOutM) {
    cutter = CutterBuilder.builder(cutter).edge(edge).runOutM(runOutM).build();
    return this;
  }

  /** Rough or finish. */
  public SetupEditor stage(Stage stage) {
    return cut(stage, cut.axialDepthM(), cut.offsetM(), cut.feed(), cut.leadInM());
  }

  /** Another axial depth in m. */
  public SetupEditor depth(double axialDepthM) {
    return cut(cut.stage(), axialDepthM, cut.offsetM(), cut.feed(), cut.leadInM());
  }

  /** Another position of the cutter axis across the stock in m. */
  public SetupEditor offset(double offsetM) {
    return cut(cut.stage(), cut.axialDepthM(), offsetM, cut.feed(), cut.leadInM());
  }

  /** The other direction along the jaws. */
  public SetupEditor reversed() {
    FeedDirection other =
        cut.feed() == FeedDirection.PLUS_X ? FeedDirection.MINUS_X : FeedDirection.PLUS_X;
    return cut(cut.stage(), cut.axialDepthM(), cut.offsetM(), other, cut.leadInM());
  }

  /** Another lead-in in m. */
  public SetupEditor leadIn(double leadInM) {
    return cut(cut.stage(), cut.axialDepthM(), cut.offsetM(), cut.feed(), leadInM);
  }

  /** Another spindle speed in 1/s. */
  public SetupEditor speed(double revPerS) {
    return pace(revPerS, cut.feedPerToothM(), cut.feedDrive());
  }

  /** Another feed per tooth in m. */
  public SetupEditor feed(Band feedPerToothM) {
    return pace(cut.spindleSpeedRevPerS(), feedPerToothM, cut.feedDrive());
  }

  /** Another drive of the table. */
  public SetupEditor drive(FeedDrive drive) {
    return pace(cut.spindleSpeedRevPerS(), cut.feedPerToothM(), drive);
  }

  /** The known state of the slides. */
  public SetupEditor slides(@Nullable Boolean slideLocked, @Nullable Boolean otherSlidesLocked) {
    cut =
        CutBuilder.builder(cut)
            .slideLocked(slideLocked)
            .otherSlidesLocked(otherSlidesLocked)
            .build();
    return this;
  }

  private SetupEditor cut(
      Stage stage, double depthM, double offsetM, FeedDirection feed, double leadInM) {
    cut =
        CutBuilder.builder(cut)
            .stage(stage)
            .axialDepthM(depthM)
            .offsetM(offsetM)
            .feed(feed)
            .leadInM(leadInM)
            .build();
    return this;
  }

  private SetupEditor pace(double revPerS, Band feedPerToothM, FeedDrive drive) {
    cut =
        CutBuilder.builder(cut)
            .spindleSpeedRevPerS(revPerS)
            .feedPerToothM(feedPerToothM)
            .feedDrive(drive)
            .build();
    return this;
  }
}

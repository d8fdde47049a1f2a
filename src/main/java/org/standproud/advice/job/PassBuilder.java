package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.plan.PassPlan;
import org.standproud.mechanics.spindle.SpindleSpeeds;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Hold;
import org.standproud.setup.JawFaces;
import org.standproud.setup.JawSide;
import org.standproud.setup.MachineKind;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.SparePacking;
import org.standproud.setup.Stage;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.Stop;

/**
 * Builds the set-up of a pass. Speeds and feeds are the middle of the published range of stock and
 * cutter, as far as the machine has them. What the route prescribes at the bench is stated as
 * known: edges deburred, faces wiped, fixed jaw indicated, a stop at each end below the jaw top,
 * slides locked.
 */
final class PassBuilder {

  /** What a fixed jaw is indicated to; common practice, no source. */
  static final double JAW_RUN_OUT_M = 0.02e-3;

  /** Overlap of the two halves of a broad side; common practice, no source. */
  static final double OVERLAP_M = 1e-3;

  /** A cutter that is wider than the face by this spans it in one pass. */
  private static final double SPANS = 1.05;

  /** Width of a strip over the diameter; common practice, no source. */
  private static final double STRIP_OVER_DIAMETER = 0.75;

  private static final int MOST_STRIPS = 3;

  private static final double AIR_M = 5e-3;

  /** Part of the room beside the stock by which a finishing cutter is moved over. */
  private static final double TO_THE_RIM = 0.8;

  /** A hand winds no faster for long; common practice, no source. */
  private static final double HAND_FEED_M_PER_S = 0.12 / 60;

  private final MillingJob job;
  private final Piece piece;
  private final FaceCut cut;
  private final Clamping clamping;
  private final double packingDepthM;

  /**
   * A builder for one clamping.
   *
   * @param packingDepthM depth of a wire or strip below the jaw top in m
   */
  PassBuilder(MillingJob job, Piece piece, FaceCut cut, Clamping clamping, double packingDepthM) {
    this.job = job;
    this.piece = piece;
    this.cut = cut;
    this.clamping = clamping;
    this.packingDepthM = packingDepthM;
  }

  /** Width across the jaws of the stock in m, before anything is taken off. */
  static double acrossM(Piece piece, Holding holding) {
    return holding == Holding.FLAT ? piece.heightM() : piece.thicknessM();
  }

  /** Height of the stock in m, before anything is taken off. */
  static double tallM(Piece piece, Holding holding) {
    return switch (holding) {
      case FLAT -> piece.thicknessM();
      case STANDING_SIDE, ON_EDGE -> piece.heightM();
      case ON_END -> piece.lengthM();
    };
  }

  /** Height in m of the face that is milled above the jaws at once. */
  static double axialM(Piece piece, FaceCut cut, Holding holding) {
    return holding == Holding.STANDING_SIDE
        ? piece.heightM() / holding.clampings() + OVERLAP_M
        : cut.wholeM();
  }

  /** Passes side by side over the face; 0 if the cutter is too small for it. */
  static int strips(Piece piece, Holding holding, Cutter cutter) {
    double wideM = acrossM(piece, holding);
    if (holding == Holding.STANDING_SIDE || cutter.diameterM() >= SPANS * wideM) {
      return 1;
    }
    int strips = (int) Math.ceil(wideM / (STRIP_OVER_DIAMETER * cutter.diameterM()) - 1e-9);
    boolean flat = holding == Holding.FLAT;
    return flat && strips <= MOST_STRIPS ? strips : 0;
  }

  /** The least diameter in m of a cutter that mills the face. */
  static double leastDiameterM(Piece piece, Holding holding) {
    double wideM = acrossM(piece, holding);
    return holding == Holding.FLAT ? wideM / (MOST_STRIPS * STRIP_OVER_DIAMETER) : SPANS * wideM;
  }

  int strips() {
    return strips(piece, clamping.holding(), clamping.cutter());
  }

  /**
   * The ways to run a pass that cost nothing.
   *
   * @param goneM taken off the face before in this clamping, in m
   * @param takesM what it takes off in m
   * @param stage rough or finish
   * @param strip which strip, from 1
   * @param planned the passes of the clamping
   */
  List<Setup> variants(
      double goneM, double takesM, Stage stage, int strip, List<PlannedCut> planned) {
    List<Setup> all = new ArrayList<>();
    for (double offsetM : offsetsM(goneM, takesM, stage, strip)) {
      for (FeedDirection feed : FeedDirection.values()) {
        all.add(setup(goneM, cut(takesM, stage, offsetM, feed), planned));
      }
    }
    return all;
  }

  /** The pass by its numbers alone. */
  PlannedCut planned(double takesM, Stage stage) {
    return operation() == Operation.TOP_EDGE
        ? new PlannedCut(stage, takesM, null, null)
        : new PlannedCut(stage, axialM(piece, cut, clamping.holding()), takesM, null);
  }

  private Operation operation() {
    return clamping.holding() == Holding.STANDING_SIDE ? Operation.BROAD_SIDE : Operation.TOP_EDGE;
  }

  private Setup setup(double goneM, Cut pass, List<PlannedCut> planned) {
    return new Setup(
        job.reference(),
        stock(goneM),
        hold(),
        job.machine(),
        clamping.cutter(),
        pass,
        planned,
        job.units());
  }

  private Stock stock(double goneM) {
    Holding holding = clamping.holding();
    boolean across = holding == Holding.STANDING_SIDE;
    return StockBuilder.builder()
        .lengthM(holding == Holding.ON_END ? piece.heightM() : piece.lengthM())
        .thicknessM(acrossM(piece, holding) - (across ? goneM : 0))
        .heightM(tallM(piece, holding) - (across ? 0 : goneM))
        .material(job.blank().material())
        .surface(piece.surface(holding.gripped()))
        .highSpotM(piece.highSpotM(holding.gripped()))
        .deburred(true)
        .condition(job.blank().condition())
        .build();
  }

  private Hold hold() {
    return Hold.in(clamping.vise(), clamping.gripM())
        .clamping(null, job.handleTorqueNm().get(clamping.effort()), null)
        .effort(clamping.effort())
        .faces(JawFaces.WIPED)
        .packing(packing(clamping.packing()))
        .seat(clamping.onBed() ? Seat.BED : Seat.PARALLELS)
        .stop(Stop.BOTH)
        .stopHeight(0.0)
        .viseRunOut(JAW_RUN_OUT_M)
        .held();
  }

  private List<Packing> packing(@Nullable SparePacking spare) {
    if (spare == null) {
      return List.of();
    }
    boolean line = spare.kind() == PackingKind.WIRE || spare.kind() == PackingKind.STRIP;
    double depthM = line ? packingDepthM : clamping.gripM() / 2;
    return List.of(
        new Packing(JawSide.MOVABLE, spare.kind(), spare.material(), spare.sizeM(), depthM));
  }

  /** Places of the cutter axis across the stock in m. */
  private List<Double> offsetsM(double goneM, double takesM, Stage stage, int strip) {
    double diameterM = clamping.cutter().diameterM();
    double wideM = acrossM(piece, clamping.holding());
    if (operation() == Operation.BROAD_SIDE) {
      return List.of(-((diameterM + wideM - goneM) / 2 - takesM));
    }
    int strips = strips();
    if (strips > 1) {
      double outerM = (wideM + diameterM) / 2 - wideM / strips;
      return List.of(strip == 1 ? outerM : strip == 2 ? -outerM : 0.0);
    }
    double rimM = TO_THE_RIM * (diameterM - wideM) / 2;
    return stage == Stage.FINISH ? List.of(0.0, rimM, -rimM) : List.of(0.0);
  }

  private Cut cut(double takesM, Stage stage, double offsetM, FeedDirection feed) {
    double revPerS = revPerS();
    boolean drag = job.machine().kind() == MachineKind.MANUAL && job.feedDrive() == FeedDrive.HAND;
    return CutBuilder.builder()
        .operation(operation())
        .stage(stage)
        .axialDepthM(
            operation() == Operation.TOP_EDGE ? takesM : axialM(piece, cut, clamping.holding()))
        .offsetM(offsetM)
        .feed(feed)
        .spindleSpeedRevPerS(revPerS)
        .feedPerToothM(Band.exactly(feedPerToothM(stage, revPerS)))
        .feedDrive(job.feedDrive())
        .slideLocked(drag)
        .otherSlidesLocked(true)
        .leadInM(clamping.cutter().diameterM() / 2 + AIR_M)
        .build();
  }

  private CuttingRange range() {
    return job.blank().material().rangeFor(clamping.cutter().toolMaterial());
  }

  private double revPerS() {
    CuttingRange range = range();
    double middle = Math.sqrt(range.leastSpeedMPerS() * range.greatestSpeedMPerS());
    return SpindleSpeeds.of(job.machine())
        .nearestRevPerS(middle / (Math.PI * clamping.cutter().diameterM()));
  }

  private double feedPerToothM(Stage stage, double revPerS) {
    CuttingRange range = range();
    double middle = Math.sqrt(range.leastFeedPerToothM() * range.greatestFeedPerToothM());
    double wanted =
        stage == Stage.FINISH
            ? Math.max(range.leastFeedPerToothM(), Math.min(middle, PassPlan.FINISH_FEED_M))
            : middle;
    return Math.min(wanted, mostFeedMPerS() / (clamping.cutter().teeth() * revPerS));
  }

  private double mostFeedMPerS() {
    Double greatest = job.machine().greatestFeedMPerS();
    if (job.feedDrive() == FeedDrive.HAND) {
      return HAND_FEED_M_PER_S;
    }
    return greatest == null ? Double.POSITIVE_INFINITY : greatest;
  }
}

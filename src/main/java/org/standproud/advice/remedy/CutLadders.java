package org.standproud.advice.remedy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.standproud.advice.whatif.CutterSwap;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.SuitingCutters;
import org.standproud.mechanics.spindle.SpindleSpeeds;
import org.standproud.setup.Cut;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;

/** The possible changes of the cut. */
final class CutLadders {

  /** Most cutters tried: the likeliest diameters first. */
  private static final int CUTTERS = 8;

  /** Numbers of passes tried. */
  private static final int[] PASSES = IntStream.rangeClosed(2, ShopPractice.MOST_PASSES).toArray();

  /** Steps of the preferred numbers R10 of ISO 3. */
  private static final double[] SLOWER = {0.8, 0.63, 0.5, 0.4, 0.315, 0.25};

  private static final double[] FASTER = {1.25, 1.6, 2, 2.5};

  private static final double LEAST_FEED_M = 5e-6;
  private static final double MM_M = 1e-3;
  private static final double INCH_M = 0.0254;
  private static final MathContext TWO_FIGURES = new MathContext(2);

  private final Setup setup;
  private final Cut cut;
  private final List<Ladder> ladders = new ArrayList<>();

  private CutLadders(Setup setup) {
    this.setup = setup;
    this.cut = setup.cut();
  }

  static List<Ladder> of(Setup setup, Catalogue shop) {
    CutLadders cut = new CutLadders(setup);
    cut.depth();
    cut.feed();
    cut.speed();
    cut.place();
    cut.slides();
    cut.deburr();
    cut.cutters(shop);
    return cut.ladders;
  }

  private void depth() {
    List<UnaryOperator<Setup>> rungs = new ArrayList<>();
    for (int passes : PASSES) {
      double depthM = cut.axialDepthM() / passes;
      if (depthM >= ShopPractice.leastDepthM(cut.stage())) {
        rungs.add(s -> SetupEditor.of(s).depth(depthM).done());
      }
    }
    add(ChangeKind.DEPTH, rungs);
  }

  private void feed() {
    feed(SLOWER);
    feed(FASTER);
    if (cut.feedDrive() == FeedDrive.HAND && setup.machine().greatestFeedMPerS() != null) {
      ladders.add(
          Ladder.of(ChangeKind.DRIVE, s -> SetupEditor.of(s).drive(FeedDrive.POWER).done()));
    }
  }

  private void feed(double[] factors) {
    double now = cut.feedPerToothM().likely();
    add(
        ChangeKind.FEED,
        DoubleStream.of(factors).map(f -> round(f * now)).filter(feedM -> feedM >= LEAST_FEED_M),
        feedM -> s -> SetupEditor.of(s).feed(s.cut().feedPerToothM().times(feedM / now)).done());
  }

  /** To two figures of the caller's unit, as on a dial. */
  private double round(double feedM) {
    double unitM = setup.units() == UnitSystem.INCH ? INCH_M : MM_M;
    return BigDecimal.valueOf(feedM / unitM).round(TWO_FIGURES).doubleValue() * unitM;
  }

  private void speed() {
    double now = cut.spindleSpeedRevPerS();
    DoubleFunction<UnaryOperator<Setup>> at = n -> s -> SetupEditor.of(s).speed(n).done();
    List<Double> speeds = setup.machine().speedsRevPerS();
    double[] all =
        speeds.isEmpty()
            ? DoubleStream.concat(DoubleStream.of(SLOWER), DoubleStream.of(FASTER))
                .map(f -> f * now)
                .filter(SpindleSpeeds.of(setup.machine())::inRange)
                .toArray()
            : speeds.stream().mapToDouble(Double::doubleValue).toArray();
    add(
        ChangeKind.SPEED,
        DoubleStream.of(all)
            .filter(n -> n < now)
            .boxed()
            .sorted(Comparator.reverseOrder())
            .mapToDouble(Double::doubleValue),
        at);
    add(ChangeKind.SPEED, DoubleStream.of(all).filter(n -> n > now).sorted(), at);
  }

  private void place() {
    if (cut.operation() == Operation.BROAD_SIDE) {
      ladders.add(Ladder.of(ChangeKind.MODE, s -> SetupEditor.of(s).reversed().done()));
      sideDepth();
    } else {
      ladders.add(Ladder.of(ChangeKind.DIRECTION, s -> SetupEditor.of(s).reversed().done()));
      offset();
    }
  }

  /** The axis moves away from the milled side. */
  private void sideDepth() {
    double deep = setup.sideDepthM();
    List<UnaryOperator<Setup>> rungs = new ArrayList<>();
    for (int passes : PASSES) {
      if (deep / passes >= ShopPractice.leastDepthM(cut.stage())) {
        rungs.add(s -> CutterSwap.withSideDepth(s, deep / passes));
      }
    }
    add(ChangeKind.SIDE_DEPTH, rungs);
  }

  /** To the middle, and toward each rim as long as the cutter still spans the stock. */
  private void offset() {
    if (cut.offsetM() != 0) {
      ladders.add(Ladder.of(ChangeKind.OFFSET, s -> SetupEditor.of(s).offset(0).done()));
    }
    double room = (setup.cutter().diameterM() - setup.stock().thicknessM()) / 2;
    double step = Math.max(room / 4, HoldLadders.stepM(setup));
    for (double side : new double[] {1, -1}) {
      add(
          ChangeKind.OFFSET,
          DoubleStream.iterate(step, x -> x <= room + 1e-9, x -> x + step)
              .map(x -> Math.round(side * x * 1e4) / 1e4)
              .filter(y -> y != cut.offsetM()),
          y -> s -> SetupEditor.of(s).offset(spanning(s, y)).done());
    }
  }

  /** As far across as the cutter then in the spindle still spans the stock. */
  private static double spanning(Setup s, double offsetM) {
    double room = Math.max(0, (s.cutter().diameterM() - s.stock().thicknessM()) / 2);
    return Math.max(-room, Math.min(offsetM, room));
  }

  private void slides() {
    if (!Boolean.TRUE.equals(cut.otherSlidesLocked())) {
      ladders.add(
          Ladder.of(
              ChangeKind.SLIDES,
              s -> SetupEditor.of(s).slides(s.cut().slideLocked(), true).done()));
    }
    if (!Boolean.TRUE.equals(cut.slideLocked()) && !setup.machine().preloadedScrew()) {
      ladders.add(Ladder.of(ChangeKind.SLIDES, s -> SetupEditor.of(s).slides(true, true).done()));
    }
  }

  private void deburr() {
    if (!Boolean.TRUE.equals(setup.stock().deburred())) {
      ladders.add(
          Ladder.of(
              ChangeKind.DEBURR,
              s ->
                  SetupEditor.of(s)
                      .faces(s.stock().surface(), s.stock().highSpotM(), true)
                      .done()));
    }
  }

  private void cutters(Catalogue shop) {
    SuitingCutters.of(setup, shop).stream()
        .limit(CUTTERS)
        .forEach(c -> ladders.add(Ladder.of(ChangeKind.CUTTER, s -> CutterSwap.with(s, c))));
  }

  private void add(ChangeKind kind, List<UnaryOperator<Setup>> rungs) {
    if (!rungs.isEmpty()) {
      ladders.add(new Ladder(kind, rungs));
    }
  }

  private void add(
      ChangeKind kind, DoubleStream values, DoubleFunction<UnaryOperator<Setup>> change) {
    add(kind, values.mapToObj(change).toList());
  }
}

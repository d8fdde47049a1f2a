package org.standproud.advice.sensitivity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.Hold;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.SetupBuilder;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.Worded;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.CutterFields;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.MachineFields;
import org.standproud.setup.request.MaterialFields;
import org.standproud.setup.request.StockFields;
import org.standproud.setup.units.QuantityKind;

/** Everything in a set-up that is not known exactly and can be measured at the machine. */
final class Unknowns {

  /** What a high spot, a vise and a cutter may be out by where no one looked; no source. */
  private static final double HIGH_SPOT_M = 0.2e-3;

  private static final double VISE_RUN_OUT_M = 0.1e-3;
  private static final double CUTTER_RUN_OUT_M = 0.05e-3;

  private final Setup setup;
  private final Evidence evidence;
  private final Wording wording;
  private final List<Unknown> all = new ArrayList<>();

  private Unknowns(Setup setup, Evidence evidence) {
    this.setup = setup;
    this.evidence = evidence;
    this.wording = new Wording(setup.units());
  }

  static List<Unknown> of(Setup setup, Evidence evidence) {
    Unknowns unknowns = new Unknowns(setup, evidence);
    unknowns.clamping();
    unknowns.seating();
    unknowns.faces();
    unknowns.cutter();
    unknowns.slides();
    unknowns.cut();
    return unknowns.all;
  }

  private void clamping() {
    Hold h = setup.hold();
    banded(
        HoldFields.CLAMPING_FORCE,
        "the clamping force, with a force gauge between the jaws",
        QuantityKind.FORCE,
        h.clampingForceN() != null ? h.clampingForceN() : fact(Vocabulary.CLAMPING_FORCE),
        b -> SetupEditor.of(setup).clamping(b, h.handleTorqueNm(), h.jawFriction()).done());
    banded(
        HoldFields.JAW_FRICTION,
        "the friction, by the pull at which a clamped piece starts to slide",
        QuantityKind.NUMBER,
        h.jawFriction() != null ? h.jawFriction() : fact(Vocabulary.JAW_FRICTION),
        b -> SetupEditor.of(setup).clamping(h.clampingForceN(), h.handleTorqueNm(), b).done());
  }

  private void seating() {
    Hold h = setup.hold();
    words(
        HoldFields.STOP,
        "whether a stop stands at either end",
        h.stop(),
        Stop.values(),
        stop -> SetupEditor.of(setup).stop(stop).done());
    if (h.stop() != Stop.NONE) {
      span(
          HoldFields.STOP_HEIGHT,
          "the height of the top of the stop above the jaws",
          h.stopHeightM(),
          setup.stickOutM(),
          m -> SetupEditor.of(setup).hold(h.but().stopHeight(m).held()).done());
    }
    words(
        HoldFields.SEAT,
        "what the underside sits on, and whether parallels can be pulled out by hand",
        h.seat(),
        Seat.values(),
        seat -> SetupEditor.of(setup).seating(seat, h.stop(), h.viseRunOutM()).done());
    span(
        HoldFields.VISE_RUN_OUT,
        "the run of the fixed jaw, with an indicator and the spindle stopped",
        h.viseRunOutM(),
        VISE_RUN_OUT_M,
        m -> SetupEditor.of(setup).seating(h.seat(), h.stop(), m).done());
  }

  private void faces() {
    Stock s = setup.stock();
    words(
        StockFields.SURFACE,
        "how the gripped faces were made",
        s.surface(),
        StockSurface.values(),
        f -> SetupEditor.of(setup).faces(f, s.highSpotM(), s.deburred()).done());
    span(
        StockFields.HIGH_SPOT,
        "the highest spot of the gripped faces, with a straight edge and feelers",
        s.highSpotM(),
        HIGH_SPOT_M,
        m -> SetupEditor.of(setup).faces(s.surface(), m, s.deburred()).done());
    yesNo(
        StockFields.DEBURRED,
        "whether the gripped edges were deburred",
        s.deburred(),
        yes -> SetupEditor.of(setup).faces(s.surface(), s.highSpotM(), yes).done());
  }

  private void cutter() {
    words(
        CutterFields.EDGE,
        "the state of the edges, with a loupe and the spindle stopped",
        setup.cutter().edge(),
        EdgeCondition.values(),
        edge -> SetupEditor.of(setup).edges(edge, setup.cutter().runOutM()).done());
    span(
        CutterFields.RUN_OUT,
        "the run-out of the cutter, with an indicator, turned by hand",
        setup.cutter().runOutM(),
        CUTTER_RUN_OUT_M,
        m -> SetupEditor.of(setup).edges(setup.cutter().edge(), m).done());
  }

  private void slides() {
    Boolean x = setup.cut().slideLocked();
    Boolean others = setup.cut().otherSlidesLocked();
    yesNo(
        CutFields.SLIDE_LOCKED,
        "whether the X slide is snugged for drag",
        x,
        yes -> SetupEditor.of(setup).slides(yes, others).done());
    yesNo(
        CutFields.OTHERS_LOCKED,
        "whether the slides that do not feed are locked",
        others,
        yes -> SetupEditor.of(setup).slides(x, yes).done());
    Machine m = setup.machine();
    if (!m.preloadedScrew()) {
      banded(
          MachineFields.GIB_PRELOAD,
          "the drag of the table, with a spring balance and the screw free",
          QuantityKind.FORCE,
          m.gibPreloadN(),
          b -> with(gib(m, b)));
    }
  }

  private void cut() {
    Band feed = HandFeed.feedPerToothM(setup.cut());
    banded(
        CutFields.FEED_PER_TOOTH,
        "the feed the hand really gives, by timing a pass of air",
        QuantityKind.LENGTH,
        feed,
        // A band of next to no width is not taken for one value that a hand then spreads again.
        b -> SetupEditor.of(setup).feed(hairWide(b)).done());
    banded(
        MaterialFields.SPECIFIC_FORCE,
        "the grade and hardness of the stock",
        QuantityKind.STRESS,
        setup.stock().material().specificCuttingForcePa(),
        b -> with(harder(setup.stock().material(), b)));
  }

  private static Band hairWide(Band exact) {
    return new Band(exact.low(), exact.likely(), exact.high() * (1 + 1e-9));
  }

  private Setup with(Machine machine) {
    return SetupBuilder.builder(setup).machine(machine).build();
  }

  private static Machine gib(Machine m, Band gibN) {
    return MachineBuilder.builder(m).gibPreloadN(gibN).build();
  }

  private Setup with(Material material) {
    Stock stock = StockBuilder.builder(setup.stock()).material(material).build();
    return SetupBuilder.builder(setup).stock(stock).build();
  }

  private static Material harder(Material m, Band specificPa) {
    return MaterialBuilder.builder(m).specificCuttingForcePa(specificPa).build();
  }

  private @Nullable Band fact(Fact fact) {
    return evidence.get(fact) instanceof Value.Quantity q ? q.band() : null;
  }

  private void banded(
      Field<?, ?> input,
      String measure,
      QuantityKind kind,
      @Nullable Band band,
      Function<Band, Setup> with) {
    if (band != null && !band.isExact()) {
      Function<Double, Unknown.Case> at =
          v -> new Unknown.Case(wording.words(kind, v), with.apply(Band.exactly(v)));
      all.add(
          new Unknown(
              FieldPointer.to(input),
              measure,
              List.of(at.apply(band.low()), at.apply(band.high())),
              with.apply(Band.exactly(band.likely()))));
    }
  }

  private void span(
      Field<?, ?> input,
      String measure,
      @Nullable Double given,
      double most,
      Function<Double, Setup> with) {
    if (given == null) {
      Function<Double, Unknown.Case> at =
          v -> new Unknown.Case(wording.words(QuantityKind.LENGTH, v), with.apply(v));
      all.add(
          new Unknown(
              FieldPointer.to(input), measure, List.of(at.apply(0.0), at.apply(most)), null));
    }
  }

  private <W extends Worded> void words(
      Field<?, ?> input, String measure, @Nullable W given, W[] choices, Function<W, Setup> with) {
    if (given == null) {
      all.add(
          new Unknown(
              FieldPointer.to(input),
              measure,
              Arrays.stream(choices)
                  .map(word -> new Unknown.Case(word.words(), with.apply(word)))
                  .toList(),
              null));
    }
  }

  private void yesNo(
      Field<?, ?> input, String measure, @Nullable Boolean given, Function<Boolean, Setup> with) {
    if (given == null) {
      all.add(
          new Unknown(
              FieldPointer.to(input),
              measure,
              List.of(
                  new Unknown.Case("yes", with.apply(true)),
                  new Unknown.Case("no", with.apply(false))),
              null));
    }
  }
}

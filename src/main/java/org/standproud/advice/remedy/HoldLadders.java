package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/** The possible changes of the hold. */
final class HoldLadders {

  private static final double MM = 1e-3;
  private static final double THIRTY_SECOND = 0.0254 / 32;

  /** Found in every drawer: soft copper wire and card; common practice, no source. */
  private static final double WIRE_M = 3 * MM;

  private static final double INCH_WIRE_M = 0.0254 / 8;
  private static final double CARD_M = 0.4 * MM;
  private static final double INCH_CARD_M = 0.0254 / 64;

  /** What a milled or carefully filed face still shows under a straight edge; no source. */
  private static final double TRUED_M = 0.02 * MM;

  /** High jaws are sold and made so much higher than the usual ones; no source. */
  private static final double[] HIGHER = {1.5, 2};

  /** Parallels are not changed for less; common practice, no source. */
  private static final double LEAST_DEEPER_M = 3 * MM;

  private static final double BLOCK_M = 50 * MM;
  private static final double BELOW_THE_CUT_M = 3 * MM;
  private static final double BELOW_THE_TOP_M = 1 * MM;

  /** A lower backing is little more than the jaw; no source. */
  private static final double LEAST_BACKING_M = 10 * MM;

  private static final double[] HARDER = {1.25, 1.6, 2, 2.5, 3.15};

  private final Setup setup;
  private final Hold hold;
  private final Trials trials;
  private final List<Ladder> ladders = new ArrayList<>();

  private HoldLadders(Setup setup, Trials trials) {
    this.setup = setup;
    this.hold = setup.hold();
    this.trials = trials;
  }

  static List<Ladder> of(Setup setup, Trials trials) {
    HoldLadders hold = new HoldLadders(setup, trials);
    hold.faces();
    hold.grip();
    hold.seat();
    hold.clamp();
    hold.stop();
    hold.backing();
    hold.jaws();
    hold.packing();
    return hold.ladders;
  }

  /** Step of a grip depth: 1 mm, or a thirty-second of an inch. */
  static double stepM(Setup setup) {
    return setup.units() == UnitSystem.INCH ? THIRTY_SECOND : MM;
  }

  /** A face not known to be flat can be milled or filed flat before it is gripped. */
  private void faces() {
    Stock stock = setup.stock();
    Double spotM = stock.highSpotM();
    if (stock.surface() != StockSurface.MACHINED || spotM == null || spotM > TRUED_M) {
      ladders.add(
          Ladder.of(
              ChangeKind.FACES,
              s -> SetupEditor.of(s).faces(StockSurface.MACHINED, TRUED_M, true).done()));
    }
  }

  /** Deeper until the jaw is full or the cut would reach the jaw top. */
  private void grip() {
    double step = stepM(setup);
    double most =
        Math.min(
            hold.vise().jawHeightM(), setup.stock().heightM() - setup.cut().axialDepthM() - step);
    List<UnaryOperator<Setup>> rungs = new ArrayList<>();
    double first = Math.ceil((hold.gripDepthM() + LEAST_DEEPER_M) / step - 1e-9);
    for (double count = first; count * step <= most + 1e-9; count++) {
      double gripM = count * step;
      rungs.add(s -> SetupEditor.of(s).grip(gripM, spread(s.hold().packing(), gripM)).done());
    }
    add(ChangeKind.GRIP, rungs);
  }

  /** Card and sheet cover the whole grip; wire and strip stay where they are. */
  private static List<Packing> spread(List<Packing> packing, double gripM) {
    return packing.stream().map(p -> isLine(p) ? p : at(p, gripM / 2)).toList();
  }

  private static boolean isLine(Packing p) {
    return p.kind() == PackingKind.WIRE || p.kind() == PackingKind.STRIP;
  }

  private static Packing at(Packing p, double depthM) {
    return new Packing(p.side(), p.kind(), p.material(), p.sizeM(), depthM);
  }

  private void seat() {
    if (hold.seat() == null || hold.seat() == Seat.NONE) {
      ladders.add(
          Ladder.of(
              ChangeKind.SEAT,
              s ->
                  SetupEditor.of(s)
                      .seating(Seat.PARALLELS, s.hold().stop(), s.hold().viseRunOutM())
                      .done()));
    }
  }

  private void clamp() {
    if (hold.clampingForceN() == null && hold.handleTorqueNm() == null) {
      return;
    }
    double room = hold.vise().greatestClampingForceN() / high(Vocabulary.CLAMPING_FORCE, 1e9);
    List<UnaryOperator<Setup>> rungs = new ArrayList<>();
    for (double factor : HARDER) {
      if (factor <= room) {
        rungs.add(s -> harder(s, factor));
      }
    }
    add(ChangeKind.CLAMP, rungs);
  }

  private static Setup harder(Setup s, double factor) {
    Hold h = s.hold();
    return SetupEditor.of(s)
        .clamping(
            h.clampingForceN() == null ? null : h.clampingForceN().times(factor),
            h.handleTorqueNm() == null ? null : h.handleTorqueNm().times(factor),
            h.jawFriction())
        .done();
  }

  /** A stop takes the push toward its own end; the end of the harder push is tried first. */
  private void stop() {
    Stop now = hold.stop() == null ? Stop.NONE : hold.stop();
    if (now == Stop.NONE) {
      boolean plus = high(Vocabulary.PUSH_PLUS_X, 0) >= high(Vocabulary.PUSH_MINUS_X, 0);
      Stop harder = plus ? Stop.PLUS_X : Stop.MINUS_X;
      Stop lighter = plus ? Stop.MINUS_X : Stop.PLUS_X;
      ladders.add(Ladder.of(ChangeKind.STOP, with(harder), with(Stop.BOTH)));
      ladders.add(Ladder.of(ChangeKind.STOP, with(lighter)));
    } else if (now != Stop.BOTH) {
      ladders.add(Ladder.of(ChangeKind.STOP, with(Stop.BOTH)));
    }
  }

  private static UnaryOperator<Setup> with(Stop stop) {
    return s -> SetupEditor.of(s).stop(stop).done();
  }

  /**
   * Behind the plate where the cut pushes to, below the cutter; one block, then the whole length.
   */
  private void backing() {
    if (!hold.backing().isEmpty()) {
      return;
    }
    boolean toFixed = high(Vocabulary.PUSH_FIXED, 0) >= high(Vocabulary.PUSH_MOVABLE, 0);
    JawSide side = toFixed ? JawSide.FIXED : JawSide.MOVABLE;
    double lengthM = setup.stock().lengthM();
    ladders.add(
        Ladder.of(
            ChangeKind.BACKING,
            s -> backed(s, BackingKind.BLOCK, side, Math.min(BLOCK_M, lengthM)),
            s -> backed(s, BackingKind.ANGLE_PLATE, side, lengthM)));
  }

  private static Setup backed(Setup s, BackingKind kind, JawSide side, double lengthM) {
    boolean edge = s.cut().operation() == Operation.TOP_EDGE;
    double below = edge ? s.cut().axialDepthM() + BELOW_THE_CUT_M : BELOW_THE_TOP_M;
    double step = stepM(s);
    double heightM = Math.floor((s.stickOutM() - below) / step) * step;
    if (heightM < LEAST_BACKING_M) {
      return s;
    }
    Backing behind = new Backing(kind, side, 0, lengthM, heightM, null, null, null);
    return SetupEditor.of(s).backing(List.of(behind)).done();
  }

  /** Higher jaws where the grip ends at the jaw; soft jaws milled in place of worn ones. */
  private void jaws() {
    Vise vise = hold.vise();
    List<UnaryOperator<Setup>> rungs = new ArrayList<>();
    if (vise.jawSurface() == JawSurface.WORN) {
      rungs.add(s -> SetupEditor.of(s).hold(s.hold().in(soft(s.hold().vise()))).done());
    }
    double room = setup.stock().heightM() - setup.cut().axialDepthM() - stepM(setup);
    for (double times : HIGHER) {
      double highM = times * vise.jawHeightM();
      if (highM <= room) {
        rungs.add(s -> SetupEditor.of(s).hold(higher(s.hold(), times)).done());
      }
    }
    add(ChangeKind.JAWS, rungs);
  }

  private static Vise soft(Vise vise) {
    return ViseBuilder.builder(vise).jawSurface(JawSurface.SOFT).build();
  }

  /** A jaw bends like a post: its stiffness at the top falls with the cube of its height. */
  private static Hold higher(Hold hold, double times) {
    Vise vise = hold.vise();
    double softer = 1 / (times * times * times);
    double highM = times * vise.jawHeightM();
    Vise high =
        ViseBuilder.builder(vise)
            .jawHeightM(highM)
            .fixedJawStiffnessNPerM(vise.fixedJawStiffnessNPerM().times(softer))
            .movableJawStiffnessNPerM(vise.movableJawStiffnessNPerM().times(softer))
            .build();
    return hold.in(high).but().grip(highM).packing(spread(hold.packing(), highM)).held();
  }

  private void packing() {
    List<Packing> others = hold.packing().stream().filter(HoldLadders::onFixed).toList();
    List<Packing> movable = hold.packing().stream().filter(p -> !onFixed(p)).toList();
    if (movable.stream().anyMatch(HoldLadders::isLine)) {
      ladders.add(Ladder.of(ChangeKind.PACKING, this::moved));
    } else {
      ladders.add(Ladder.of(ChangeKind.PACKING, s -> wired(s, others)));
    }
    if (movable.isEmpty()) {
      ladders.add(
          Ladder.of(
              ChangeKind.PACKING,
              s -> carded(s, others, cardM()),
              s -> carded(s, others, 2 * cardM())));
    }
    if (others.stream().anyMatch(HoldLadders::isLine)) {
      ladders.add(Ladder.of(ChangeKind.PACKING, s -> SetupEditor.of(s).packing(movable).done()));
    }
  }

  private static boolean onFixed(Packing p) {
    return p.side() == JawSide.FIXED;
  }

  private Setup moved(Setup s) {
    return SetupEditor.of(s)
        .packing(
            s.hold().packing().stream()
                .map(p -> onFixed(p) || !isLine(p) ? p : at(p, bestDepthM(s, p.sizeM())))
                .toList())
        .done();
  }

  private Setup wired(Setup s, List<Packing> others) {
    double sizeM = s.units() == UnitSystem.INCH ? INCH_WIRE_M : WIRE_M;
    if (s.hold().gripDepthM() < 2 * sizeM) {
      return s;
    }
    Packing wire =
        new Packing(
            JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.COPPER, sizeM, bestDepthM(s, sizeM));
    return SetupEditor.of(s).packing(joined(others, wire)).done();
  }

  private double cardM() {
    return setup.units() == UnitSystem.INCH ? INCH_CARD_M : CARD_M;
  }

  private static Setup carded(Setup s, List<Packing> others, double thickM) {
    Packing card =
        new Packing(
            JawSide.MOVABLE,
            PackingKind.CARD,
            PackingMaterial.PAPER,
            thickM,
            s.hold().gripDepthM() / 2);
    return SetupEditor.of(s).packing(joined(others, card)).done();
  }

  private static List<Packing> joined(List<Packing> others, Packing piece) {
    List<Packing> all = new ArrayList<>(others);
    all.add(piece);
    return all;
  }

  /** The depth that equalizes the two tip margins, to the shop's step, inside the grip. */
  private double bestDepthM(Setup s, double sizeM) {
    double gripM = s.hold().gripDepthM();
    double best =
        trials.of(s).evidence().get(Vocabulary.BEST_PACKING_DEPTH) instanceof Value.Quantity q
            ? q.band().likely()
            : gripM / 2;
    double step = stepM(s);
    double rounded = Math.round(best / step) * step;
    return Math.max(sizeM / 2, Math.min(rounded, gripM - sizeM / 2));
  }

  private double high(Fact fact, double ifMissing) {
    return trials.of(setup).evidence().get(fact) instanceof Value.Quantity q
        ? q.band().high()
        : ifMissing;
  }

  private void add(ChangeKind kind, List<UnaryOperator<Setup>> rungs) {
    if (!rungs.isEmpty()) {
      ladders.add(new Ladder(kind, rungs));
    }
  }
}

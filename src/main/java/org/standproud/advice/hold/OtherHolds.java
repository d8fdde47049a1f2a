package org.standproud.advice.hold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Adviser;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;
import org.standproud.advice.Wording;
import org.standproud.advice.trial.CutterSwap;
import org.standproud.advice.trial.Rework;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.gathering.EvidenceGathering;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.holding.other.BackedHold;
import org.standproud.mechanics.holding.other.BackedHold.Backing;
import org.standproud.mechanics.holding.other.ClampedMargins;
import org.standproud.mechanics.holding.other.StrapClamp;
import org.standproud.mechanics.holding.other.TableHold;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.units.QuantityKind;

/**
 * The other ways to hold a job, the best first. Each is judged by the cards that limit the margins
 * of a hold, with the margins of that hold in the place of those of the vise; what other cards say
 * of the cut is not in the verdict. Where one pass does not hold, the same depth is taken in as few
 * passes as do. Straps are reckoned as M12 bolts tightened to 40 N.m within a tenth, the bolt
 * half-way between heel and work, one for every 100 mm, two at least, at half the backed height:
 * common practice, no source.
 *
 * @param recommended whether to prefer them: the vise cannot be made right and one of them holds
 * @param conclusion what comes of it, in one sentence
 * @param holds each way
 * @param judgedBy ids of the cards asked
 */
public record OtherHolds(
    boolean recommended, String conclusion, List<OtherHold> holds, List<String> judgedBy) {

  private static final double BOLT_M = 0.012;
  private static final double HEEL_TO_BOLT_M = 0.04;
  private static final Band NUT_TORQUE_NM = new Band(36, 40, 44);
  private static final int[] PASSES = {1, 2, 3, 4, 6, 8, 12, 16, 24, 40};
  private static final double STRAP_EVERY_M = 0.1;

  /** The cutter passes over the top of the backing by this; common practice, no source. */
  private static final double OVER_THE_BACKING_M = 3e-3;

  /** Height that a strap's nose and the room around it take below the cut. */
  private static final double STRAP_ROOM_M = 0.015;

  private static final String STRAPS = " strap clamps with M12 bolts tightened to 40 N.m";

  /** Part of the length that lies between the outer straps. */
  private static final double BETWEEN_STRAPS = 0.8;

  /** Copies the lists. */
  public OtherHolds {
    holds = List.copyOf(holds);
    judgedBy = List.copyOf(judgedBy);
  }

  /**
   * The other ways to hold the job of a set-up.
   *
   * @param setup the job as proposed in the vise
   * @param viseCanBeMadeRight whether some remedy makes the vise hold
   * @param ruleBase the cards
   * @param shop the cutters there are
   */
  public static OtherHolds of(
      Setup setup, boolean viseCanBeMadeRight, RuleBase ruleBase, Catalogue shop) {
    HoldingCards cards = new HoldingCards(ruleBase);
    List<Reckoning> lighter = new ArrayList<>();
    for (int passes : PASSES) {
      lighter.add(new Reckoning(lighter(setup, passes), passes, cards));
    }
    List<OtherHold> holds =
        new ArrayList<>(
            List.of(
                fewest(lighter, r -> r.upright(Way.ANGLE_PLATE)),
                fewest(lighter, r -> r.upright(Way.VISE_SIDE)),
                fewest(lighter, r -> r.flat(LaidFlat.of(r.setup, shop)))));
    holds.sort(
        Comparator.comparingInt(OtherHolds::rank)
            .thenComparingDouble(hold -> hold.setUpLikely() + hold.cutMinutes()));
    boolean holding = rank(holds.get(0)) <= Verdict.RUN_WITH_CARE.ordinal();
    return new OtherHolds(
        holding && !viseCanBeMadeRight,
        conclusion(holds.get(0), holding, viseCanBeMadeRight),
        holds,
        cards.ids().stream().sorted().toList());
  }

  /** The cut as deep in several passes as it was in one: down the edge or into the side. */
  private static Setup lighter(Setup setup, int passes) {
    return setup.cut().operation() == Operation.TOP_EDGE
        ? Rework.of(setup).depth(setup.cut().axialDepthM() / passes).done()
        : CutterSwap.withSideDepth(setup, CutterSwap.sideDepthM(setup) / passes);
  }

  /** With as few passes as will hold; with one, if none will. */
  private static OtherHold fewest(
      List<Reckoning> lighter, Function<Reckoning, OtherHold> reckoned) {
    for (Reckoning reckoning : lighter) {
      OtherHold hold = reckoned.apply(reckoning);
      if (rank(hold) <= Verdict.RUN_WITH_CARE.ordinal()) {
        return hold;
      }
    }
    return reckoned.apply(lighter.get(0));
  }

  private static int rank(OtherHold hold) {
    for (Verdict verdict : Verdict.values()) {
      if (verdict.words().equals(hold.verdict())) {
        return verdict.ordinal();
      }
    }
    return Verdict.values().length;
  }

  private static String conclusion(OtherHold best, boolean holding, boolean viseCanBeMadeRight) {
    if (!holding) {
      return "None of the other ways is sure to hold either, in however many passes.";
    }
    return viseCanBeMadeRight
        ? "The vise can be made right; " + best.way() + " would hold too."
        : "The vise cannot be made right for this cut: hold it " + best.way() + ".";
  }

  /** The ways of one job. */
  private static final class Reckoning {
    private final Setup setup;
    private final HoldingCards cards;
    private final int parts;
    private @Nullable Evidence known;
    private final Band friction;
    private final Wording wording;
    private final int straps;
    private final Band strapN;

    Reckoning(Setup setup, int parts, HoldingCards cards) {
      this.setup = setup;
      this.cards = cards;
      this.parts = parts;
      this.friction = friction(setup);
      this.wording = new Wording(setup.units());
      this.straps = Math.max(2, (int) Math.ceil(setup.stock().lengthM() / STRAP_EVERY_M));
      this.strapN =
          StrapClamp.tightened(NUT_TORQUE_NM, BOLT_M, HEEL_TO_BOLT_M, HEEL_TO_BOLT_M).forceN();
    }

    /** Bare ground faces, oily: the straps of a shop hold no cleaner than its vise. */
    private static Band friction(Setup setup) {
      Hold hold = setup.hold();
      Vise v = hold.vise();
      Vise ground =
          new Vise(
              v.name(),
              v.jawWidthM(),
              v.jawHeightM(),
              v.greatestOpeningM(),
              v.bedHeightM(),
              v.screw(),
              v.greatestClampingForceN(),
              JawSurface.GROUND,
              v.fixedJawStiffnessNPerM(),
              v.movableJawStiffnessNPerM(),
              v.movableJawLiftRad());
      Hold bare =
          new Hold(ground, hold.gripDepthM(), null, null, null, List.of(), null, null, null);
      return JawFriction.of(bare, setup.stock().surface(), FaceState.OILY).coefficient();
    }

    /** Worked out when it is first asked for: most jobs need few of the lighter cuts. */
    private Evidence evidence() {
      Evidence evidence = known == null ? EvidenceGathering.of(setup) : known;
      known = evidence;
      return evidence;
    }

    OtherHold upright(Way way) {
      boolean side = setup.cut().operation() == Operation.BROAD_SIDE;
      double heightM = setup.stock().heightM();
      double cutM = setup.cut().axialDepthM();
      double tallestM = side ? heightM : heightM - cutM - OVER_THE_BACKING_M;
      Vise vise = setup.hold().vise();
      double backedM =
          way == Way.VISE_SIDE
              ? Math.min(tallestM, vise.bedHeightM() + vise.jawHeightM())
              : tallestM;
      double overM = heightM - backedM;
      double clampM = side ? Math.max(backedM / 2, cutM - overM + STRAP_ROOM_M) : backedM / 2;
      if (backedM <= 0 || clampM > backedM - STRAP_ROOM_M / 2) {
        return cannot(way, "the straps find no room below the cut");
      }
      boolean mirrored = side ? setup.cut().offsetM() > 0 : pushesToMovable();
      return judged(
          way,
          setup,
          evidence(),
          CutLoad.of(evidence(), setup, mirrored, overM),
          load -> margins(way, load, clampM, backedM),
          overM,
          backedM,
          1,
          List.of(
              way == Way.ANGLE_PLATE ? plate(backedM) : "the vise itself, its side indicated true",
              straps + STRAPS,
              "parallels or the table under the stock"),
          List.of(
              "backed by " + length(backedM) + ", so " + length(overM) + " stands free",
              "the support stands on the side of the "
                  + (mirrored ? "movable" : "fixed")
                  + " jaw of the vise set-up"));
    }

    private String plate(double backedM) {
      return "an angle plate " + length(backedM) + " high, not higher, bolted down and squared";
    }

    private String length(double lengthM) {
      return wording.words(QuantityKind.LENGTH, lengthM);
    }

    private boolean pushesToMovable() {
      double movable =
          CutLoad.band(evidence(), Vocabulary.PUSH_MOVABLE).map(Band::likely).orElse(0.0);
      double fixed = CutLoad.band(evidence(), Vocabulary.PUSH_FIXED).map(Band::likely).orElse(0.0);
      return movable > fixed;
    }

    private ClampedMargins margins(Way way, HoldingLoad load, double clampM, double backedM) {
      double lengthM = setup.stock().lengthM();
      double thicknessM = setup.stock().thicknessM();
      Backing backing = way == Way.ANGLE_PLATE ? Backing.ANGLE_PLATE : Backing.VISE_SIDE;
      return new BackedHold(
              backing, straps, strapN, friction, clampM, backedM, lengthM, thicknessM, true)
          .under(load);
    }

    OtherHold flat(Optional<LaidFlat> laid) {
      if (laid.isEmpty()) {
        return cannot(Way.TABLE, "the shop has no square cutter as long as the plate is thick");
      }
      Setup lying = laid.get().setup();
      Evidence cut = EvidenceGathering.of(lying);
      double thickM = lying.stock().heightM();
      double halfM = lying.stock().thicknessM() / 2;
      return judged(
          Way.TABLE,
          lying,
          cut,
          CutLoad.of(cut, lying, lying.cut().offsetM() < 0, thickM),
          load ->
              new TableHold(
                      straps,
                      strapN,
                      friction,
                      BETWEEN_STRAPS * lying.stock().lengthM(),
                      halfM,
                      halfM)
                  .under(load),
          thickM,
          thickM,
          laid.get().strips(),
          List.of(
              straps + STRAPS + ", clear of the cutter",
              "packing under the plate, so that the cutter stays off the table"),
          List.of(
              lying.cut().operation() == Operation.BROAD_SIDE
                  ? "the edge is milled with the side of the cutter over the whole thickness"
                  : "the side is milled with the end of the cutter"));
    }

    private interface Statics {
      ClampedMargins under(HoldingLoad load);
    }

    private OtherHold judged(
        Way way,
        Setup job,
        Evidence cut,
        Optional<HoldingLoad> load,
        Statics statics,
        double standsM,
        double backedM,
        int strips,
        List<String> items,
        List<String> remarks) {
      if (load.isEmpty()) {
        return cannot(way, "the forces of the cut are beyond the formulas");
      }
      try {
        ClampedMargins margins = statics.under(load.get());
        Evidence held = HoldingCards.with(cut, margins, standsM, backedM);
        List<CardTrace> findings = cards.findings(held);
        double passS = CutLoad.band(cut, Vocabulary.PASS_TIME).map(Band::likely).orElse(0.0);
        return new OtherHold(
            way.words(),
            Adviser.verdict(findings, held).words(),
            findings.stream().map(CardTrace::id).toList(),
            margins(margins),
            items,
            job.cutter().name(),
            parts * strips,
            parts * strips * passS / 60,
            way.setUpMin().low(),
            way.setUpMin().likely(),
            way.setUpMin().high(),
            remarks,
            null);
      } catch (OutsideValidity refusal) {
        return cannot(way, "it is beyond the formulas: " + refusal.getMessage());
      }
    }

    private List<Quantity> margins(ClampedMargins margins) {
      return List.of(
          margin("slip margin", margins.slipMargin()),
          margin("lift margin", margins.liftMargin()),
          margin("tip margin toward the support", margins.tipMarginTowardSupport()),
          margin("tip margin away from it", margins.tipMarginAway()),
          margin("holding margin", margins.combinedMargin()));
    }

    private Quantity margin(String name, Band band) {
      return wording.quantity(name, QuantityKind.NUMBER, band);
    }

    private OtherHold cannot(Way way, @Nullable String why) {
      return new OtherHold(
          way.words(),
          null,
          List.of(),
          List.of(),
          List.of(),
          null,
          0,
          0,
          way.setUpMin().low(),
          way.setUpMin().likely(),
          way.setUpMin().high(),
          List.of(),
          why);
    }
  }
}

package org.standproud.advice.workholding;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standproud.advice.Adviser;
import org.standproud.advice.HoldReserve;
import org.standproud.advice.Quantity;
import org.standproud.advice.Score;
import org.standproud.advice.Verdict;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.PassHandling;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.holding.other.BackedHold;
import org.standproud.mechanics.holding.other.BackedHold.Backing;
import org.standproud.mechanics.holding.other.ClampedMargins;
import org.standproud.mechanics.holding.other.TableHold;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.setup.Band;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.units.QuantityKind;

/** Evaluates the other ways to hold one job, with its depth divided into passes. */
final class AlternativeHoldEvaluator {

  /** The cutter passes over the top of the backing by this; common practice, no source. */
  private static final double OVER_THE_BACKING_M = 3e-3;

  /** A backing ends this far below the top of a plate whose side is milled; no source. */
  private static final double CLEAR_OF_THE_TOP_M = 1e-3;

  /** Height of a strap's nose and its clearance below the cut. */
  private static final double STRAP_ROOM_M = 0.015;

  /** Height of the packing under a plate that lies flat; common practice, no source. */
  private static final double UNDER_A_FLAT_PLATE_M = 0.02;

  /** Part of the length between the outer straps. */
  private static final double BETWEEN_STRAPS = 0.8;

  private static final String STOPS =
      "a stop bolted to the table at each end; it is not counted in the margins";

  private static final String FENCE =
      "a fence along the far edge and a stop at each end close beside the cut, 2 bolts in each, all"
          + " touching; they are counted for what their bolts hold by friction";

  private final Setup setup;
  private final int parts;
  private final HoldingCards cards;
  private final Straps straps;
  private final Wording wording;

  /**
   * A job.
   *
   * @param setup the job with its depth already divided
   * @param parts number of passes
   * @param straps the straps
   * @param cards the cards used
   */
  AlternativeHoldEvaluator(Setup setup, int parts, Straps straps, HoldingCards cards) {
    this.setup = setup;
    this.parts = parts;
    this.cards = cards;
    this.straps = straps;
    this.wording = new Wording(setup.units());
  }

  OtherHold upright(Way way) {
    boolean side = setup.cut().operation() == Operation.BROAD_SIDE;
    double heightM = setup.stock().heightM();
    double cutM = setup.cut().axialDepthM();
    double tallestM = heightM - (side ? CLEAR_OF_THE_TOP_M : cutM + OVER_THE_BACKING_M);
    Vise vise = setup.hold().vise();
    double backedM =
        way == Way.VISE_SIDE ? Math.min(tallestM, vise.bedHeightM() + vise.jawHeightM()) : tallestM;
    double overM = heightM - backedM;
    double clampM = side ? Math.max(backedM / 2, cutM - overM + STRAP_ROOM_M) : backedM / 2;
    if (backedM <= 0 || clampM > backedM - STRAP_ROOM_M / 2) {
      return cannot(way, "the straps find no room below the cut");
    }
    double belowCutM = clampM + overM - cutM - STRAP_ROOM_M / 2;
    HeldJob job =
        HeldJob.upright(
            setup,
            straps,
            way.backingNPerM(),
            backedM,
            clampM,
            side ? belowCutM : OVER_THE_BACKING_M);
    boolean mirrored = side ? setup.cut().offsetM() > 0 : pushesToMovable(job.cut());
    return judged(
        way,
        job,
        CutLoad.of(job.cut(), setup, mirrored, overM),
        load -> backed(way, clampM, backedM).under(load),
        1,
        List.of(
            way == Way.ANGLE_PLATE ? plate(backedM) : "the vise itself, its side indicated true",
            straps.words(),
            STOPS,
            "the table or parallels under the stock, both tight"),
        "backed by "
            + length(backedM)
            + " on the side of the "
            + (mirrored ? "movable" : "fixed")
            + " jaw, so "
            + length(overM)
            + " stands free");
  }

  private BackedHold backed(Way way, double clampM, double backedM) {
    return new BackedHold(
        way == Way.ANGLE_PLATE ? Backing.ANGLE_PLATE : Backing.VISE_SIDE,
        straps.count(),
        straps.forceEachN(),
        straps.friction(),
        clampM,
        backedM,
        setup.stock().lengthM(),
        setup.stock().thicknessM(),
        true);
  }

  private String plate(double backedM) {
    return "an angle plate " + length(backedM) + " high, not higher, bolted down and squared";
  }

  private String length(double lengthM) {
    return wording.words(QuantityKind.LENGTH, lengthM);
  }

  private static boolean pushesToMovable(Evidence cut) {
    double movable = CutLoad.band(cut, Vocabulary.PUSH_MOVABLE).map(Band::likely).orElse(0.0);
    double fixed = CutLoad.band(cut, Vocabulary.PUSH_FIXED).map(Band::likely).orElse(0.0);
    return movable > fixed;
  }

  OtherHold flat(Catalogue shop) {
    Optional<LaidFlat> laid = LaidFlat.of(setup, shop);
    if (laid.isEmpty()) {
      return cannot(Way.TABLE, "the shop has no square cutter as long as the plate is thick");
    }
    Setup lying = laid.get().setup();
    double thickM = lying.stock().heightM();
    double acrossM = lying.stock().thicknessM();
    boolean edge = lying.cut().operation() == Operation.BROAD_SIDE;
    double clearM = edge ? UNDER_A_FLAT_PLATE_M : STRAP_ROOM_M;
    HeldJob job = HeldJob.flat(lying, straps, UNDER_A_FLAT_PLATE_M, clearM);
    // Across from a cutter that mills the edge, or where a cutter above pushes to.
    boolean fenceAtMovable = edge ? lying.cut().offsetM() > 0 : pushesToMovable(job.cut());
    TableHold table =
        new TableHold(
            straps.count(),
            straps.forceEachN(),
            straps.friction(),
            BETWEEN_STRAPS * lying.stock().lengthM(),
            acrossM / 2,
            acrossM / 2,
            straps.barN(),
            straps.barN());
    return judged(
        Way.TABLE,
        job,
        CutLoad.of(job.cut(), lying, fenceAtMovable, thickM),
        table::under,
        laid.get().strips(),
        List.of(
            straps.words() + ", clear of the cutter",
            FENCE,
            length(UNDER_A_FLAT_PLATE_M)
                + " of packing under the plate, so that the cutter stays"
                + " off the table"),
        edge
            ? "the edge is milled with the side of the cutter over the whole thickness and stands"
                + " over its packing by no more than "
                + length(thickM)
            : "the side is milled with the end of the cutter; the straps are moved once to reach"
                + " under them");
  }

  private interface Statics {
    ClampedMargins under(HoldingLoad load);
  }

  private OtherHold judged(
      Way way,
      HeldJob job,
      Optional<HoldingLoad> load,
      Statics statics,
      int strips,
      List<String> items,
      String remark) {
    if (load.isEmpty()) {
      return cannot(way, "the forces of the cut are beyond the formulas");
    }
    try {
      ClampedMargins margins = statics.under(load.get());
      Evidence held = job.with(margins);
      List<CardTrace> findings =
          cards.findings(held).stream()
              .sorted(Comparator.comparing(CardTrace::severity, Comparator.reverseOrder()))
              .toList();
      Verdict verdict = Adviser.verdict(findings, held);
      int passes = parts * strips;
      double passS = CutLoad.band(job.cut(), Vocabulary.PASS_TIME).map(Band::likely).orElse(0.0);
      double minutes = PassHandling.likelyS(passes, passS, setup.machine()) / 60;
      return new OtherHold(
          way.words(),
          argument(way, job, passes, margins, verdict, minutes, ofKind(findings, Kind.OPEN).size()),
          verdict,
          Score.weighted(findings, HoldReserve.of(held)),
          ofKind(findings, Kind.FAIL),
          ofKind(findings, Kind.OPEN),
          margins(margins),
          items,
          job.setup().cutter().name(),
          job.setup().cut().feed().words(),
          passes,
          minutes,
          way.setUpMin().low() + straps.moreMinutes(),
          way.setUpMin().likely() + straps.moreMinutes(),
          way.setUpMin().high() + straps.moreMinutes(),
          List.of(remark, job.springs()),
          null);
    } catch (OutsideValidity refusal) {
      return cannot(way, "it is beyond the formulas: " + refusal.getMessage());
    }
  }

  private static List<HeldFinding> ofKind(List<CardTrace> findings, Kind kind) {
    return findings.stream().filter(f -> f.kind() == kind).map(HeldFinding::of).toList();
  }

  private String argument(
      Way way,
      HeldJob job,
      int passes,
      ClampedMargins margins,
      Verdict verdict,
      double minutes,
      int open) {
    return "Hold it "
        + way.words()
        + ", take the "
        + job.setup().cutter().name()
        + " and feed toward "
        + job.setup().cut().feed().words()
        + inPasses(passes)
        + ": "
        + Math.round(way.setUpMin().likely() + straps.moreMinutes())
        + " min to set up and "
        + String.format(Locale.ROOT, "%.1f", minutes)
        + " min to cut. "
        + way.why()
        + ": the hold is "
        + wording.words(QuantityKind.NUMBER, margins.combinedMargin().low())
        + " times the load at worst, and the cards say "
        + verdict
        + (open == 0 ? "." : "; " + open + " of them cannot judge it.");
  }

  private String inPasses(int passes) {
    double eachM =
        setup.cut().operation() == Operation.TOP_EDGE
            ? setup.cut().axialDepthM()
            : setup.sideDepthM();
    if (passes == 1) {
      return " in one pass of " + length(eachM);
    }
    return passes == parts
        ? " in " + passes + " passes of " + length(eachM)
        : " in " + parts + " levels of " + length(eachM) + ", " + passes / parts + " strips each";
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

  private static OtherHold cannot(Way way, String why) {
    return new OtherHold(
        way.words(),
        "It cannot be held " + way.words() + ": " + why + ".",
        null,
        0,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        null,
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

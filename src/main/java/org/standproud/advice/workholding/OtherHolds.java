package org.standproud.advice.workholding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.CutterSwap;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.SuitingCutters;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * The other ways to hold a job, best first. Each is judged by every card that is not about jaws and
 * packing, with the margins of that hold in place of the vise's. What cannot be computed for it is
 * left open, and an open stop leaves it not judged. Where one pass does not hold with the usual
 * straps, as many as fit are tried, and then the same depth in as few passes as do, fed as proposed
 * or the other way, with the cutter proposed or the likeliest other one of the shop.
 *
 * @param recommended whether to prefer them: the vise cannot be made right and one of them holds
 * @param conclusion the conclusion, in one sentence
 * @param holds each way
 * @param judgedBy ids of the cards used
 * @param notAsked ids of the cards about jaws and packing, which are left out
 */
public record OtherHolds(
    boolean recommended,
    String conclusion,
    List<OtherHold> holds,
    List<String> judgedBy,
    List<String> notAsked) {

  private static final Comparator<OtherHold> QUICKEST =
      Comparator.comparingDouble(hold -> hold.setUpLikely() + hold.cutMinutes());

  private static final int[] PASSES = {1, 2, 3, 4, 6, 8, 12};

  /** A thinner pass is not worth its time; common practice, no source. */
  private static final double LEAST_DEPTH_M = 0.2e-3;

  /** Copies the lists. */
  public OtherHolds {
    holds = List.copyOf(holds);
    judgedBy = List.copyOf(judgedBy);
    notAsked = List.copyOf(notAsked);
  }

  /**
   * The other ways to hold the job of a set-up.
   *
   * @param setup the job as proposed in the vise
   * @param viseHolds whether the vise holds as it is, or some remedy makes it hold
   * @param ruleBase the rule base
   * @param shop the shop's cutters
   */
  public static OtherHolds of(Setup setup, boolean viseHolds, RuleBase ruleBase, Catalogue shop) {
    HoldingCards cards = new HoldingCards(ruleBase);
    List<OtherHold> holds =
        new ArrayList<>(
            List.of(
                fewest(setup, cards, shop, r -> r.upright(Way.ANGLE_PLATE)),
                fewest(setup, cards, shop, r -> r.upright(Way.VISE_SIDE)),
                fewest(setup, cards, shop, r -> r.flat(shop))));
    holds.sort(Comparator.comparingInt(OtherHolds::rank).thenComparing(QUICKEST));
    boolean holding = holds(holds.get(0));
    return new OtherHolds(
        holding && !viseHolds,
        conclusion(holds.get(0), holding, viseHolds),
        holds,
        List.copyOf(cards.asked()),
        List.copyOf(cards.notAsked()));
  }

  /** The quickest with as few passes as will hold; with one, if none will. */
  private static OtherHold fewest(
      Setup setup,
      HoldingCards cards,
      Catalogue shop,
      Function<AlternativeHoldEvaluator, OtherHold> evaluate) {
    OtherHold one = evaluate.apply(new AlternativeHoldEvaluator(setup, 1, Straps.of(setup), cards));
    if (one.cannot() != null || holds(one)) {
      return one;
    }
    Straps close = Straps.close(setup);
    for (int passes : PASSES) {
      if (passes > 1 && depthM(setup) / passes < LEAST_DEPTH_M) {
        break;
      }
      OtherHold best =
          variants(lighter(setup, passes), shop)
              .map(way -> evaluate.apply(new AlternativeHoldEvaluator(way, passes, close, cards)))
              .min(Comparator.comparing((OtherHold hold) -> !holds(hold)).thenComparing(QUICKEST))
              .orElse(one);
      if (holds(best)) {
        return best;
      }
    }
    return one;
  }

  /** As proposed and with the likeliest other cutter, each fed either way. */
  private static Stream<Setup> variants(Setup setup, Catalogue shop) {
    Stream<Setup> swapped =
        SuitingCutters.of(setup, shop).stream().limit(1).map(c -> CutterSwap.with(setup, c));
    return Stream.concat(Stream.of(setup), swapped)
        .flatMap(s -> Stream.of(s, SetupEditor.of(s).reversed().done()));
  }

  /** The same total depth divided into passes: down the edge or into the side. */
  private static Setup lighter(Setup setup, int passes) {
    return setup.cut().operation() == Operation.TOP_EDGE
        ? SetupEditor.of(setup).depth(setup.cut().axialDepthM() / passes).done()
        : CutterSwap.withSideDepth(setup, setup.sideDepthM() / passes);
  }

  private static double depthM(Setup setup) {
    return setup.cut().operation() == Operation.TOP_EDGE
        ? setup.cut().axialDepthM()
        : setup.sideDepthM();
  }

  private static boolean holds(OtherHold hold) {
    return rank(hold) <= Verdict.RUN_WITH_CARE.ordinal();
  }

  private static int rank(OtherHold hold) {
    Verdict verdict = hold.verdict();
    return verdict == null ? Verdict.values().length : verdict.ordinal();
  }

  private static String conclusion(OtherHold best, boolean holding, boolean viseHolds) {
    if (!holding) {
      return viseHolds
          ? "Stay with the vise: none of the other ways is sure to hold."
          : "None of the other ways is sure to hold either, in however many passes.";
    }
    return viseHolds
        ? "The vise can do it; " + best.way() + " would hold too."
        : "The vise cannot be made right for this cut: hold it " + best.way() + ".";
  }
}

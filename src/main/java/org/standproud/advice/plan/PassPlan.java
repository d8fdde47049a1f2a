package org.standproud.advice.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.PassHandling;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/**
 * The passes that remove a given amount: as few roughing passes of one depth as no stop refuses,
 * then one finishing pass of 0.25 mm or 0.010 in, or half or a quarter of that, at no more than
 * 0.08 mm a tooth (common practice, no source). Each pass is judged on the stock left by then, with
 * the cutter placed and fed as it runs best.
 *
 * @param conclusion the conclusion, in one sentence
 * @param passes the passes; empty if no depth is safe for roughing
 * @param cutMinutes likely time of all passes, with returns and depth settings; measuring and
 *     deburring are extra
 */
public record PassPlan(String conclusion, List<PlannedPass> passes, double cutMinutes) {

  private static final double FINISH_M = 0.25e-3;
  private static final double FINISH_INCH_M = 0.010 * 0.0254;

  /** Greatest feed per tooth of a finishing pass in m; common practice, no source. */
  public static final double FINISH_FEED_M = 0.08e-3;

  /** Numbers of roughing passes tried; with more, another hold is quicker. */
  private static final int[] ROUGHING = {1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20};

  /** Fractions of the usual allowance left for the last pass if a larger one is stopped. */
  private static final double[] LEFT_TO_FINISH = {1, 0.5, 0.25};

  /** Copies the list. */
  public PassPlan {
    passes = List.copyOf(passes);
  }

  /**
   * What roughing leaves for the last pass: common practice, no source.
   *
   * @param units the caller's units
   * @return in m
   */
  public static double finishAllowanceM(UnitSystem units) {
    return units == UnitSystem.INCH ? FINISH_INCH_M : FINISH_M;
  }

  /**
   * The most that can be removed: on the top edge what is above the jaws, on the broad side the
   * thickness.
   *
   * @return in m
   */
  public static double mostM(Setup setup) {
    return switch (setup.cut().operation()) {
      case TOP_EDGE -> setup.stickOutM();
      case BROAD_SIDE -> setup.stock().thicknessM();
    };
  }

  /**
   * Plans the passes.
   *
   * @param setup the set-up; its own depth is not used
   * @param wholeM amount to remove in m: from the top edge, or from the broad side
   * @param ruleBase the rule base
   * @throws IllegalArgumentException if that is not positive, or leaves no stock above the jaws
   */
  public static PassPlan of(Setup setup, double wholeM, RuleBase ruleBase) {
    double most = mostM(setup);
    if (!(wholeM > 0 && wholeM < most)) {
      throw new IllegalArgumentException(
          "what comes off must lie between nothing and " + most + " m, got " + wholeM);
    }
    return new Planning(setup, wholeM, new Trials(ruleBase)).plan();
  }

  /** The state of one plan. */
  private static final class Planning {
    private final Setup setup;
    private final double roughM;
    private final double finishM;
    private final Variants variants;
    private final Wording wording;

    Planning(Setup setup, double wholeM, Trials trials) {
      double allowance = finishAllowanceM(setup.units());
      // The caller's planned passes are not these, and each of these is judged alone.
      this.setup = setup.with(setup.cut(), List.of());
      this.variants = new Variants(trials);
      this.wording = new Wording(setup.units());
      this.finishM = finishM(wholeM, Math.min(wholeM, allowance));
      this.roughM = wholeM - finishM;
    }

    /** The most the last pass can remove; the whole allowance, if none of it can run. */
    private double finishM(double wholeM, double mostM) {
      for (double part : LEFT_TO_FINISH) {
        if (runs(finishing(wholeM, part * mostM))) {
          return part * mostM;
        }
      }
      return mostM;
    }

    PassPlan plan() {
      Setup finish = variants.best(finishing(roughM + finishM, finishM));
      if (roughM <= 0) {
        return planned(List.of(finish));
      }
      int count = roughing();
      if (count == 0) {
        return new PassPlan(
            "No roughing depth tried runs without a stop in this hold: change the hold first.",
            List.of(),
            0);
      }
      List<Setup> passes = new ArrayList<>();
      double takesM = roughM / count;
      for (int i = 0; i < count; i++) {
        passes.add(variants.best(Variants.on(setup, i * takesM, takesM, Stage.ROUGH)));
      }
      passes.add(finish);
      return planned(passes);
    }

    private Setup finishing(double wholeM, double takesM) {
      Setup pass = Variants.on(setup, wholeM - takesM, takesM, Stage.FINISH);
      Band feed = pass.cut().feedPerToothM();
      double slower = Math.min(1, FINISH_FEED_M / feed.likely());
      return SetupEditor.of(pass).feed(feed.times(slower)).done();
    }

    /** The least number of roughing passes that can run, or 0. */
    private int roughing() {
      for (int count : ROUGHING) {
        double takesM = roughM / count;
        boolean first = runs(Variants.on(setup, 0, takesM, Stage.ROUGH));
        if (first && runs(Variants.on(setup, roughM - takesM, takesM, Stage.ROUGH))) {
          return count;
        }
      }
      return 0;
    }

    private boolean runs(Setup pass) {
      return !variants.judged(variants.best(pass)).isStopped();
    }

    private PassPlan planned(List<Setup> passes) {
      List<PlannedPass> listed = new ArrayList<>();
      double minutes = 0;
      for (int i = 0; i < passes.size(); i++) {
        PlannedPass pass = pass(i, passes.size(), passes.get(i));
        listed.add(pass);
        minutes += pass.minutes();
      }
      minutes += (passes.size() - 1) * PassHandling.betweenS(setup.machine()).likely() / 60;
      boolean runs = passes.stream().noneMatch(p -> variants.judged(p).isStopped());
      return new PassPlan(conclusion(passes.size() - 1, runs), listed, minutes);
    }

    private String conclusion(int rough, boolean runs) {
      String many = rough == 1 ? "One roughing pass" : rough + " roughing passes";
      return (rough == 0 ? "One finishing pass" : many + " and one finishing pass")
          + (runs ? " may run in this hold." : ", but a stop stands against at least one of them.");
    }

    private PlannedPass pass(int index, int count, Setup pass) {
      Judged judged = variants.judged(pass);
      List<String> against = new ArrayList<>(judged.stops());
      against.addAll(judged.cautions());
      boolean finish = pass.cut().stage() == Stage.FINISH;
      double takesM = finish ? finishM : roughM / (count - 1);
      return new PlannedPass(
          index + 1,
          pass.cut().stage().words(),
          wording.quantity("takes", QuantityKind.LENGTH, Band.exactly(takesM)),
          quantity(judged, Vocabulary.AXIAL_DEPTH),
          quantity(judged, Vocabulary.CUTTER_OFFSET),
          pass.cut().feed().words(),
          word(judged, Vocabulary.MODE),
          quantity(judged, Vocabulary.FEED_PER_TOOTH),
          quantity(judged, Vocabulary.SPINDLE_SPEED),
          edges(pass, finish),
          judged.verdict(),
          judged.score(),
          against,
          firstContact(judged),
          number(judged, Vocabulary.PASS_TIME) / 60,
          after(index, count));
    }

    private Quantity quantity(Judged judged, Fact fact) {
      return wording.quantity(fact, judged.evidence().get(fact));
    }

    private static @Nullable String word(Judged judged, Fact fact) {
      return judged.evidence().get(fact) instanceof Value.Text text ? text.word() : null;
    }

    private static double number(Judged judged, Fact fact) {
      return judged.evidence().get(fact) instanceof Value.Quantity q ? q.band().likely() : 0;
    }

    private static String edges(Setup pass, boolean finish) {
      EdgeCondition edge = pass.cutter().edge();
      String now = edge == null ? "not known" : edge.words();
      return finish && edge != EdgeCondition.FRESH
          ? "fresh edges for this pass; the cutter's are " + now
          : "as they are: " + now;
    }

    private String firstContact(Judged judged) {
      Value force = judged.evidence().get(Vocabulary.FIRST_CONTACT_FORCE);
      String jaw = word(judged, Vocabulary.FIRST_CONTACT_JAW);
      if (jaw == null) {
        return "not known: bring the cutter in by hand as slowly as it will cut";
      }
      boolean pulls =
          judged.evidence().get(Vocabulary.FIRST_CONTACT_PULLS) instanceof Value.Truth truth
              && truth.yes();
      String blow =
          "the first bite pushes toward the "
              + jaw
              + " with "
              + wording.words(Vocabulary.FIRST_CONTACT_FORCE, force);
      return pulls
          ? blow + " and may pull the plate to the cutter: bring it in at half the feed or less"
          : blow + ": bring it in at half the feed until the whole arc is in the stock";
    }

    private static List<String> after(int index, int count) {
      if (index == count - 1) {
        return List.of(
            "stop the spindle, clear the chips and measure at both ends before unclamping",
            "take off the burr before the piece is turned or clamped again");
      }
      if (index == 0) {
        return List.of(
            "stop the spindle, clear the chips and look whether the plate has moved in the jaws",
            "measure at both ends and set the depth of the next pass by that");
      }
      return index == count - 2
          ? List.of("stop the spindle, take off the burr and measure before the last pass")
          : List.of();
    }
  }
}

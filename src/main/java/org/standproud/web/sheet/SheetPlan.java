package org.standproud.web.sheet;

import org.jspecify.annotations.Nullable;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.advice.plan.PassPlan;
import org.standproud.advice.whatif.Trials;
import org.standproud.drawing.EnvelopeChart;
import org.standproud.drawing.Figures;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.units.QuantityKind;
import org.standproud.web.recommendation.PassTable;

/**
 * What a sheet says beyond the record: the passes, and how far the cut may go, judged when the
 * sheet is printed.
 *
 * @param amount what the passes take off, in words
 * @param table the passes; null if there is not so much to mill
 * @param envelope how far the cut may go, as a chart
 * @param revision revision of the rule base that judged them
 */
record SheetPlan(String amount, @Nullable PassTable table, String envelope, String revision) {

  private static final int FINENESS = 24;

  /**
   * Plans.
   *
   * @param setup the set-up
   * @param remove what is to come off, in the length unit of the set-up; null for what the pass on
   *     record takes
   * @param ruleBase the cards
   */
  static SheetPlan of(Setup setup, @Nullable Double remove, RuleBase ruleBase) {
    double wholeM =
        remove == null
            ? PassTable.onePassM(setup)
            : QuantityKind.LENGTH.unit(setup.units()).toSi(remove);
    return new SheetPlan(
        new Figures(setup.units()).length(wholeM),
        table(setup, wholeM, ruleBase),
        EnvelopeChart.of(SafeEnvelope.cut(setup, new Trials(ruleBase), FINENESS), "envelope"),
        ruleBase.revision().id());
  }

  private static @Nullable PassTable table(Setup setup, double wholeM, RuleBase ruleBase) {
    try {
      return PassTable.of(PassPlan.of(setup, wholeM, ruleBase));
    } catch (IllegalArgumentException notSoMuchToMill) {
      return null;
    }
  }
}

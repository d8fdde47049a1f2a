package org.standproud.web.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.advice.compare.FieldChange;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.advice.plan.PassPlan;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.whatif.Trials;
import org.standproud.drawing.EnvelopeChart;
import org.standproud.drawing.Figures;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.units.QuantityKind;
import org.standproud.web.recommendation.PassTable;

/**
 * What a sheet adds to the record: the passes, and how far the cut may go, judged when the sheet is
 * printed.
 *
 * @param amount the amount that the passes remove, in words
 * @param table the passes, if requested; null if not, or if there is less stock than that
 * @param tooMuch whether more was to be removed than there is
 * @param envelope how far the cut may go, as a chart
 * @param fix what would clear the stops, in words; null if there are none or nothing is found
 * @param revision revision of the rule base that judged them
 */
record SheetPlan(
    String amount,
    @Nullable PassTable table,
    boolean tooMuch,
    String envelope,
    @Nullable String fix,
    String revision) {

  private static final int FINENESS = 24;

  /**
   * Plans.
   *
   * @param setup the set-up
   * @param remove amount to remove, in the length unit of the set-up; null for the recorded pass
   *     without a plan
   * @param ruleBase the cards
   * @param catalogue the catalogue, for its cutters
   * @param verdict the recorded verdict
   */
  static SheetPlan of(
      Setup setup,
      @Nullable Double remove,
      RuleBase ruleBase,
      Catalogue catalogue,
      Verdict verdict) {
    double wholeM =
        remove == null
            ? PassTable.onePassM(setup)
            : QuantityKind.LENGTH.unit(setup.units()).toSi(remove);
    PassTable table = remove == null ? null : table(setup, wholeM, ruleBase);
    boolean stopped = verdict == Verdict.DO_NOT_RUN;
    return new SheetPlan(
        new Figures(setup.units()).length(wholeM),
        table,
        remove != null && table == null,
        EnvelopeChart.of(SafeEnvelope.cut(setup, new Trials(ruleBase), FINENESS), "envelope"),
        stopped ? fix(Remedies.of(setup, ruleBase, catalogue)) : null,
        ruleBase.revision().id());
  }

  private static @Nullable String fix(Remedies remedies) {
    if (remedies.ways().isEmpty()) {
      return null;
    }
    List<String> changes =
        remedies.ways().get(0).changes().stream().map(FieldChange::words).toList();
    return String.join("; ", changes) + ".";
  }

  private static @Nullable PassTable table(Setup setup, double wholeM, RuleBase ruleBase) {
    try {
      return PassTable.of(PassPlan.of(setup, wholeM, ruleBase));
    } catch (IllegalArgumentException notSoMuchToMill) {
      return null;
    }
  }
}

package org.standproud.web.form;

import java.util.Map;
import org.standproud.advice.Advice;
import org.standproud.advice.Adviser;
import org.standproud.assessment.TraceDocument;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Setup;

/**
 * A set-up judged while it is being entered. It is not recorded, so it has no id and no job can be
 * run on it.
 *
 * @param setup the set-up
 * @param evidence its evidence
 * @param advice its advice
 * @param margins how far each finding is from flipping, by its card
 */
record Draft(
    Setup setup, Evidence evidence, Advice advice, Map<String, TraceDocument.Distance> margins) {

  static Draft of(Setup setup, RuleBase ruleBase) {
    Evidence evidence = EvidenceGathering.of(setup);
    RuleTrace trace = ruleBase.evaluate(evidence);
    return new Draft(
        setup,
        evidence,
        Adviser.advise(evidence, trace, setup.units()),
        TraceDocument.margins(trace));
  }
}

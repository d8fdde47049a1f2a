package org.standproud.advice.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standproud.advice.Adviser;
import org.standproud.advice.HoldReserve;
import org.standproud.advice.Score;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.setup.Setup;

/**
 * Judges passes as an assessment does, with the same draws, and caches the results, up to a budget.
 * Not thread-safe.
 */
final class PassTrials {

  private final RuleBase ruleBase;
  private final int budget;
  private final Map<Setup, JudgedPass> known = new HashMap<>();

  PassTrials(RuleBase ruleBase, int budget) {
    this.ruleBase = ruleBase;
    this.budget = budget;
  }

  JudgedPass of(Setup setup) {
    JudgedPass judged = known.get(setup);
    if (judged == null) {
      judged = judged(setup);
      known.put(setup, judged);
    }
    return judged;
  }

  private JudgedPass judged(Setup setup) {
    JointEvidence joint = EvidenceGathering.jointly(setup);
    Evidence evidence = joint.evidence();
    RuleKinds kinds = ruleBase.kinds(evidence);
    HoldingChance chance = joint.chance();
    return new JudgedPass(
        setup,
        Adviser.verdict(ruleBase, kinds, evidence),
        chance == null ? 0 : chance.probability(),
        Score.left(List.copyOf(kinds.findings()), HoldReserve.of(evidence)),
        evidence);
  }

  /** Number of set-ups judged, each counted once. */
  int count() {
    return known.size();
  }

  /** Whether the budget is used up: only what a plan cannot do without is judged from now on. */
  boolean isSpent() {
    return known.size() >= budget;
  }
}

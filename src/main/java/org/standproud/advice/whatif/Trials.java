package org.standproud.advice.whatif;

import java.util.HashMap;
import java.util.Map;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;

/** Judges set-ups with one rule base and caches the results. Not thread-safe. */
public final class Trials {

  private final RuleBase ruleBase;
  private final Map<Setup, Judged> known = new HashMap<>();

  /**
   * Creates trials with a rule base.
   *
   * @param ruleBase the rule base
   */
  public Trials(RuleBase ruleBase) {
    this.ruleBase = ruleBase;
  }

  /** Judges a set-up. */
  public Judged of(Setup setup) {
    Judged judged = known.get(setup);
    if (judged == null) {
      judged = new Judged(ruleBase, EvidenceGathering.of(setup));
      known.put(setup, judged);
    }
    return judged;
  }

  /** Number of set-ups judged so far, each counted once. */
  public int count() {
    return known.size();
  }

  /** The rule base. */
  public RuleBase ruleBase() {
    return ruleBase;
  }
}

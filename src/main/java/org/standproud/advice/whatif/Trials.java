package org.standproud.advice.whatif;

import java.util.HashMap;
import java.util.Map;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;

/** Judges set-ups by one rule base and remembers what it judged; for one thread. */
public final class Trials {

  private final RuleBase ruleBase;
  private final Map<Setup, Judged> known = new HashMap<>();

  /**
   * Trials by one rule base.
   *
   * @param ruleBase the cards
   */
  public Trials(RuleBase ruleBase) {
    this.ruleBase = ruleBase;
  }

  /** What the cards say of a set-up. */
  public Judged of(Setup setup) {
    Judged judged = known.get(setup);
    if (judged == null) {
      judged = new Judged(ruleBase, EvidenceGathering.of(setup));
      known.put(setup, judged);
    }
    return judged;
  }

  /** How many set-ups were judged so far, each counted once. */
  public int count() {
    return known.size();
  }

  /** The cards. */
  public RuleBase ruleBase() {
    return ruleBase;
  }
}

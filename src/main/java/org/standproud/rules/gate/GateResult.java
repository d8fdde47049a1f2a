package org.standproud.rules.gate;

import java.util.List;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.RuleBase;

/** What the gate decided. */
public sealed interface GateResult {

  /**
   * The cards passed.
   *
   * @param ruleBase the rule base, ready to serve
   * @param coverage what the examples reached
   */
  record Published(RuleBase ruleBase, Coverage coverage) implements GateResult {}

  /**
   * The cards are refused.
   *
   * @param errors what is wrong, by file, line and column; at least one
   */
  record Rejected(List<CardError> errors) implements GateResult {
    /** Copies the list. */
    public Rejected {
      errors = List.copyOf(errors);
    }
  }
}

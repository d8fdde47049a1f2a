package org.standproud.rules.gate;

import java.util.List;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.RuleBase;

/** The result of the gate. */
public sealed interface GateResult {

  /** What is unusual but allowed in the cards. */
  List<CardWarning> warnings();

  /**
   * The cards passed.
   *
   * @param ruleBase the rule base, ready for service
   * @param coverage coverage by the examples
   * @param warnings what is unusual but allowed
   */
  record Published(RuleBase ruleBase, Coverage coverage, List<CardWarning> warnings)
      implements GateResult {
    /** Copies the list. */
    public Published {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * The cards are refused.
   *
   * @param errors the errors by file, line and column; at least one
   * @param warnings further warnings
   */
  record Rejected(List<CardError> errors, List<CardWarning> warnings) implements GateResult {
    /** Copies the lists. */
    public Rejected {
      errors = List.copyOf(errors);
      warnings = List.copyOf(warnings);
    }

    /** A refusal without warnings. */
    public Rejected(List<CardError> errors) {
      this(errors, List.of());
    }
  }
}

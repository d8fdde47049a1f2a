package org.standproud.rules.gate;

import java.util.List;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.RuleBase;

/** What the gate decided. */
public sealed interface GateResult {

  /** What is odd about the cards, though it is no error. */
  List<CardWarning> warnings();

  /**
   * The cards passed.
   *
   * @param ruleBase the rule base, ready to serve
   * @param coverage what the examples reached
   * @param warnings what is odd all the same
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
   * @param errors what is wrong, by file, line and column; at least one
   * @param warnings what is odd besides
   */
  record Rejected(List<CardError> errors, List<CardWarning> warnings) implements GateResult {
    /** Copies the lists. */
    public Rejected {
      errors = List.copyOf(errors);
      warnings = List.copyOf(warnings);
    }

    /** Nothing but errors. */
    public Rejected(List<CardError> errors) {
      this(errors, List.of());
    }
  }
}

package org.standproud.rules.publishing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.trace.RuleTrace;

/**
 * Cards tried on a set-up without being published.
 *
 * @param trace what they say of it, or null if they cannot be built
 * @param inService what the cards in service say of it, or null if none are
 * @param errors what the gate would refuse
 * @param warnings what is odd all the same
 */
public record Trial(
    @Nullable RuleTrace trace,
    @Nullable RuleTrace inService,
    List<CardError> errors,
    List<CardWarning> warnings) {

  /** Copies the lists. */
  public Trial {
    errors = List.copyOf(errors);
    warnings = List.copyOf(warnings);
  }
}

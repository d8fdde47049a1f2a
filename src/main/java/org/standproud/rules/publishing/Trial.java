package org.standproud.rules.publishing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.trace.RuleTrace;

/**
 * Cards tried on a set-up without being published.
 *
 * @param trace their result, or null if they do not compile
 * @param inService the result of the cards in service, or null if there are none
 * @param errors errors that the gate would report
 * @param warnings what is unusual but allowed
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

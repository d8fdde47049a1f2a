package org.standproud.web.cards;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.publishing.RevisionDiff;
import org.standproud.shop.impact.ImpactJob;

/**
 * The results shown beside a card in the editor.
 *
 * @param message result of the action; null after a plain check
 * @param passes whether the gate accepts it
 * @param errors errors of the gate
 * @param warnings what is unusual but allowed
 * @param changes differences from the cards in service
 * @param trial result of a trial; null if it was not tried
 * @param impact progress of the impact run; null if there is none
 */
public record DraftResult(
    @Nullable String message,
    boolean passes,
    List<ErrorPlace> errors,
    List<String> warnings,
    RevisionDiff changes,
    @Nullable TrialView trial,
    ImpactJob.@Nullable Account impact) {

  /** Copies the lists. */
  public DraftResult {
    errors = List.copyOf(errors);
    warnings = List.copyOf(warnings);
  }

  /** The result of the gate. */
  static DraftResult of(CardDraft draft, GateResult result, RevisionDiff changes) {
    List<CardError> errors =
        result instanceof GateResult.Rejected rejected ? rejected.errors() : List.of();
    return new DraftResult(
        null,
        result instanceof GateResult.Published,
        errors.stream().map(e -> ErrorPlace.of(e, draft)).toList(),
        result.warnings().stream().map(CardWarning::toString).toList(),
        changes,
        null,
        null);
  }

  DraftResult saying(String message) {
    return new DraftResult(message, passes, errors, warnings, changes, trial, impact);
  }

  DraftResult tried(TrialView tried) {
    return new DraftResult(message, passes, errors, warnings, changes, tried, impact);
  }

  DraftResult with(ImpactJob.Account job) {
    return new DraftResult(message, passes, errors, warnings, changes, trial, job);
  }
}

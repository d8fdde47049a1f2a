package org.standproud.web.cards;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.publishing.RevisionDiff;
import org.standproud.shop.impact.ImpactJob;

/**
 * What is said of a card that somebody is writing.
 *
 * @param message what became of what was asked for; null if only a check was
 * @param passes whether the gate lets it pass
 * @param errors what the gate would refuse
 * @param warnings what is odd all the same
 * @param changes what differs from the cards in service
 * @param trial what came of trying it; null if it was not tried
 * @param impact how far the work on past jobs is; null if it was not asked for
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

  /** What the gate says. */
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

  DraftResult saying(String told) {
    return new DraftResult(told, passes, errors, warnings, changes, trial, impact);
  }

  DraftResult tried(TrialView tried) {
    return new DraftResult(message, passes, errors, warnings, changes, tried, impact);
  }

  DraftResult with(ImpactJob.Account job) {
    return new DraftResult(message, passes, errors, warnings, changes, trial, job);
  }
}

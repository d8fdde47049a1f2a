package org.standproud.rules.publishing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.impact.ImpactReport;

/** The result of a submission. Unless it is Published, the rule base in service is unchanged. */
public sealed interface PublishResult {

  /**
   * The cards are in service.
   *
   * @param revision their revision
   * @param warnings what is unusual but allowed
   * @param impact what they change for past jobs
   */
  record Published(StoredRevision revision, List<CardWarning> warnings, ImpactReport impact)
      implements PublishResult {
    /** Copies the list. */
    public Published {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * The cards passed the gate and wait for publication.
   *
   * @param proposal the proposal
   * @param warnings what is unusual but allowed
   */
  record Proposed(Proposal proposal, List<CardWarning> warnings) implements PublishResult {
    /** Copies the list. */
    public Proposed {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * The gate refused the cards.
   *
   * @param errors the errors by file, line and column
   * @param warnings further warnings
   */
  record Refused(List<CardError> errors, List<CardWarning> warnings) implements PublishResult {
    /** Copies the lists. */
    public Refused {
      errors = List.copyOf(errors);
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Another revision was published since the cards were written; review them again.
   *
   * @param latest the revision now in service, or null if there is none
   */
  record Stale(@Nullable String latest) implements PublishResult {}

  /**
   * The proposer may not publish them.
   *
   * @param proposal the proposal, which still waits
   */
  record SecondPersonNeeded(Proposal proposal) implements PublishResult {}

  /**
   * A stop is weakened without a reason that names it.
   *
   * @param proposal the proposal, which still waits
   * @param weakened how each stop that is not named is weakened
   */
  record ReasonNeeded(Proposal proposal, List<CardWarning> weakened) implements PublishResult {
    /** Copies the list. */
    public ReasonNeeded {
      weakened = List.copyOf(weakened);
    }
  }

  /**
   * A stop is weakened and the impact on past jobs was not shown before; publishing again soon
   * after confirms it.
   *
   * @param proposal the proposal, which still waits
   * @param weakened how each stop is weakened
   * @param impact what changes for past jobs
   */
  record ImpactToRead(Proposal proposal, List<CardWarning> weakened, ImpactReport impact)
      implements PublishResult {
    /** Copies the list. */
    public ImpactToRead {
      weakened = List.copyOf(weakened);
    }
  }

  /**
   * The cards equal those in service.
   *
   * @param revision the revision in service
   */
  record Unchanged(StoredRevision revision) implements PublishResult {}

  /**
   * The work on past jobs was cancelled, so nothing was done.
   *
   * @param soFar the results until then
   */
  record Cancelled(ImpactReport soFar) implements PublishResult {}

  /**
   * The cards could not be stored, so nothing was done.
   *
   * @param reason the reason
   */
  record Failed(String reason) implements PublishResult {}

  /**
   * There is no such proposal or revision.
   *
   * @param id the id requested
   */
  record NotThere(String id) implements PublishResult {}
}

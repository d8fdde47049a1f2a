package org.standproud.rules.publishing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.impact.ImpactReport;

/**
 * What became of cards brought to the desk. Whatever it is, what served before still serves unless
 * it is Published.
 */
public sealed interface PublishResult {

  /**
   * The cards are in service.
   *
   * @param revision their revision
   * @param warnings what is odd all the same
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
   * The cards passed the gate and wait to be published.
   *
   * @param proposal the proposal
   * @param warnings what is odd all the same
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
   * @param errors what is wrong, by file, line and column
   * @param warnings what is odd besides
   */
  record Refused(List<CardError> errors, List<CardWarning> warnings) implements PublishResult {
    /** Copies the lists. */
    public Refused {
      errors = List.copyOf(errors);
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Another revision was published since the cards were written; they have to be looked at again.
   *
   * @param latest the revision now in service, or null if there is none
   */
  record Stale(@Nullable String latest) implements PublishResult {}

  /**
   * Whoever proposed the cards may not publish them.
   *
   * @param proposal the proposal, which still waits
   */
  record SecondPersonNeeded(Proposal proposal) implements PublishResult {}

  /**
   * A stop is weakened and no reason that names it is given.
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
   * A stop is weakened and what that changes for past jobs was not shown before; publishing again
   * soon after goes on.
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
   * The cards say what those in service say.
   *
   * @param revision the revision in service
   */
  record Unchanged(StoredRevision revision) implements PublishResult {}

  /**
   * The work on past jobs was ended before its end, so nothing was done.
   *
   * @param soFar what was found until then
   */
  record Cancelled(ImpactReport soFar) implements PublishResult {}

  /**
   * The cards could not be kept, so nothing was done.
   *
   * @param reason why
   */
  record Failed(String reason) implements PublishResult {}

  /**
   * There is no such proposal or revision.
   *
   * @param id what was asked for
   */
  record NotThere(String id) implements PublishResult {}
}

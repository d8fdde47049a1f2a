package org.standproud.api.rulebase;

import java.net.URI;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponseException;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.rules.publishing.PublishResult;
import org.standproud.shop.CardsRejectedException;

/**
 * What became of cards brought to the desk and not refused; one of revision and proposal is there.
 *
 * @param changed whether another revision serves now
 * @param revision the revision in service now; absent if the cards wait to be published
 * @param proposal the proposal that waits
 * @param warnings what is odd about the cards all the same
 * @param impact what changes for past jobs
 */
record Publication(
    boolean changed,
    @Nullable RevisionLine revision,
    @Nullable ProposalLine proposal,
    List<CardWarning> warnings,
    @Nullable ImpactReport impact) {

  /** 200 for what serves, 201 for what waits, and a problem for the rest. */
  static ResponseEntity<Publication> answer(PublishResult answer) {
    Publication publication = of(answer);
    ProposalLine waits = publication.proposal();
    return waits == null
        ? ResponseEntity.ok(publication)
        : ResponseEntity.created(URI.create(waits.self())).body(publication);
  }

  /** What serves or waits, and a problem for the rest. */
  static Publication of(PublishResult answer) {
    if (answer instanceof PublishResult.Published published) {
      RevisionLine line = RevisionLine.of(published.revision());
      return new Publication(true, line, null, published.warnings(), published.impact());
    } else if (answer instanceof PublishResult.Unchanged same) {
      return new Publication(false, RevisionLine.of(same.revision()), null, List.of(), null);
    } else if (answer instanceof PublishResult.Proposed proposed) {
      ProposalLine line = ProposalLine.of(proposed.proposal());
      return new Publication(false, null, line, proposed.warnings(), null);
    }
    throw problem(answer);
  }

  private static RuntimeException problem(PublishResult answer) {
    if (answer instanceof PublishResult.Refused refused) {
      return new CardsRejectedException(refused.errors());
    } else if (answer instanceof PublishResult.NotThere) {
      return new NotFoundException("There is no such revision or proposal.");
    } else if (answer instanceof PublishResult.Stale stale) {
      return conflict(
          "Another revision was published since this was written: "
              + stale.latest()
              + ". Look at what changed and bring it again.");
    } else if (answer instanceof PublishResult.SecondPersonNeeded waiting) {
      return conflict(
          "Somebody else than " + waiting.proposal().proposer() + " has to publish this.");
    } else if (answer instanceof PublishResult.ReasonNeeded needed) {
      return conflict(
          "This weakens stops, so the note has to name each of them and say why: "
              + each(needed.weakened())
              + ".");
    } else if (answer instanceof PublishResult.ImpactToRead shown) {
      return conflict(
          "This weakens stops: "
              + each(shown.weakened())
              + ". "
              + shown.impact().changedVerdicts()
              + " of "
              + shown.impact().jobs()
              + " past jobs get another verdict "
              + shown.impact().verdicts()
              + ". Nothing was published; publish again within ten minutes if this is meant.");
    }
    return conflict("The work on past jobs was ended, so nothing was published.");
  }

  /** The first of them; a conflict is read by a person. */
  private static String each(List<CardWarning> weakened) {
    String first =
        weakened.stream().limit(20).map(w -> w.place().message()).collect(Collectors.joining("; "));
    return weakened.size() > 20 ? first + "; and " + (weakened.size() - 20) + " more" : first;
  }

  private static ErrorResponseException conflict(String detail) {
    return new ErrorResponseException(
        HttpStatus.CONFLICT, ProblemDetail.forStatusAndDetail(HttpStatus.CONFLICT, detail), null);
  }
}

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
 * The result of a submission; either a revision is in service or a proposal is pending.
 *
 * @param changed whether another revision is now in service
 * @param revision the revision in service
 * @param proposal the pending proposal
 * @param warnings what is unusual but allowed in the cards
 * @param impact what changes for past jobs; present if the revision changed
 */
record Publication(
    boolean changed,
    @Nullable RevisionLine revision,
    @Nullable ProposalLine proposal,
    List<CardWarning> warnings,
    @Nullable ImpactReport impact) {

  /** 200 if the cards are in service, 201 if they are pending; throws for any other result. */
  static ResponseEntity<Publication> answer(PublishResult answer) {
    Publication publication = of(answer);
    ProposalLine waits = publication.proposal();
    return waits == null
        ? ResponseEntity.ok(publication)
        : ResponseEntity.created(URI.create(waits.self())).body(publication);
  }

  /** The cards in service or pending; throws for any other result. */
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
              + ". Look at what changed and submit again.");
    } else if (answer instanceof PublishResult.SecondPersonNeeded waiting) {
      return conflict(
          "Someone other than " + waiting.proposal().proposer() + " has to publish this.");
    } else if (answer instanceof PublishResult.ReasonNeeded needed) {
      return conflict(
          "This weakens stops, so the note must name each of them and give a reason: "
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
              + ". Nothing was published; publish again within ten minutes to confirm.");
    }
    return conflict("The work on past jobs was cancelled, so nothing was published.");
  }

  /** The first few; a person reads the conflict. */
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

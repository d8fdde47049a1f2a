package org.standproud.web.cards;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.publishing.PublishResult;

/** Redirects after a publishing request. */
final class PublishRedirect {

  private PublishRedirect() {}

  /**
   * A published revision leads to its page, a pending proposal to its own; any other result is
   * shown on the page the form came from.
   *
   * @param answer result of the request
   * @param otherwise renders that page with a message
   */
  static ModelAndView of(PublishResult answer, Function<String, ModelAndView> otherwise) {
    if (answer instanceof PublishResult.Published published) {
      return seeOther("/rules/history/" + published.revision().id());
    } else if (answer instanceof PublishResult.Proposed proposed) {
      return seeOther("/rules/proposals/" + proposed.proposal().id());
    }
    return refused(otherwise.apply(message(answer)));
  }

  private static String message(PublishResult answer) {
    if (answer instanceof PublishResult.Refused) {
      return "Refused: the live rules have not changed. Correct what is listed below.";
    } else if (answer instanceof PublishResult.Unchanged) {
      return "These rules are the same as the live ones; there is nothing to publish.";
    } else if (answer instanceof PublishResult.Stale) {
      return "Other rules were published since you started, so nothing was done. Open the rule"
          + " again and repeat your change.";
    } else if (answer instanceof PublishResult.SecondPersonNeeded waiting) {
      return "Someone other than " + waiting.proposal().proposer() + " has to publish this.";
    } else if (answer instanceof PublishResult.ReasonNeeded needed) {
      return "This weakens stops. Name each of them in the reason and say why: "
          + each(needed.weakened())
          + ".";
    } else if (answer instanceof PublishResult.ImpactToRead shown) {
      return "This weakens stops: "
          + each(shown.weakened())
          + ". "
          + shown.impact().changedVerdicts()
          + " of "
          + shown.impact().jobs()
          + " past jobs get another verdict. Nothing was published yet; press Publish again within"
          + " ten minutes if this is meant.";
    } else if (answer instanceof PublishResult.Failed failed) {
      return "Nothing was done: " + failed.reason();
    } else if (answer instanceof PublishResult.Cancelled) {
      return "The check of past jobs was stopped, so nothing was published.";
    }
    return "There is no such revision or proposal any more.";
  }

  private static String each(List<CardWarning> weakened) {
    return weakened.stream().map(w -> w.place().message()).collect(Collectors.joining("; "));
  }

  static ModelAndView refused(ModelAndView page) {
    page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
    return page;
  }

  static ModelAndView seeOther(String address) {
    RedirectView there = new RedirectView(address);
    there.setStatusCode(HttpStatus.SEE_OTHER);
    return new ModelAndView(there);
  }
}

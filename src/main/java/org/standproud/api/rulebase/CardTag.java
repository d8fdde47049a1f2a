package org.standproud.api.rulebase;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;
import org.standproud.rules.publishing.TextHash;

/**
 * Entity tags of cards: the hash of the text, followed by the revision where the answer names one.
 */
final class CardTag {

  private static final String ANY = "*";

  private CardTag() {}

  static String ofText(String text) {
    return '"' + TextHash.of(text) + '"';
  }

  static String ofCard(String text, String revision) {
    return '"' + TextHash.of(text) + '.' + revision + '"';
  }

  /**
   * Refuses a change based on another version of the card.
   *
   * @param ifMatch tags of which the card must have one
   * @param ifNoneMatch a star if there must be no card
   * @param text the current card; null if there is none
   */
  static void require(
      @Nullable String ifMatch, @Nullable String ifNoneMatch, @Nullable String text) {
    if (ifMatch == null && !ANY.equals(ifNoneMatch)) {
      throw refused(
          HttpStatus.PRECONDITION_REQUIRED,
          "Send If-Match with the ETag of the card, or If-None-Match: * for a new card.");
    }
    boolean agrees = ifMatch == null ? text == null : text != null && names(ifMatch, text);
    if (!agrees) {
      throw refused(
          HttpStatus.PRECONDITION_FAILED,
          text == null
              ? "There is no such card."
              : "The card has changed since you fetched it. Fetch it again.");
    }
  }

  private static boolean names(String ifMatch, String text) {
    String hash = TextHash.of(text);
    return Arrays.stream(ifMatch.split(","))
        .map(String::strip)
        .anyMatch(
            tag ->
                tag.equals(ANY)
                    || tag.equals('"' + hash + '"')
                    || tag.startsWith('"' + hash + '.'));
  }

  private static ErrorResponseException refused(HttpStatus status, String detail) {
    return new ErrorResponseException(
        status, ProblemDetail.forStatusAndDetail(status, detail), null);
  }
}

package org.standproud.api.rulebase;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;
import org.standproud.rules.publishing.TextHash;

/**
 * Entity tags of cards: the hash of the text, followed, where the answer also names a revision, by
 * that revision.
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
   * Refuses a change of a card that is not the one its author saw.
   *
   * @param ifMatch the tags of which the card must have one
   * @param ifNoneMatch a star where there must be no card
   * @param text the card as it is; null if there is none
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
              : "The card is not the one you saw: somebody changed it. Fetch it again.");
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

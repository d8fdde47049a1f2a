package org.standproud.rules.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Confidence;
import org.standproud.rules.card.Source;
import org.standproud.rules.card.SourceKind;

/**
 * Checks the confidence of a card against its source: a source that cannot be looked up does not
 * support high confidence.
 */
final class SourceReview {

  /** A year of publication, or the number of a manual such as TM 1-1500-204-23-8. */
  private static final Pattern LOOKED_UP =
      Pattern.compile("\\b(1[5-9]|20)\\d\\d\\b|\\b[A-Z][A-Z.]{1,5} \\d[\\d-]*-\\d");

  /** A standard by its body and number: ISO 513, IEC 60034-1, VDI 3323. */
  private static final Pattern NUMBERED = Pattern.compile("\\b[A-Z]{2,6}([ /][A-Z]{1,6})* ?\\d+");

  private static final Pattern DOUBTED = Pattern.compile("no source|from memory|our choice");

  private SourceReview() {}

  /** Claims of a card that its source does not support. */
  static List<CardError> of(Card card) {
    Source source = card.source();
    String text = source.reference() + " " + source.edition();
    List<CardError> errors = new ArrayList<>();
    if (card.confidence() == Confidence.HIGH && DOUBTED.matcher(text).find()) {
      errors.add(error(card, "confidence high needs a source that is neither missing nor doubted"));
    }
    if (source.kind() == SourceKind.COMMON_PRACTICE && card.confidence() != Confidence.LOW) {
      errors.add(error(card, "the confidence of common practice is low"));
    }
    boolean printed = source.kind() == SourceKind.HANDBOOK || source.kind() == SourceKind.PAPER;
    if (printed && !LOOKED_UP.matcher(text).find()) {
      errors.add(
          error(
              card,
              "a "
                  + source.kind().words()
                  + " is named with author, title and year, or with its number"));
    }
    if (source.kind() == SourceKind.STANDARD && !NUMBERED.matcher(text).find()) {
      errors.add(error(card, "a standard is named with its number, such as ISO 513"));
    }
    return errors;
  }

  private static CardError error(Card card, String message) {
    return CardError.at(card.file(), card.id(), message);
  }
}

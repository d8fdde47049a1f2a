package org.standproud.web.recorded;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.compare.ComparedSetups;
import org.standproud.advice.compare.FieldChange;
import org.standproud.advice.compare.FindingMove;
import org.standproud.advice.compare.Move;
import org.standproud.advice.compare.Reserve;

/**
 * Two set-ups side by side as a page shows them.
 *
 * @param verdictBefore what to do with the one
 * @param scoreBefore its score
 * @param verdictAfter what to do with the other
 * @param scoreAfter its score
 * @param changes what differs, in words
 * @param moved the findings that came, went or changed, worst first
 * @param stay how many findings are as they were
 */
public record ComparedView(
    String verdictBefore,
    int scoreBefore,
    String verdictAfter,
    int scoreAfter,
    List<String> changes,
    List<Row> moved,
    long stay) {

  /**
   * What became of one finding.
   *
   * @param card id of the card
   * @param title its claim
   * @param word what happened
   * @param from its severity before
   * @param to its severity after
   * @param numbers the number that decides, before and after, and its limit; null if none does
   */
  public record Row(
      String card, String title, String word, String from, String to, @Nullable String numbers) {

    static Row of(FindingMove move) {
      return new Row(
          move.card(),
          move.title(),
          move.move().words(),
          severity(move.before()),
          severity(move.after()),
          numbers(move.distanceBefore(), move.distanceAfter()));
    }

    private static String severity(@Nullable String words) {
      return words == null ? "none" : words.replace(" (fail)", "").replace("(open)", "(not known)");
    }

    private static @Nullable String numbers(@Nullable Reserve was, @Nullable Reserve is) {
      if (was == null || is == null) {
        return null;
      }
      return FindingView.figure(was.value())
          + " to "
          + FindingView.figure(is.value())
          + ", limit "
          + FindingView.figure(is.limit());
    }
  }

  /** The view of a comparison. */
  public static ComparedView of(ComparedSetups compared) {
    return new ComparedView(
        compared.verdictBefore().words(),
        compared.scoreBefore(),
        compared.verdictAfter().words(),
        compared.scoreAfter(),
        compared.changes().stream().map(FieldChange::words).toList(),
        compared.moves().stream().filter(m -> m.move() != Move.STAYS).map(Row::of).toList(),
        compared.moves().stream().filter(m -> m.move() == Move.STAYS).count());
  }
}

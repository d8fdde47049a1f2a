package org.standproud.web.recorded;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.compare.ComparedSetups;
import org.standproud.advice.compare.FieldChange;
import org.standproud.advice.compare.FindingMove;
import org.standproud.advice.compare.Move;
import org.standproud.advice.compare.Reserve;

/**
 * A comparison of two set-ups as a page shows it.
 *
 * @param verdictBefore verdict of the first
 * @param scoreBefore score of the first
 * @param verdictAfter verdict of the second
 * @param scoreAfter score of the second
 * @param changes the differences, in words
 * @param moved the findings that appeared, vanished or changed, worst first
 * @param stay number of unchanged findings
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
   * How one finding changed.
   *
   * @param card id of the card
   * @param title its claim
   * @param word the kind of change
   * @param from its severity before
   * @param to its severity after
   * @param numbers the deciding number, before and after, and its limit; null if there is none
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

  /** Creates the view of a comparison. */
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

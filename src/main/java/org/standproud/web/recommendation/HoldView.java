package org.standproud.web.recommendation;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.advice.workholding.OtherHold;
import org.standproud.web.recorded.FindingView;

/**
 * Another way to hold the job as the page shows it.
 *
 * @param hold the hold
 * @param mark icon of its verdict
 * @param margins capacity over demand, in words
 * @param time its time, in words; null if it cannot be done
 */
public record HoldView(OtherHold hold, String mark, List<String> margins, @Nullable String time) {

  static HoldView of(OtherHold hold) {
    Verdict verdict = hold.verdict();
    return new HoldView(
        hold,
        verdict == null ? "not-judged" : verdict.words().replace(' ', '-'),
        hold.margins().stream().map(FindingView::fact).toList(),
        hold.cannot() == null ? time(hold) : null);
  }

  private static String time(OtherHold hold) {
    return String.format(
        Locale.ROOT,
        "%.0f min to set up (%.0f to %.0f), %s, %.1f min of cutting",
        hold.setUpLikely(),
        hold.setUpLeast(),
        hold.setUpGreatest(),
        hold.passes() == 1 ? "one pass" : hold.passes() + " passes",
        hold.cutMinutes());
  }
}

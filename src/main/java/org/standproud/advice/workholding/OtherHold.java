package org.standproud.advice.workholding;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;

/**
 * One other way to hold the job, in the caller's units.
 *
 * @param way what it is
 * @param argument what to do and why, or why not, in two sentences
 * @param verdict by every card that is not about jaws or packing; not judged if a stop is open;
 *     null if it cannot be done
 * @param score by the same cards
 * @param against the cards against it, most severe first
 * @param open the cards that could not be judged in that hold, most severe first
 * @param margins slip, lift, tip each way and all together: capacity over demand
 * @param items what it needs
 * @param cutter the cutter it was computed with; null if it cannot be done
 * @param feed which way the cutter moves along the stock; null if it cannot be done
 * @param passes number of passes that replace one pass in the vise
 * @param cutMinutes likely time of those passes, with returns and depth settings
 * @param setUpLeast least time to set it up, in minutes
 * @param setUpLikely likely time to set it up, in minutes
 * @param setUpGreatest greatest time to set it up, in minutes
 * @param remarks what to know about it, and what was assumed
 * @param cannot why it cannot be done or computed; null if it can
 */
public record OtherHold(
    String way,
    String argument,
    @Nullable Verdict verdict,
    int score,
    List<HeldFinding> against,
    List<HeldFinding> open,
    List<Quantity> margins,
    List<String> items,
    @Nullable String cutter,
    @Nullable String feed,
    int passes,
    double cutMinutes,
    double setUpLeast,
    double setUpLikely,
    double setUpGreatest,
    List<String> remarks,
    @Nullable String cannot) {

  /** Copies the lists. */
  public OtherHold {
    against = List.copyOf(against);
    open = List.copyOf(open);
    margins = List.copyOf(margins);
    items = List.copyOf(items);
    remarks = List.copyOf(remarks);
  }
}

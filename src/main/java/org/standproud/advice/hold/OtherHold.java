package org.standproud.advice.hold;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;

/**
 * One other way to hold the job, in the caller's units.
 *
 * @param way what it is
 * @param verdict by the holding cards alone; null if it cannot be done
 * @param against ids of the holding cards that stand against it, gravest first
 * @param margins slip, lift, tip each way and all together: capacity over demand
 * @param items what it needs
 * @param cutter the cutter it was reckoned with; null if it cannot be done
 * @param passes passes it takes to do what one pass in the vise does
 * @param cutMinutes likely time of those passes
 * @param setUpLeast least time to set it up, in minutes
 * @param setUpLikely likely time to set it up, in minutes
 * @param setUpGreatest greatest time to set it up, in minutes
 * @param remarks what to know about it
 * @param cannot why it cannot be done or reckoned; null if it can
 */
public record OtherHold(
    String way,
    @Nullable String verdict,
    List<String> against,
    List<Quantity> margins,
    List<String> items,
    @Nullable String cutter,
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
    margins = List.copyOf(margins);
    items = List.copyOf(items);
    remarks = List.copyOf(remarks);
  }
}

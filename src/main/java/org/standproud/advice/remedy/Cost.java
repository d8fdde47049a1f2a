package org.standproud.advice.remedy;

/**
 * What a change costs in time, in minutes.
 *
 * @param passes how many passes take off what one pass took off before
 * @param cutBefore likely time of the pass before
 * @param cutAfter likely time of all passes after
 * @param setUpLeast least time to make the changes
 * @param setUpLikely likely time to make the changes
 * @param setUpGreatest greatest time to make the changes
 * @param source where the set-up times come from
 */
public record Cost(
    int passes,
    double cutBefore,
    double cutAfter,
    double setUpLeast,
    double setUpLikely,
    double setUpGreatest,
    String source) {

  /** What the changes are likely to add in all, in minutes; less than nothing if they save. */
  public double added() {
    return setUpLikely + cutAfter - cutBefore;
  }
}

package org.standproud.advice.remedy;

/**
 * What a change costs in time, in minutes.
 *
 * @param passes how many passes take off what one pass took off before
 * @param cutBefore likely time of the pass before
 * @param cutAfter likely time of all passes after, with the way back and the setting of the depth
 *     between them
 * @param setUpLeast least time to make the changes
 * @param setUpLikely likely time to make the changes
 * @param setUpGreatest greatest time to make the changes
 * @param added what the changes are likely to add in all; less than nothing if they save
 * @param source where the times come from
 */
public record Cost(
    int passes,
    double cutBefore,
    double cutAfter,
    double setUpLeast,
    double setUpLikely,
    double setUpGreatest,
    double added,
    String source) {}

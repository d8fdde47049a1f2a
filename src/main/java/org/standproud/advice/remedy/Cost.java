package org.standproud.advice.remedy;

/**
 * The time a change costs, in minutes.
 *
 * @param passes number of passes that replace one pass
 * @param cutBefore likely time of the pass before
 * @param cutAfter likely time of all passes after, with the returns and depth settings between them
 * @param setUpLeast least time to make the changes
 * @param setUpLikely likely time to make the changes
 * @param setUpGreatest greatest time to make the changes
 * @param added likely total time added; a negative number if the change saves time
 * @param source source of the times
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

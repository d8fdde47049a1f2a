package org.standproud.assessment.recommendation;

import java.util.List;
import java.util.UUID;
import org.standproud.advice.Cautions;
import org.standproud.mechanics.sampling.Contribution;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.setup.Band;

/**
 * How likely the hold of an assessment is to hold, by seeded sampling of all that is not known.
 *
 * @param assessment the assessment it is about
 * @param probability share of the draws that hold, 0 to 1
 * @param standardError of the probability, of the sampling only
 * @param draws how many set-ups were drawn
 * @param seed the same seed gives the same answer
 * @param holdsFrom least margin, capacity over demand, from which on a draw holds
 * @param leastMargin least margin of the draws
 * @param measureFirst what contributes to the doubt, most first
 * @param cautions the usual cautions
 */
public record HoldingChanceReport(
    UUID assessment,
    double probability,
    double standardError,
    int draws,
    long seed,
    double holdsFrom,
    MarginOfDraws leastMargin,
    List<ShareOfDoubt> measureFirst,
    List<String> cautions) {

  public static HoldingChanceReport of(UUID assessment, HoldingChance chance) {
    Band least = chance.leastMargin();
    return new HoldingChanceReport(
        assessment,
        chance.probability(),
        chance.standardError(),
        chance.plan().samples(),
        chance.plan().seed(),
        chance.plan().leastMargin(),
        new MarginOfDraws(least.low(), least.likely(), least.high()),
        chance.measureFirst().stream().map(ShareOfDoubt::of).toList(),
        Cautions.all());
  }

  /**
   * The least margin of the draws: a twentieth of them lies below the low one, half below the
   * middle one, a twentieth above the high one.
   *
   * @param low the fifth hundredth
   * @param middle the median
   * @param high the ninety-fifth hundredth
   */
  record MarginOfDraws(double low, double middle, double high) {}

  /**
   * What one unknown adds to the doubt.
   *
   * @param unknown which, as a machinist would say it
   * @param input JSON Pointer of the field by which a better value comes in
   * @param share its share of the variance of the rank of the least margin, on its own, 0 to 1
   */
  record ShareOfDoubt(String unknown, String input, double share) {

    private static ShareOfDoubt of(Contribution contribution) {
      return new ShareOfDoubt(
          contribution.unknown().words(),
          contribution.unknown().input().text(),
          contribution.share());
    }
  }
}

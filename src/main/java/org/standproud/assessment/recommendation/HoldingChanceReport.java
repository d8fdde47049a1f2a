package org.standproud.assessment.recommendation;

import java.util.List;
import java.util.UUID;
import org.standproud.advice.Cautions;
import org.standproud.mechanics.sampling.Contribution;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.setup.Band;

/**
 * How likely the hold of an assessment is to hold, by seeded sampling of everything unknown.
 *
 * @param assessment the assessment it is about
 * @param probability share of the draws that hold, 0 to 1
 * @param standardError standard error of the probability. It reflects the number of draws only, not
 *     a wrong band.
 * @param draws number of draws
 * @param seed the seed; the same seed and number of draws give the same answer
 * @param holdsFrom least margin (capacity over demand) at which a draw holds, the least of slip,
 *     lift, tip and all together. It contains no safety factor.
 * @param leastMargin least margin of the draws
 * @param measureFirst the unknowns by their contribution to the doubt, largest first: measure the
 *     first. Exactly known inputs are left out.
 * @param cautions the cautions of every answer; show them
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
   * How the least margin spreads over the draws.
   *
   * @param low 5 % of the draws lie below it
   * @param middle 50 % of the draws lie below it
   * @param high 5 % of the draws lie above it
   */
  record MarginOfDraws(double low, double middle, double high) {}

  /**
   * The contribution of one unknown to the doubt.
   *
   * @param unknown its name, as a machinist would say it
   * @param input JSON Pointer of the field for a better value
   * @param share its own share of the variance of the rank of the least margin, 0 to 1. Joint
   *     effects of several unknowns are in no share.
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

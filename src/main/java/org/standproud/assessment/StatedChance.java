package org.standproud.assessment;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.mechanics.sampling.Contribution;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.mechanics.sampling.LettingGo;
import org.standproud.mechanics.sampling.Unknown;

/**
 * How likely the hold is to hold, from the draws of the evidence.
 *
 * @param holds share of the draws in which it holds, 0 to 1
 * @param letsGo share of the draws in which it lets go, 0 to 1
 * @param ways how it lets go, the most likely first
 * @param decidedBy the unknown that contributes most to the doubt; absent if nothing is unknown
 * @param input JSON Pointer of the field for a better value; absent likewise
 * @param measure how to measure or state it; absent likewise
 */
public record StatedChance(
    double holds,
    double letsGo,
    List<LetsGo> ways,
    @Nullable String decidedBy,
    @Nullable String input,
    @Nullable String measure) {

  /** Copies the list. */
  public StatedChance {
    ways = List.copyOf(ways);
  }

  /**
   * One way in which the hold lets go.
   *
   * @param what what happens
   * @param share share of the draws in which it does, 0 to 1
   */
  public record LetsGo(String what, double share) {}

  /** Null if nothing is cut or the hold could not be computed. */
  static @Nullable StatedChance of(JointEvidence joint) {
    HoldingChance chance = joint.chance();
    LettingGo lettingGo = joint.lettingGo();
    if (chance == null || lettingGo == null) {
      return null;
    }
    Unknown deciding =
        chance.measureFirst().stream()
            .filter(contribution -> contribution.share() > 0)
            .findFirst()
            .map(Contribution::unknown)
            .orElse(null);
    return new StatedChance(
        chance.probability(),
        lettingGo.share(),
        ways(lettingGo),
        deciding == null ? null : deciding.words(),
        deciding == null ? null : deciding.input().text(),
        deciding == null ? null : measure(deciding, joint.evidence()));
  }

  private static List<LetsGo> ways(LettingGo lettingGo) {
    return Arrays.stream(LettingGo.Way.values())
        .map(way -> new LetsGo(way.words(), lettingGo.share(way)))
        .filter(way -> way.share() > 0)
        .sorted(Comparator.comparingDouble(LetsGo::share).reversed())
        .toList();
  }

  private static String measure(Unknown unknown, Evidence evidence) {
    return evidence.values().stream()
        .flatMap(value -> value.assumptions().stream())
        .filter(assumption -> assumption.input().equals(unknown.input()))
        .map(Assumption::measure)
        .flatMap(measure -> Optional.ofNullable(measure).stream())
        .findFirst()
        .orElse(unknown.words());
  }
}

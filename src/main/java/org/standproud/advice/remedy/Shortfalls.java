package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.standproud.advice.whatif.Judged;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.Reading;
import org.standproud.setup.Band;

/**
 * How far a set-up is from clearing its findings. For a card decided by one number that is the
 * logarithm of limit over number, or of number over limit, at the worse end of its band; so the
 * shortfalls of two combined changes add up approximately. It orders the search; no answer depends
 * on it.
 */
final class Shortfalls {

  /** The shortfall of a card without a single deciding number, or whose number is off its scale. */
  private static final double FAR = 3;

  private final List<Need> needs = new ArrayList<>();
  private final List<String> others = new ArrayList<>();
  private final double[] base;

  /** One card decided by a single number. */
  private record Need(String card, Fact fact, double limit, boolean wantsMore) {}

  /**
   * The findings to clear.
   *
   * @param judged the set-up as it is
   * @param cards ids of the cards to clear
   * @param ruleBase the rule base
   */
  Shortfalls(Judged judged, Set<String> cards, RuleBase ruleBase) {
    for (String card : cards) {
      need(ruleBase.evaluate(judged.evidence(), card))
          .ifPresentOrElse(needs::add, () -> others.add(card));
    }
    this.base = numbers(judged.evidence());
  }

  private static Optional<Need> need(CardTrace trace) {
    Margin margin = trace.margin();
    Set<Fact> numbers =
        trace.conditions().stream()
            .flatMap(condition -> condition.read().stream())
            .filter(reading -> reading.value() instanceof Value.Quantity)
            .map(Reading::fact)
            .collect(Collectors.toSet());
    if (margin == null || numbers.size() != 1 || margin.threshold() <= 0) {
      return Optional.empty();
    }
    boolean wantsMore = (margin.value() - margin.threshold()) * margin.clearance() > 0;
    return Optional.of(
        new Need(trace.id(), numbers.iterator().next(), margin.threshold(), wantsMore));
  }

  /** The shortfalls of a set-up alone: one for each number, then one for each other card. */
  double[] of(Judged judged) {
    double[] numbers = numbers(judged.evidence());
    double[] all = new double[numbers.length + others.size()];
    System.arraycopy(numbers, 0, all, 0, numbers.length);
    Set<String> ids = judged.ids();
    for (int i = 0; i < others.size(); i++) {
      all[numbers.length + i] = ids.contains(others.get(i)) ? FAR : 0;
    }
    return all;
  }

  /** A number off the scale of its fact has no shortfall. */
  private double[] numbers(Evidence evidence) {
    return needs.stream().mapToDouble(need -> shortfall(need, evidence)).toArray();
  }

  private static double shortfall(Need need, Evidence evidence) {
    if (evidence.get(need.fact()) instanceof Value.Quantity q
        && need.fact().type() instanceof Fact.Number type) {
      Band band = q.band();
      double worse = need.wantsMore() ? band.low() : band.high();
      boolean off =
          worse <= 0 || need.wantsMore() ? worse <= type.least() : worse >= type.greatest();
      double ratio = need.wantsMore() ? need.limit() / worse : worse / need.limit();
      return off ? Double.NaN : Math.log(ratio);
    }
    return Double.NaN;
  }

  /** Total shortfall of a judged set-up. */
  double left(Judged judged) {
    double left = 0;
    for (double shortfall : of(judged)) {
      left += Double.isNaN(shortfall) ? FAR : Math.max(0, shortfall);
    }
    return left;
  }

  /**
   * Estimated total shortfall of combined changes.
   *
   * @param changes the shortfalls of each change alone
   */
  double left(List<double[]> changes) {
    double left = 0;
    for (int i = 0; i < base.length + others.size(); i++) {
      left += Math.max(0, i < base.length ? together(i, changes) : least(i, changes));
    }
    return left;
  }

  private double together(int i, List<double[]> changes) {
    if (Double.isNaN(base[i])) {
      // Off the scale as it is: as good as the best change alone; unknown if none gets on the
      // scale.
      return least(i, changes);
    }
    double sum = base[i];
    for (double[] change : changes) {
      sum += Double.isNaN(change[i]) ? FAR : change[i] - base[i];
    }
    return sum;
  }

  private static double least(int i, List<double[]> changes) {
    double least = Double.NaN;
    for (double[] change : changes) {
      if (Double.isNaN(least) || change[i] < least) {
        least = change[i];
      }
    }
    return Double.isNaN(least) ? 0 : least;
  }
}

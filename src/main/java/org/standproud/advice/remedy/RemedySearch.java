package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardKind;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * Searches for changes that clear the findings of a set-up.
 *
 * <p>Single changes: on each ladder the end and two rungs between are judged; between a rung that
 * works and one below it that does not, the ladder is bisected. The result is the smallest change
 * of the ladder wherever more change helps more; the rung below is known not to work. {@link
 * Combinations} combines them. The order is fixed: the same set-up gets the same answer.
 */
final class RemedySearch {

  /** Set-ups judged before the smallest change for a single caution is no longer narrowed down. */
  private static final int CAUTION_BUDGET = 110;

  /** Number of incomplete changes listed if nothing works. */
  private static final int NEAREST = 4;

  private final Setup setup;
  private final Trials trials;
  private final Judged base;
  private final List<Ladder> ladders;
  private final Shortfalls shortfalls;

  RemedySearch(Setup setup, Trials trials, Catalogue shop) {
    this.setup = setup;
    this.trials = trials;
    this.base = trials.of(setup);
    this.ladders =
        Stream.concat(HoldLadders.of(setup, trials).stream(), CutLadders.of(setup, shop).stream())
            .toList();
    this.shortfalls = new Shortfalls(base, toClear(base), trials.ruleBase());
  }

  Setup setup() {
    return setup;
  }

  /** The judgement of the set-up as it is. */
  Judged base() {
    return base;
  }

  List<Ladder> ladders() {
    return ladders;
  }

  Shortfalls shortfalls() {
    return shortfalls;
  }

  int judged() {
    return trials.count();
  }

  /** A set-up with some changes, judged. */
  ProvenChange prove(List<Step> steps) {
    Setup changed = Step.all(steps, setup);
    return new ProvenChange(steps, changed, trials.of(changed));
  }

  /** For each stop and caution, most severe first, the smallest single change of each ladder. */
  Map<CardKind, List<ProvenChange>> singles() {
    Map<CardKind, List<ProvenChange>> cleared = new LinkedHashMap<>();
    base.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .sorted(
            Comparator.comparing(CardKind::severity, Comparator.reverseOrder())
                .thenComparing(CardKind::id))
        .forEach(
            finding -> {
              boolean stop = finding.severity() == Severity.STOP;
              cleared.put(
                  finding,
                  smallest(
                      change -> !change.judged().ids().contains(finding.id()),
                      stop ? Integer.MAX_VALUE : CAUTION_BUDGET));
            });
    return cleared;
  }

  /** The findings to clear: every stop or, if there is none, every caution. */
  private Set<String> toClear(Judged judged) {
    return base.isStopped() ? judged.stops() : judged.cautions();
  }

  /**
   * Whether a set-up is fixed as a toolmaker would do it: no stop is left or, if there was none, no
   * caution.
   */
  boolean works(ProvenChange change) {
    return toClear(change.judged()).isEmpty()
        && change.judged().noWorseThan(base)
        && ShopPractice.standsLow(change.setup())
        && ShopPractice.runsUpToSpeed(setup, change.setup());
  }

  /** The sets of one to three changes that fix it, without superfluous changes. */
  List<ProvenChange> ways() {
    if (toClear(base).isEmpty()) {
      return List.of();
    }
    return new Combinations(this).with(smallest(this::works, Integer.MAX_VALUE));
  }

  /** The judged single changes that came nearest, the nearest first; may be empty. */
  List<ProvenChange> nearest() {
    double now = shortfalls.left(base);
    List<ProvenChange> best = new ArrayList<>();
    for (Ladder ladder : ladders) {
      ladder.probes().stream()
          .map(rung -> prove(List.of(ladder.at(rung))))
          .filter(p -> !p.setup().equals(setup) && p.judged().noWorseThan(base))
          .filter(p -> ShopPractice.runsUpToSpeed(setup, p.setup()))
          .filter(p -> shortfalls.left(p.judged()) < now)
          .min(nearestFirst())
          .ifPresent(best::add);
    }
    return best.stream().sorted(nearestFirst()).limit(NEAREST).toList();
  }

  private Comparator<ProvenChange> nearestFirst() {
    return Comparator.comparingInt((ProvenChange p) -> toClear(p.judged()).size())
        .thenComparingDouble(p -> shortfalls.left(p.judged()));
  }

  private List<ProvenChange> smallest(Predicate<ProvenChange> clears, int budget) {
    List<ProvenChange> found = new ArrayList<>();
    for (Ladder ladder : ladders) {
      int rung =
          lowest(
              ladder,
              budget,
              r -> {
                ProvenChange change = prove(List.of(ladder.at(r)));
                return clears.test(change)
                    && change.judged().noWorseThan(base)
                    && ShopPractice.runsUpToSpeed(setup, change.setup());
              });
      if (rung >= 0) {
        found.add(prove(List.of(ladder.at(rung))));
      }
    }
    return found;
  }

  /** The lowest rung that works, from the first probe that works and the one below; -1 if none. */
  private int lowest(Ladder ladder, int budget, IntPredicate does) {
    int no = -1;
    for (int rung : ladder.probes()) {
      if (does.test(rung)) {
        return halve(no, rung, budget, does);
      }
      no = rung;
    }
    return -1;
  }

  private int halve(int below, int doing, int budget, IntPredicate does) {
    int no = below;
    int yes = doing;
    while (yes - no > 1 && trials.count() < budget) {
      int middle = (no + yes) >>> 1;
      if (does.test(middle)) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return yes;
  }
}

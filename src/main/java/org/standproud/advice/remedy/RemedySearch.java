package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.standproud.advice.trial.Judged;
import org.standproud.advice.trial.Trials;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardTrace;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * Looks for changes that clear what the cards hold against a set-up.
 *
 * <p>Single changes: on each ladder the end and two rungs between are judged; between a rung that
 * does and one below it that does not, the ladder is halved until they are neighbours. That is the
 * smallest change of the ladder wherever more change helps more; the rung below is known not to do.
 *
 * <p>Combinations: the most hopeful changes that cost no cutting time go together in pairs; then
 * the most hopeful of them, alone and in pairs, go with a lighter cut, which is made no lighter
 * than it has to be. Each change of a set that works is made as small as will do, and any that is
 * not needed is dropped, by judging again. {@link Hope} only orders the search. The order is fixed:
 * the same set-up gets the same answer.
 */
final class RemedySearch {

  /** Set-ups judged before no further combination is begun. */
  private static final int BUDGET = 120;

  /** Set-ups judged before the smallest change for a single caution is no longer narrowed down. */
  private static final int CAUTION_BUDGET = 140;

  /** Combinations that work beyond which no more are looked for. */
  private static final int ENOUGH = 4;

  private static final int HOPEFUL_KINDS = 6;
  private static final int HOPEFUL_SETS = 6;

  private static final Set<ChangeKind> LIGHTER_CUT =
      EnumSet.of(ChangeKind.DEPTH, ChangeKind.SIDE_DEPTH);

  private final Setup setup;
  private final Trials trials;
  private final Judged base;
  private final List<Ladder> ladders;

  RemedySearch(Setup setup, Trials trials, Catalogue shop) {
    this.setup = setup;
    this.trials = trials;
    this.base = trials.of(setup);
    this.ladders =
        Stream.concat(HoldLadders.of(setup, trials).stream(), CutLadders.of(setup, shop).stream())
            .toList();
  }

  /** What the cards say of the set-up as it is. */
  Judged base() {
    return base;
  }

  List<Ladder> ladders() {
    return ladders;
  }

  /** A set-up with some changes, judged. */
  Proved prove(List<Step> steps) {
    Setup changed = Step.all(steps, setup);
    return new Proved(steps, changed, trials.of(changed));
  }

  /** For each stop and caution, gravest first, the smallest single change of each ladder. */
  Map<CardTrace, List<Proved>> singles() {
    Map<CardTrace, List<Proved>> cleared = new LinkedHashMap<>();
    base.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .sorted(
            Comparator.comparing(CardTrace::severity, Comparator.reverseOrder())
                .thenComparing(CardTrace::id))
        .forEach(
            finding -> {
              boolean stop = finding.severity() == Severity.STOP;
              cleared.put(
                  finding,
                  smallest(
                      judged -> !judged.ids().contains(finding.id()),
                      stop ? Integer.MAX_VALUE : CAUTION_BUDGET));
            });
    return cleared;
  }

  /** What makes the set-up right: no stop is left, or, where there was none, no caution. */
  boolean works(Judged judged) {
    Set<String> left = base.isStopped() ? judged.stops() : judged.cautions();
    return left.isEmpty() && judged.noWorseThan(base);
  }

  /** The sets of one to three changes that make it right, none of which can lose a change. */
  List<Proved> ways() {
    if (base.stops().isEmpty() && base.cautions().isEmpty()) {
      return List.of();
    }
    List<Proved> found = new ArrayList<>(smallest(this::works, Integer.MAX_VALUE));
    List<Proved> sets = hopefulSets(found);
    for (Ladder lighter : ladders) {
      if (LIGHTER_CUT.contains(lighter.kind())) {
        sets.stream().limit(HOPEFUL_SETS).forEach(set -> lighten(set, lighter, found));
      }
    }
    return found;
  }

  /** The judged single changes and pairs that came nearest, the nearest first; may be empty. */
  List<Proved> nearest() {
    return strongest().stream()
        .filter(p -> p.judged().noWorseThan(base))
        .filter(p -> hope(p.judged()) > hope(base))
        .limit(ENOUGH)
        .toList();
  }

  private List<Proved> smallest(Predicate<Judged> clears, int budget) {
    List<Proved> found = new ArrayList<>();
    for (Ladder ladder : ladders) {
      int rung =
          lowest(
              ladder,
              budget,
              r -> {
                Judged judged = prove(List.of(ladder.at(r))).judged();
                return clears.test(judged) && judged.noWorseThan(base);
              });
      if (rung >= 0) {
        found.add(prove(List.of(ladder.at(rung))));
      }
    }
    return found;
  }

  /** The lowest rung that does, from the first probe that does and the one below; -1 if none. */
  private int lowest(Ladder ladder, int budget, IntPredicate does) {
    int no = -1;
    for (int rung : probes(ladder)) {
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

  private static Set<Integer> probes(Ladder ladder) {
    int last = ladder.size() - 1;
    Set<Integer> rungs = new LinkedHashSet<>();
    if (last > 2) {
      rungs.add(last / 3);
      rungs.add(2 * last / 3);
    } else {
      for (int rung = 0; rung < last; rung++) {
        rungs.add(rung);
      }
    }
    rungs.add(last);
    return rungs;
  }

  /** For each ladder the probed rung that leaves most hope, most hopeful first. */
  private List<Proved> strongest() {
    List<Proved> best = new ArrayList<>();
    for (Ladder ladder : ladders) {
      probes(ladder).stream()
          .map(rung -> prove(List.of(ladder.at(rung))))
          .filter(p -> !p.setup().equals(setup))
          .max(Comparator.comparingDouble(p -> hope(p.judged())))
          .ifPresent(best::add);
    }
    best.sort(byHope());
    return best;
  }

  private static Comparator<Proved> byHope() {
    return Comparator.comparingDouble((Proved p) -> hope(p.judged())).reversed();
  }

  private static double hope(Judged judged) {
    return Hope.of(judged);
  }

  /** The most hopeful cheap changes, alone and in pairs, that do not do by themselves. */
  private List<Proved> hopefulSets(List<Proved> found) {
    List<Proved> sets = new ArrayList<>();
    for (Proved single : strongest()) {
      ChangeKind kind = single.steps().get(0).kind();
      boolean known = sets.stream().anyMatch(s -> s.steps().get(0).kind() == kind);
      boolean cheap = !LIGHTER_CUT.contains(kind) && kind != ChangeKind.FEED;
      if (cheap && !known && !works(single.judged()) && sets.size() < HOPEFUL_KINDS) {
        sets.add(single);
      }
    }
    for (Proved one : List.copyOf(sets)) {
      for (Proved other : List.copyOf(sets)) {
        if (one.steps().size() == 1
            && other.steps().size() == 1
            && one.steps().get(0).kind().compareTo(other.steps().get(0).kind()) < 0
            && room(found)) {
          Proved pair = prove(List.of(one.steps().get(0), other.steps().get(0)));
          if (works(pair.judged())) {
            addLeast(pair, found);
          } else {
            sets.add(pair);
          }
        }
      }
    }
    sets.sort(byHope());
    return sets;
  }

  private boolean room(List<Proved> found) {
    long combined = found.stream().filter(p -> p.steps().size() > 1).count();
    return combined < ENOUGH && trials.count() < BUDGET;
  }

  /** A set with the lighter cut that makes it work, no lighter than it must be. */
  private void lighten(Proved set, Ladder lighter, List<Proved> found) {
    if (room(found)) {
      int rung =
          lowest(
              lighter,
              Integer.MAX_VALUE,
              r -> works(prove(joined(set.steps(), lighter.at(r))).judged()));
      if (rung >= 0) {
        addLeast(prove(joined(set.steps(), lighter.at(rung))), found);
      }
    }
  }

  private void addLeast(Proved working, List<Proved> found) {
    Proved least = least(working);
    if (found.stream().noneMatch(known -> known.setup().equals(least.setup()))) {
      found.add(least);
    }
  }

  /** Drops what is not needed, makes the rest as small as will do, and looks once more. */
  private Proved least(Proved working) {
    Proved least = withoutTheNeedless(working);
    for (int i = 0; i < least.steps().size(); i++) {
      List<Step> steps = least.steps();
      int at = i;
      Step step = steps.get(i);
      int rung =
          halve(
              -1,
              step.rung(),
              Integer.MAX_VALUE,
              r -> works(prove(replaced(steps, at, step.ladder().at(r))).judged()));
      least = prove(replaced(steps, at, step.ladder().at(rung)));
    }
    return withoutTheNeedless(least);
  }

  private Proved withoutTheNeedless(Proved working) {
    for (Step step : working.steps()) {
      List<Step> rest = working.steps().stream().filter(s -> s != step).toList();
      if (!rest.isEmpty()) {
        Proved without = prove(rest);
        if (works(without.judged())) {
          return withoutTheNeedless(without);
        }
      }
    }
    return working;
  }

  private static List<Step> joined(List<Step> steps, Step step) {
    return Stream.concat(steps.stream(), Stream.of(step)).toList();
  }

  private static List<Step> replaced(List<Step> steps, int at, Step step) {
    List<Step> all = new ArrayList<>(steps);
    all.set(at, step);
    return all;
  }
}

package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standproud.advice.whatif.PassHandling;
import org.standproud.setup.Machine;

/**
 * Combines two or three changes. From the effect of each change alone ({@link Shortfalls}) it
 * estimates for every set of two and three whether it is likely to work, and how long it takes.
 * Likely sets are judged, the quickest first; one that works is reduced to the smallest changes
 * that still work, the passes first because each costs its time again, and no superfluous change is
 * left in it: every smaller set of its changes is judged. Sets that contain a known way and are
 * slower than it are skipped. Of sets alike likely to work a toolmaker's order ({@link
 * ChangeKind#turn}) decides before time. On a broad side the height is also stepped down together
 * with the depth into the side.
 */
final class Combinations {

  /** Set-ups judged before no further combination is started. */
  private static final int BUDGET = 100;

  /** Number of ways after which the search ends. */
  private static final int ENOUGH = 4;

  /** Sets judged without success before the search ends. */
  private static final int TRIES = 16;

  /** Estimated shortfall up to which sets are judged in order of time. */
  private static final double LIKELY = 0.1;

  /** A change that reduces no shortfall by this much is not combined. */
  private static final double WORTH = 0.05;

  private static final Set<ChangeKind> LIGHTER_CUT =
      EnumSet.of(ChangeKind.DEPTH, ChangeKind.SIDE_DEPTH);

  private final RemedySearch search;
  private final List<SingleChangeEffect> members = new ArrayList<>();
  private final List<List<SingleChangeEffect>> lighter = new ArrayList<>();
  private final List<Candidate> candidates = new ArrayList<>();
  private final List<ProvenChange> found = new ArrayList<>();
  private final Map<Set<Step>, Double> failed = new HashMap<>();

  /** A set of changes: its estimated remaining shortfall, and the time it adds in s. */
  private record Candidate(List<Step> steps, double left, double addedS) {

    int turn() {
      return steps.stream().mapToInt(step -> step.kind().turn()).max().orElse(0);
    }

    Set<Step> heavy() {
      return steps.stream()
          .filter(step -> !LIGHTER_CUT.contains(step.kind()))
          .collect(Collectors.toSet());
    }

    Set<ChangeKind> kinds() {
      return steps.stream().map(Step::kind).collect(Collectors.toSet());
    }
  }

  Combinations(RemedySearch search) {
    this.search = search;
  }

  /** All ways, single changes included. */
  List<ProvenChange> with(List<ProvenChange> singles) {
    found.addAll(singles);
    for (Ladder ladder : search.ladders()) {
      if (LIGHTER_CUT.contains(ladder.kind())) {
        lighter.add(SingleChangeEffect.everyRung(ladder, search));
      } else {
        SingleChangeEffect.probed(ladder, search).stream()
            .filter(this::helps)
            .forEach(members::add);
      }
    }
    estimate();
    List<Candidate> rest = tryAll(likelyFirst(candidates), true);
    tryAll(rest, false);
    return found;
  }

  private boolean helps(SingleChangeEffect member) {
    double[] base = search.shortfalls().of(search.base());
    for (int i = 0; i < base.length; i++) {
      double gain = base[i] - member.shortfalls()[i];
      if (gain > WORTH || Double.isNaN(base[i]) && !Double.isNaN(member.shortfalls()[i])) {
        return true;
      }
    }
    return false;
  }

  private void estimate() {
    stepDown();
    for (int a = 0; a < members.size(); a++) {
      add(List.of(members.get(a)));
      for (int b = a + 1; b < members.size(); b++) {
        if (members.get(a).kind() != members.get(b).kind()) {
          add(List.of(members.get(a), members.get(b)));
          for (int c = b + 1; c < members.size(); c++) {
            if (members.get(c).kind() != members.get(b).kind()
                && members.get(c).kind() != members.get(a).kind()) {
              add(List.of(members.get(a), members.get(b), members.get(c)));
            }
          }
        }
      }
    }
  }

  /** Levels down the height with strips into the side, in no more passes than are usual. */
  private void stepDown() {
    for (int a = 0; a < lighter.size(); a++) {
      for (int b = a + 1; b < lighter.size(); b++) {
        for (SingleChangeEffect levels : lighter.get(a)) {
          for (SingleChangeEffect strips : lighter.get(b)) {
            if (levels.passes() * strips.passes() <= ShopPractice.MOST_PASSES) {
              candidates.add(candidate(List.of(levels, strips)));
            }
          }
        }
      }
    }
  }

  /** Such a set as it is, and with the lightest cut it is likely to need. */
  private void add(List<SingleChangeEffect> set) {
    if (set.size() > 1) {
      candidates.add(candidate(set));
    }
    if (set.size() < 3) {
      for (List<SingleChangeEffect> rungs : lighter) {
        Candidate best = null;
        for (SingleChangeEffect rung : rungs) {
          best = candidate(Stream.concat(set.stream(), Stream.of(rung)).toList());
          if (best.left() <= LIKELY) {
            break;
          }
        }
        if (best != null) {
          candidates.add(best);
        }
      }
    }
  }

  private Candidate candidate(List<SingleChangeEffect> set) {
    double baseS = Passes.onceS(search.base());
    double onceS = baseS;
    double setUpS = 0;
    int passes = 1;
    for (SingleChangeEffect member : set) {
      onceS *= baseS > 0 ? member.onceS() / baseS : 1;
      setUpS += member.kind().setUpS().likely();
      passes *= member.passes();
    }
    Machine machine = search.setup().machine();
    return new Candidate(
        set.stream().map(SingleChangeEffect::step).toList(),
        search.shortfalls().left(set.stream().map(SingleChangeEffect::shortfalls).toList()),
        setUpS + PassHandling.likelyS(passes, onceS, machine) - baseS);
  }

  private static List<Candidate> likelyFirst(List<Candidate> candidates) {
    return candidates.stream()
        .sorted(
            Comparator.comparingDouble((Candidate c) -> Math.max(LIKELY, c.left()))
                .thenComparingInt(Candidate::turn)
                .thenComparingDouble(Candidate::addedS))
        .toList();
  }

  /** Judges in order; returns those deferred because a part of them did worse than estimated. */
  private List<Candidate> tryAll(List<Candidate> ordered, boolean putOff) {
    List<Candidate> later = new ArrayList<>();
    for (Candidate candidate : ordered) {
      if (failed.size() >= TRIES || !room()) {
        return later;
      }
      if (failed.containsKey(candidate.heavy()) || isPassedOver(candidate)) {
        continue;
      }
      if (putOff && candidate.left() + worseThanEstimated(candidate) > LIKELY) {
        later.add(candidate);
      } else {
        judge(candidate);
      }
    }
    return later;
  }

  private boolean room() {
    long combined = found.stream().filter(p -> p.steps().size() > 1).count();
    return combined < ENOUGH && search.judged() < BUDGET;
  }

  /** Whether a known way works with a subset of the changes in no more time. */
  private boolean isPassedOver(Candidate candidate) {
    return found.stream()
        .anyMatch(
            way ->
                candidate.kinds().containsAll(kinds(way))
                    && (candidate.kinds().size() == way.steps().size()
                        || addedS(way) <= candidate.addedS()));
  }

  private static Set<ChangeKind> kinds(ProvenChange way) {
    return way.steps().stream().map(Step::kind).collect(Collectors.toSet());
  }

  private double addedS(ProvenChange way) {
    double setUpS = way.steps().stream().mapToDouble(s -> s.kind().setUpS().likely()).sum();
    return setUpS + Passes.allS(search.setup(), way) - Passes.onceS(search.base());
  }

  private double worseThanEstimated(Candidate candidate) {
    Set<Step> heavy = candidate.heavy();
    return failed.entrySet().stream()
        .filter(part -> heavy.containsAll(part.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .max()
        .orElse(0);
  }

  private void judge(Candidate candidate) {
    ProvenChange proved = search.prove(candidate.steps());
    if (!search.works(proved)) {
      double left = search.shortfalls().left(proved.judged());
      proved = lightened(proved);
      if (!search.works(proved)) {
        failed.put(candidate.heavy(), Math.max(0, left - candidate.left()));
        return;
      }
    }
    ProvenChange least = least(proved);
    if (found.stream().noneMatch(known -> known.setup().equals(least.setup()))) {
      found.add(least);
    }
  }

  /** With the lightest cut of its ladder, if it has one. */
  private ProvenChange lightened(ProvenChange proved) {
    for (int i = 0; i < proved.steps().size(); i++) {
      Step step = proved.steps().get(i);
      if (LIGHTER_CUT.contains(step.kind())) {
        return search.prove(replaced(proved.steps(), i, step.ladder().size() - 1));
      }
    }
    return proved;
  }

  /** Each change as small as still works, the passes first, without superfluous ones. */
  private ProvenChange least(ProvenChange working) {
    ProvenChange least = working;
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < least.steps().size(); i++) {
      order.add(LIGHTER_CUT.contains(least.steps().get(i).kind()) ? 0 : order.size(), i);
    }
    for (int at : order) {
      least = smaller(least, at);
    }
    ProvenChange needed = withoutTheNeedless(least);
    // The rest may need less now that the others are gone.
    return needed.steps().size() < least.steps().size() ? least(needed) : needed;
  }

  /** Reduces one of its changes: the next rung down first, then by bisection. */
  private ProvenChange smaller(ProvenChange working, int at) {
    int yes = working.steps().get(at).rung();
    int no = -1;
    int middle = yes - 1;
    while (yes - no > 1) {
      if (search.works(search.prove(replaced(working.steps(), at, middle)))) {
        yes = middle;
      } else {
        no = middle;
      }
      middle = (no + yes) >>> 1;
    }
    return search.prove(replaced(working.steps(), at, yes));
  }

  /** The smallest set of its changes that works, or the set itself. */
  private ProvenChange withoutTheNeedless(ProvenChange working) {
    int size = working.steps().size();
    return IntStream.range(1, (1 << size) - 1)
        .boxed()
        .sorted(Comparator.comparingInt(Integer::bitCount))
        .map(part -> search.prove(part(working.steps(), part)))
        .filter(part -> search.works(part))
        .findFirst()
        .orElse(working);
  }

  private static List<Step> part(List<Step> steps, int chosen) {
    List<Step> part = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if ((chosen >> i & 1) == 1) {
        part.add(steps.get(i));
      }
    }
    return part;
  }

  private static List<Step> replaced(List<Step> steps, int at, int rung) {
    List<Step> all = new ArrayList<>(steps);
    all.set(at, steps.get(at).ladder().at(rung));
    return all;
  }
}

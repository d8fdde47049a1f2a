package org.standproud.rules.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Condition.Comparison;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Estimate;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;
import org.standproud.rules.language.Truth;
import org.standproud.setup.Band;

/**
 * Finds the comparison whose flipping would flip a condition soonest. If all of several must hold
 * and do in more draws than the level, the nearest of them; if some do not, the farthest of those.
 * Distances of different dimension are compared as fractions of the numbers compared. A condition
 * that only a word can flip has no margin. For some or every number of a list, the margin names the
 * position of the number.
 */
public final class MarginFinder {

  private final Readings readings;
  private final Judgements judgements;
  private final double level;
  private final @Nullable Integer place;
  private @Nullable Readings likely;

  /**
   * Creates a finder for one set-up.
   *
   * @param readings the values of the facts
   * @param judgements the judgements derived
   * @param level the share of the draws above which the card fires, 0 to 1
   */
  public MarginFinder(Readings readings, Judgements judgements, double level) {
    this(readings, judgements, level, null);
  }

  private MarginFinder(
      Readings readings, Judgements judgements, double level, @Nullable Integer place) {
    this.level = level;
    this.place = place;
    this.readings = readings;
    this.judgements = judgements;
  }

  /** A condition with its readings, and its trace if there is one. */
  private record Part(MarginFinder finder, Condition condition, @Nullable ConditionTrace known) {
    /** The draws in which the condition holds, or its opposite. */
    DrawTruth draws(boolean holds) {
      DrawTruth truth =
          known == null ? condition.evaluate(finder.readings, finder.judgements) : known.draws();
      return holds ? truth : truth.not();
    }

    @Nullable Margin margin(boolean holds) {
      return known != null && holds && known.truth() != Truth.UNKNOWN
          ? known.margin()
          : finder.of(condition, holds);
    }
  }

  private Readings likely() {
    if (likely == null) {
      likely = readings.atLikely();
    }
    return likely;
  }

  /** The margin of a condition, or null if no number can flip it or a fact it needs is missing. */
  public @Nullable Margin of(Condition condition) {
    return of(condition, true);
  }

  /**
   * The margin of conditions that must all hold, or null.
   *
   * @param conditions the conditions
   * @param traces the trace of each, in the same order
   */
  public @Nullable Margin ofAll(List<Condition> conditions, List<ConditionTrace> traces) {
    if (traces.size() == 1) {
      return traces.get(0).margin();
    }
    List<Part> parts = new ArrayList<>(conditions.size());
    for (int i = 0; i < conditions.size(); i++) {
      parts.add(new Part(this, conditions.get(i), traces.get(i)));
    }
    return among(parts, true, true);
  }

  private @Nullable Margin of(Condition condition, boolean holds) {
    if (condition instanceof Comparison comparison) {
      return margin(comparison, holds);
    } else if (condition instanceof Condition.Not not) {
      return of(not.condition(), !holds);
    } else if (condition instanceof Condition.Joined joined) {
      List<Part> parts = new ArrayList<>();
      joined.conditions().forEach(c -> parts.add(new Part(this, c, null)));
      return among(parts, holds, (joined.join() == Condition.Join.ALL) == holds);
    } else if (condition instanceof Condition.OfList list) {
      return among(members(list), holds, (list.join() == Condition.Join.ALL) == holds);
    }
    return null;
  }

  private List<Part> members(Condition.OfList list) {
    List<Part> parts = new ArrayList<>();
    for (Readings member : list.members(readings)) {
      MarginFinder finder = new MarginFinder(member, judgements, level, parts.size() + 1);
      parts.add(new Part(finder, list.each(), null));
    }
    return parts;
  }

  /** Among parts that must all hold, or, for the opposite, of which one is enough. */
  private @Nullable Margin among(List<Part> parts, boolean holds, boolean allNeeded) {
    List<Part> against = List.of();
    for (Part part : parts) {
      DrawTruth draws = part.draws(holds);
      if (allNeeded ? !draws.mayExceed(level) : draws.exceeds(level)) {
        against = against.isEmpty() ? new ArrayList<>(parts.size()) : against;
        against.add(part);
      }
    }
    Margin best = null;
    for (Part part : against.isEmpty() ? parts : against) {
      Margin margin = part.margin(holds);
      if (margin == null && !against.isEmpty()) {
        return null;
      }
      boolean nearer =
          best == null || margin != null && margin.relativeAtLevel() < best.relativeAtLevel();
      best = margin != null && (nearer == against.isEmpty() || best == null) ? margin : best;
    }
    return best;
  }

  private @Nullable Margin margin(Comparison comparison, boolean holds) {
    if (!(comparison.left().estimate(readings, judgements) instanceof Estimate.Known left)
        || !(comparison.right().estimate(readings, judgements) instanceof Estimate.Known right)
        || !left.isAnywhere()
        || !right.isAnywhere()) {
      return null;
    }
    return new Margin(
        comparison,
        holds,
        place,
        left,
        right,
        comparison.relation().of(left, right),
        level,
        Clearance.of(comparison.relation(), holds).adverse(left, right, level),
        new LazyList<>() {
          @Override
          protected List<FactChange> made() {
            return changes(comparison, holds);
          }
        });
  }

  private List<FactChange> changes(Comparison comparison, boolean holds) {
    Set<Fact> facts = new LinkedHashSet<>();
    comparison.facts(facts::add);
    List<FactChange> changes = new ArrayList<>();
    for (Fact fact : facts) {
      Fact.Number range = fact.number();
      if (range != null && readings.value(fact) instanceof Value.Quantity now) {
        double from = now.band().likely();
        Double flips = flip(comparison, holds, fact, range, from, true);
        boolean othersExact = othersExact(facts, fact);
        Double clears = othersExact ? flips : flip(comparison, holds, fact, range, from, false);
        changes.add(new FactChange(fact, from, flips, clears));
      }
    }
    return changes;
  }

  private boolean othersExact(Set<Fact> facts, Fact fact) {
    for (Fact other : facts) {
      if (!other.equals(fact) && !isExact(other)) {
        return false;
      }
    }
    return true;
  }

  private boolean isExact(Fact fact) {
    return !(readings.value(fact) instanceof Value.Quantity q) || q.band().isExact();
  }

  private @Nullable Double flip(
      Comparison comparison,
      boolean holds,
      Fact fact,
      Fact.Number range,
      double from,
      boolean othersLikely) {
    Readings others = othersLikely ? likely() : readings;
    Clearance clearance = Clearance.of(comparison.relation(), holds);
    ThresholdSolver solver =
        new ThresholdSolver(
            x -> {
              Readings moved = others.with(fact, Band.exactly(x));
              return comparison.left().estimate(moved, judgements) instanceof Estimate.Known a
                      && comparison.right().estimate(moved, judgements) instanceof Estimate.Known b
                  ? clearance.adverse(a, b, level)
                  : Double.NaN;
            },
            range.least(),
            range.greatest());
    double[] each = crossings(comparison, fact, others);
    if (each == null) {
      return solver.nearest(from);
    }
    double[] places = rising(each);
    int place = Math.min(places.length - 1, (int) (level * each.length));
    return places.length == 0
        ? solver.among(from, places)
        : solver.among(from, places, place, places.length - 1 - place);
  }

  private static double[] rising(double[] each) {
    double[] finite = new double[each.length];
    int count = 0;
    for (double value : each) {
      if (Double.isFinite(value)) {
        finite[count++] = value;
      }
    }
    double[] rising = Arrays.copyOf(finite, count);
    Arrays.sort(rising);
    return rising;
  }

  /**
   * Where, in each draw, the side with the fact equals the other: the comparison flips at one of
   * these or nowhere. Null if the fact is on both sides or on none that can be solved.
   */
  private double @Nullable [] crossings(Comparison comparison, Fact fact, Readings others) {
    boolean left = InverseTerm.isIn(comparison.left(), fact);
    Term side = left ? comparison.left() : comparison.right();
    Term other = left ? comparison.right() : comparison.left();
    if (InverseTerm.isIn(other, fact)
        || !(other.estimate(others, judgements) instanceof Estimate.Known known)) {
      return null;
    }
    return new InverseTerm(fact, others, judgements).value(side, known);
  }
}

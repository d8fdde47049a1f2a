package org.standproud.rules.language;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.units.Dimension;

/**
 * One compiled condition of a card. The same object is what the engine evaluates, the trace
 * reports, the rule page prints and the tests run.
 */
public sealed interface Condition {

  /** The truth of the condition for these readings, draw by draw. */
  DrawTruth evaluate(Readings readings, Judgements judgements);

  /** The condition in words. */
  String toWords();

  /** Passes every fact read to the consumer. */
  void facts(Consumer<Fact> consumer);

  /** Passes every judgement read to the consumer. */
  default void judgements(Consumer<String> consumer) {}

  /** Why the condition cannot be judged: what to measure, what may be zero. */
  default List<String> unknowns(Readings readings, Judgements judgements) {
    Set<String> reasons = new LinkedHashSet<>();
    facts(
        fact -> {
          if (readings.value(fact) instanceof Value.Missing missing && !missing.letsGo()) {
            reasons.add(fact.name() + " is not known: " + missing.measure());
          }
        });
    judgements(
        name -> {
          if (judgements.of(name).truth() == Truth.UNKNOWN) {
            reasons.add("it is not known whether " + name);
          }
        });
    if (reasons.isEmpty()) {
      comparisons(readings, (c, at) -> c.addUnknowns(at, judgements, reasons));
    }
    return List.copyOf(reasons);
  }

  /** Passes every comparison of numbers in the condition to the consumer, with its readings. */
  private void comparisons(Readings readings, BiConsumer<Comparison, Readings> consumer) {
    if (this instanceof Comparison comparison) {
      consumer.accept(comparison, readings);
    } else if (this instanceof Not not) {
      not.condition.comparisons(readings, consumer);
    } else if (this instanceof Joined joined) {
      joined.conditions.forEach(c -> c.comparisons(readings, consumer));
    } else if (this instanceof OfList list) {
      list.members(readings).forEach(at -> list.each.comparisons(at, consumer));
    }
  }

  /** The truth of a condition on a fact without a value. */
  private static DrawTruth missing(Value value) {
    return value instanceof Value.Missing missing && missing.letsGo()
        ? DrawTruth.GONE
        : DrawTruth.UNKNOWN;
  }

  /** How two numbers are compared. */
  enum Relation {
    /** Less. */
    LESS("is less than"),
    /** Less or equal. */
    AT_MOST("is at most"),
    /** More. */
    MORE("is more than"),
    /** More or equal. */
    AT_LEAST("is at least"),
    /** Equal. */
    EQUAL("is"),
    /** Not equal. */
    NOT_EQUAL("is not");

    private final String words;

    Relation(String words) {
      this.words = words;
    }

    /** In words: "is less than". */
    public String words() {
      return words;
    }

    /** Compares two finite numbers. */
    boolean holds(double a, double b) {
      int order = Comparison.order(a, b);
      return switch (this) {
        case LESS -> order < 0;
        case AT_LEAST -> order >= 0;
        case MORE -> order > 0;
        case AT_MOST -> order <= 0;
        case EQUAL -> order == 0;
        case NOT_EQUAL -> order != 0;
      };
    }

    /** The draws in which the comparison holds. */
    public DrawTruth of(Estimate.Known a, Estimate.Known b) {
      int draws = Math.max(a.size(), b.size());
      if (a.isWhole() && b.isWhole()) {
        if (draws == 1) {
          return DrawTruth.of(holds(a.at(0, 1), b.at(0, 1)));
        }
        return DrawTruth.of(
            DrawSet.where(draws, draw -> holds(a.at(draw, draws), b.at(draw, draws))));
      }
      IntPredicate finite =
          draw -> Double.isFinite(a.at(draw, draws)) && Double.isFinite(b.at(draw, draws));
      IntPredicate gone =
          draw -> Double.isNaN(a.at(draw, draws)) || Double.isNaN(b.at(draw, draws));
      IntPredicate holds = draw -> holds(a.at(draw, draws), b.at(draw, draws));
      return DrawTruth.of(
          DrawSet.where(draws, finite.and(holds)),
          DrawSet.where(draws, finite.and(holds.negate())),
          DrawSet.where(draws, finite.or(gone).negate()));
    }
  }

  /**
   * Two numbers compared.
   *
   * @param left the left side
   * @param relation how they are compared
   * @param right the right side
   * @param dimension the dimension of both, or null if it has no name
   */
  record Comparison(Term left, Relation relation, Term right, @Nullable Dimension dimension)
      implements Condition {

    /**
     * Two numbers that differ by less than this fraction of the larger are equal, so that 75 mm
     * over 30 mm is the 2.5 a reader sees despite rounding in unit conversion.
     */
    public static final double SAME = 1e-12;

    private void addUnknowns(Readings readings, Judgements judgements, Set<String> reasons) {
      for (Term side : List.of(left, right)) {
        Estimate estimate = side.estimate(readings, judgements);
        if (estimate instanceof Estimate.Unknown unknown) {
          reasons.add(unknown.reason());
        } else if (estimate instanceof Estimate.Known known && known.gap() != null) {
          reasons.add(known.gap());
        }
      }
    }

    static int order(double a, double b) {
      return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b))
          ? 0
          : Double.compare(a, b);
    }

    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      return left.estimate(readings, judgements) instanceof Estimate.Known a
              && right.estimate(readings, judgements) instanceof Estimate.Known b
          ? relation.of(a, b)
          : DrawTruth.UNKNOWN;
    }

    @Override
    public String toWords() {
      return left.toWords() + " " + relation.words + " " + right.toWords();
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      left.facts(consumer);
      right.facts(consumer);
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      left.judgements(consumer);
      right.judgements(consumer);
    }
  }

  /**
   * A word fact is one of some words.
   *
   * @param fact the fact
   * @param slot its index in the readings
   * @param words the words, at least one
   */
  record OneOf(Fact fact, int slot, List<String> words) implements Condition {
    /** Copies the list. */
    public OneOf {
      words = List.copyOf(words);
    }

    /** The word of the fact, or null if it is missing or differs between draws. */
    public @Nullable String word(Readings readings) {
      return readings.at(slot) instanceof Value.Text text && text.draws().isEmpty()
          ? text.word()
          : null;
    }

    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      if (!(readings.at(slot) instanceof Value.Text text)) {
        return missing(readings.at(slot));
      }
      if (text.draws().isEmpty()) {
        return DrawTruth.of(words.contains(text.word()));
      }
      DrawSet among = null;
      int draws = 1;
      for (Map.Entry<String, DrawSet> each : text.draws().entrySet()) {
        draws = each.getValue().draws();
        if (words.contains(each.getKey())) {
          among = among == null ? each.getValue() : among.or(each.getValue());
        }
      }
      return DrawTruth.of(among == null ? DrawSet.none(draws) : among);
    }

    @Override
    public String toWords() {
      return fact.name() + " is " + String.join(" or ", words);
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      consumer.accept(fact);
    }
  }

  /**
   * A yes-or-no fact is yes.
   *
   * @param fact the fact
   * @param slot its index in the readings
   */
  record Yes(Fact fact, int slot) implements Condition {
    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      return readings.at(slot) instanceof Value.Truth truth
          ? truth.draws().draws() == 1 ? DrawTruth.of(truth.yes()) : DrawTruth.of(truth.draws())
          : missing(readings.at(slot));
    }

    @Override
    public String toWords() {
      return fact.name();
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      consumer.accept(fact);
    }
  }

  /**
   * A fact is missing; never unknown itself.
   *
   * @param fact the fact
   * @param slot its index in the readings
   */
  record NotKnown(Fact fact, int slot) implements Condition {
    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      return DrawTruth.of(readings.at(slot) instanceof Value.Missing missing && !missing.letsGo());
    }

    @Override
    public String toWords() {
      return fact.name() + " is not known";
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      consumer.accept(fact);
    }
  }

  /**
   * A judgement of another card holds.
   *
   * @param name the judgement
   */
  record Judged(String name) implements Condition {
    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      return judgements.of(name);
    }

    @Override
    public String toWords() {
      return name;
    }

    @Override
    public void facts(Consumer<Fact> consumer) {}

    @Override
    public void judgements(Consumer<String> consumer) {
      consumer.accept(name);
    }
  }

  /**
   * Always or never.
   *
   * @param holds which
   */
  record Fixed(boolean holds) implements Condition {
    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      return DrawTruth.of(holds);
    }

    @Override
    public String toWords() {
      return holds ? "always" : "never";
    }

    @Override
    public void facts(Consumer<Fact> consumer) {}
  }

  /**
   * The opposite of a condition.
   *
   * @param condition the condition
   */
  record Not(Condition condition) implements Condition {
    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      return condition.evaluate(readings, judgements).not();
    }

    @Override
    public String toWords() {
      return "not (" + condition.toWords() + ")";
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      condition.facts(consumer);
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      condition.judgements(consumer);
    }
  }

  /**
   * Some or every number of a list satisfies a condition. A missing list leaves it unknown; for an
   * empty list, some is false and every is true.
   *
   * @param join whether every number must satisfy it or one is enough
   * @param name the variable for a number of the list
   * @param list the list
   * @param slot its index in the readings
   * @param each the condition on a number
   */
  record OfList(Join join, String name, Fact list, int slot, Condition each) implements Condition {
    /** For each number of the list, readings with that number; empty if the list is missing. */
    public List<Readings> members(Readings readings) {
      return readings.each(slot);
    }

    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      if (readings.at(slot) instanceof Value.Missing) {
        return missing(readings.at(slot));
      }
      DrawTruth truth = join.ofNone;
      for (Readings member : members(readings)) {
        truth = join.of(truth, each.evaluate(member, judgements));
      }
      return truth;
    }

    @Override
    public String toWords() {
      String which = join == Join.ALL ? "for every " : "for some ";
      return which + name + " of " + list.name() + ", " + each.toWords();
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      consumer.accept(list);
      each.facts(consumer);
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      each.judgements(consumer);
    }
  }

  /** How several conditions are joined. */
  enum Join {
    /** All must hold. */
    ALL(" and ", DrawTruth.TRUE),
    /** One is enough. */
    ANY(" or ", DrawTruth.FALSE);

    private final String word;
    private final DrawTruth ofNone;

    Join(String word, DrawTruth ofNone) {
      this.word = word;
      this.ofNone = ofNone;
    }

    private DrawTruth of(DrawTruth a, DrawTruth b) {
      return this == ALL ? a.and(b) : a.or(b);
    }
  }

  /** All of some conditions. */
  static Joined all(List<Condition> conditions) {
    return new Joined(Join.ALL, conditions);
  }

  /** At least one of some conditions. */
  static Joined any(List<Condition> conditions) {
    return new Joined(Join.ANY, conditions);
  }

  /**
   * Several conditions as one.
   *
   * @param join whether all must hold or one is enough
   * @param conditions the conditions
   */
  record Joined(Join join, List<Condition> conditions) implements Condition {
    /** Copies the list. */
    public Joined {
      conditions = List.copyOf(conditions);
    }

    @Override
    public DrawTruth evaluate(Readings readings, Judgements judgements) {
      boolean all = join == Join.ALL;
      DrawTruth truth = join.ofNone;
      for (Condition condition : conditions) {
        truth = join.of(truth, condition.evaluate(readings, judgements));
        if ((all ? truth.fails() : truth.holds()).isAll()) {
          return DrawTruth.of(!all);
        }
      }
      return truth;
    }

    @Override
    public String toWords() {
      return conditions.stream().map(this::inside).collect(Collectors.joining(join.word));
    }

    private String inside(Condition part) {
      boolean other = part instanceof Joined joined ? joined.join != join : part instanceof OfList;
      return other ? "(" + part.toWords() + ")" : part.toWords();
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      conditions.forEach(c -> c.facts(consumer));
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      conditions.forEach(c -> c.judgements(consumer));
    }
  }
}

package org.standproud.rules.gate;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Condition.Relation;
import org.standproud.rules.language.Estimate;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;

/**
 * One of several conditions that must all hold, in a form that can be compared with another: a
 * number against a constant, a fact among words, or any other by its text. Names of limits do not
 * matter here, only their values.
 */
sealed interface NormalizedCondition {

  Readings NO_READINGS = new Readings(new FactTable(List.of()), new Evidence(List.of()));

  /** Whether this implies the other; false if that cannot be decided. */
  boolean followsFrom(NormalizedCondition other);

  /** Whether this and the other can never hold together; false if that cannot be decided. */
  boolean contradicts(NormalizedCondition other);

  /** The same condition always has the same text, whatever its limits are named. */
  String key();

  /**
   * A number against a constant.
   *
   * @param left the number by its text
   * @param relation how it is compared
   * @param value the constant in SI
   */
  record Bound(String left, Relation relation, double value) implements NormalizedCondition {

    private boolean upper() {
      return relation == Relation.LESS || relation == Relation.AT_MOST;
    }

    private boolean strict() {
      return relation == Relation.LESS || relation == Relation.MORE;
    }

    private boolean oneSided() {
      return upper() || relation == Relation.MORE || relation == Relation.AT_LEAST;
    }

    @Override
    public boolean followsFrom(NormalizedCondition other) {
      if (!(other instanceof Bound b) || !left.equals(b.left)) {
        return false;
      }
      if (!oneSided() || !b.oneSided() || upper() != b.upper()) {
        return equals(b);
      }
      double inside = upper() ? value - b.value : b.value - value;
      return inside > 0 || inside == 0 && (!strict() || b.strict());
    }

    @Override
    public boolean contradicts(NormalizedCondition other) {
      if (!(other instanceof Bound b)
          || !left.equals(b.left)
          || !oneSided()
          || !b.oneSided()
          || upper() == b.upper()) {
        return false;
      }
      double room = upper() ? value - b.value : b.value - value;
      return room < 0 || room == 0 && (strict() || b.strict());
    }

    @Override
    public String key() {
      return left + " " + relation + " " + value;
    }
  }

  /**
   * A fact among words.
   *
   * @param fact the fact
   * @param words the words
   */
  record Among(String fact, Set<String> words) implements NormalizedCondition {
    /** Copies the words. */
    public Among {
      words = Set.copyOf(words);
    }

    @Override
    public boolean followsFrom(NormalizedCondition other) {
      return other instanceof Among a && fact.equals(a.fact) && words.containsAll(a.words);
    }

    @Override
    public boolean contradicts(NormalizedCondition other) {
      return other instanceof Among a
          && fact.equals(a.fact)
          && words.stream().noneMatch(a.words::contains);
    }

    @Override
    public String key() {
      return fact + " in " + words.stream().sorted().toList();
    }
  }

  /**
   * Any other condition.
   *
   * @param key its text
   */
  record Other(String key) implements NormalizedCondition {
    @Override
    public boolean followsFrom(NormalizedCondition other) {
      return equals(other);
    }

    @Override
    public boolean contradicts(NormalizedCondition other) {
      return other instanceof Other o
          && (key.equals("not(" + o.key + ")") || o.key.equals("not(" + key + ")"));
    }
  }

  /** Normalizes a condition: one, or one for each part that must hold. */
  static Stream<NormalizedCondition> of(Condition condition) {
    if (condition instanceof Condition.Joined joined && joined.join() == Condition.Join.ALL) {
      return joined.conditions().stream().flatMap(NormalizedCondition::of);
    } else if (condition instanceof Condition.OneOf one) {
      return Stream.of(new Among(one.fact().name(), Set.copyOf(one.words())));
    } else if (condition instanceof Condition.Not not
        && not.condition() instanceof Condition.OneOf one
        && one.fact().type() instanceof Fact.Word word) {
      Set<String> others =
          word.allowed().stream().filter(w -> !one.words().contains(w)).collect(Collectors.toSet());
      return Stream.of(new Among(one.fact().name(), others));
    } else if (condition instanceof Condition.Comparison comparison) {
      return Stream.of(comparison(comparison));
    }
    return Stream.of(new Other(key(condition)));
  }

  /** The valid range of a fact, as conditions that always hold. */
  static Stream<NormalizedCondition> range(Fact fact) {
    return fact.type() instanceof Fact.Number number
        ? Stream.of(
            new Bound(fact.name(), Relation.AT_LEAST, number.least()),
            new Bound(fact.name(), Relation.AT_MOST, number.greatest()))
        : Stream.of();
  }

  private static NormalizedCondition comparison(Condition.Comparison comparison) {
    Double right = constant(comparison.right());
    if (right != null) {
      return new Bound(key(comparison.left()), comparison.relation(), right);
    }
    Double left = constant(comparison.left());
    return left != null
        ? new Bound(key(comparison.right()), mirrored(comparison.relation()), left)
        : new Other(key(comparison));
  }

  private static Relation mirrored(Relation relation) {
    return switch (relation) {
      case LESS -> Relation.MORE;
      case MORE -> Relation.LESS;
      case AT_MOST -> Relation.AT_LEAST;
      case AT_LEAST -> Relation.AT_MOST;
      case EQUAL, NOT_EQUAL -> relation;
    };
  }

  private static @Nullable Double constant(Term term) {
    boolean[] reads = new boolean[1];
    term.facts(f -> reads[0] = true);
    term.judgements(j -> reads[0] = true);
    return !reads[0] && term.estimate(NO_READINGS, Judgements.NONE) instanceof Estimate.Known known
        ? (Double) known.band().likely()
        : null;
  }

  private static String key(Condition condition) {
    if (condition instanceof Condition.Joined joined) {
      return joined.join()
          + ""
          + joined.conditions().stream().map(NormalizedCondition::key).sorted().toList();
    } else if (condition instanceof Condition.Not not) {
      return "not(" + key(not.condition()) + ")";
    } else if (condition instanceof Condition.Comparison c) {
      return key(key(c.left()), c.relation(), key(c.right()));
    } else if (condition instanceof Condition.OfList list) {
      return list.join() + " of " + list.list().name() + " " + key(list.each());
    }
    return condition.toWords();
  }

  /** The order of the sides does not matter. */
  private static String key(String left, Relation relation, String right) {
    return left.compareTo(right) <= 0
        ? "(" + left + " " + relation + " " + right + ")"
        : "(" + right + " " + mirrored(relation) + " " + left + ")";
  }

  private static String key(Term term) {
    Double constant = constant(term);
    if (constant != null) {
      return constant.toString();
    } else if (term instanceof Term.Member) {
      return "it";
    } else if (term instanceof Term.Arithmetic a) {
      return "(" + key(a.left()) + " " + a.operation() + " " + key(a.right()) + ")";
    } else if (term instanceof Term.Opposite o) {
      return "-" + key(o.term());
    } else if (term instanceof Term.Magnitude m) {
      return "abs(" + key(m.term()) + ")";
    } else if (term instanceof Term.Extreme e) {
      return (e.greatest() ? "max" : "min")
          + e.terms().stream().map(NormalizedCondition::key).sorted().toList();
    } else if (term instanceof Term.Chosen c) {
      return "if(" + key(c.condition()) + "," + key(c.then()) + "," + key(c.otherwise()) + ")";
    }
    return term.toWords();
  }
}

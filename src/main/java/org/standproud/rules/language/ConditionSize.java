package org.standproud.rules.language;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Number of steps to evaluate a condition once. A part reached from two places is evaluated twice
 * and counts twice, so that a choice inside the decision of another choice doubles the work at each
 * level; the count itself visits each part once.
 */
public final class ConditionSize {

  /**
   * Most steps in one condition: a text of {@link ConditionText#MAX_LENGTH} characters written out
   * for {@link FeelConditionCompiler#MAX_MEMBERS} members stays below it. Common practice, no
   * source.
   */
  public static final long MOST = 1_000;

  /** The counts so far, by identity, because comparing parts walks them. */
  private final Map<Object, Long> counted = new IdentityHashMap<>();

  ConditionSize() {}

  /** The steps of a condition; no more than {@link Long#MAX_VALUE}. */
  long of(Condition condition) {
    Long known = counted.get(condition);
    if (known != null) {
      return known;
    }
    long size = 1;
    if (condition instanceof Condition.Joined joined) {
      for (Condition part : joined.conditions()) {
        size = sum(size, of(part));
      }
    } else if (condition instanceof Condition.Not not) {
      size = sum(size, of(not.condition()));
    } else if (condition instanceof Condition.OfList list) {
      size = sum(size, of(list.each()));
    } else if (condition instanceof Condition.Comparison comparison) {
      size = sum(size, sum(of(comparison.left()), of(comparison.right())));
    }
    counted.put(condition, size);
    return size;
  }

  /** The steps of a number; no more than {@link Long#MAX_VALUE}. */
  long of(Term term) {
    Long known = counted.get(term);
    if (known != null) {
      return known;
    }
    long size = 1;
    if (term instanceof Term.Chosen chosen) {
      size = sum(size, of(chosen.condition()));
    }
    for (Term part : parts(term)) {
      size = sum(size, of(part));
    }
    counted.put(term, size);
    return size;
  }

  private static List<Term> parts(Term term) {
    if (term instanceof Term.Arithmetic arithmetic) {
      return List.of(arithmetic.left(), arithmetic.right());
    } else if (term instanceof Term.Opposite opposite) {
      return List.of(opposite.term());
    } else if (term instanceof Term.Magnitude magnitude) {
      return List.of(magnitude.term());
    } else if (term instanceof Term.Extreme extreme) {
      return extreme.terms();
    } else if (term instanceof Term.Chosen chosen) {
      return List.of(chosen.then(), chosen.otherwise());
    }
    return List.of();
  }

  private static long sum(long a, long b) {
    long sum = a + b;
    return sum < 0 ? Long.MAX_VALUE : sum;
  }
}

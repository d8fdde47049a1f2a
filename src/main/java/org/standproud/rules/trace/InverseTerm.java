package org.standproud.rules.trace;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Estimate;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;

/**
 * Solves a term for a fact: its value, in each draw, at which the term equals a number with every
 * other part of the term as in that draw. It works for terms in which the fact occurs once and only
 * under arithmetic, which is nearly all; null for any other. A value is NaN where the solution
 * divides by zero.
 *
 * @param fact the fact
 * @param readings the values of the facts
 * @param judgements the judgements the term may read
 */
record InverseTerm(Fact fact, Readings readings, Judgements judgements) {

  /** The value of the fact at which the term equals a number. */
  double @Nullable [] value(Term term, Estimate.Known wanted) {
    double[] values = new double[wanted.size()];
    Arrays.setAll(values, draw -> wanted.at(draw, values.length));
    return value(term, values);
  }

  private double @Nullable [] value(Term term, double[] wanted) {
    if (isTheFact(term)) {
      return wanted;
    } else if (term instanceof Term.Arithmetic sum) {
      return within(sum, wanted);
    } else if (term instanceof Term.Opposite opposite) {
      double[] negative = new double[wanted.length];
      Arrays.setAll(negative, draw -> -wanted[draw]);
      return value(opposite.term(), negative);
    } else if (term instanceof Term.Magnitude size) {
      return magnitude(size, wanted);
    }
    return null;
  }

  private double @Nullable [] magnitude(Term.Magnitude size, double[] wanted) {
    if (!(now(size.term()) instanceof Estimate.Known now)) {
      return null;
    }
    double[] signed = new double[Math.max(wanted.length, now.size())];
    Arrays.setAll(
        signed,
        draw -> {
          double value = at(wanted, draw, signed.length);
          return value < 0 ? Double.NaN : Math.copySign(value, now.at(draw, signed.length));
        });
    return value(size.term(), signed);
  }

  /** Whether the fact occurs in a term. */
  static boolean isIn(Term term, Fact fact) {
    AtomicBoolean found = new AtomicBoolean();
    term.facts(one -> found.compareAndSet(false, one.equals(fact)));
    return found.get();
  }

  private boolean isTheFact(Term term) {
    return term instanceof Term.Measured measured && measured.fact().equals(fact)
        || term instanceof Term.Member member && member.list().equals(fact);
  }

  private double @Nullable [] within(Term.Arithmetic sum, double[] wanted) {
    boolean left = isIn(sum.left(), fact);
    if (left && isIn(sum.right(), fact)
        || !(now(sum.left()) instanceof Estimate.Known a)
        || !(now(sum.right()) instanceof Estimate.Known b)) {
      return null;
    }
    int draws = Math.max(wanted.length, Math.max(a.size(), b.size()));
    double[] values = new double[draws];
    for (int draw = 0; draw < draws; draw++) {
      double want = at(wanted, draw, draws);
      double right = b.at(draw, draws);
      values[draw] =
          left
              ? left(sum.operation(), right, want)
              : right(sum.operation(), a.at(draw, draws), right, want);
    }
    return value(left ? sum.left() : sum.right(), values);
  }

  private static double left(Term.Operation operation, double right, double wanted) {
    return switch (operation) {
      case PLUS -> wanted - right;
      case MINUS -> wanted + right;
      case TIMES -> wanted / right;
      case PER -> wanted * right;
    };
  }

  private static double right(Term.Operation operation, double left, double now, double wanted) {
    return switch (operation) {
      case PLUS -> wanted - left;
      case MINUS -> left - wanted;
      case TIMES -> wanted / left;
      case PER -> left / wanted * now > 0 ? left / wanted : Double.NaN;
    };
  }

  private static double at(double[] values, int draw, int draws) {
    return values[values.length == draws ? draw : (int) ((long) draw * values.length / draws)];
  }

  private Estimate now(Term term) {
    return term.estimate(readings, judgements);
  }
}

package org.standproud.rules.trace;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Estimate;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;

/**
 * Solves a term for a fact: its value, in each draw, at which the term equals a number with every
 * other part of the term as in that draw. It works for terms in which the fact occurs once, and not
 * in the condition of a choice, which is nearly all; null for any other. A value is NaN where no
 * value of the fact gives that number.
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
    } else if (term instanceof Term.Extreme extreme) {
      return extreme(extreme, wanted);
    } else if (term instanceof Term.Chosen chosen) {
      return chosen(chosen, wanted);
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

  /** The term with the fact decides only where no other is beyond the number already. */
  private double @Nullable [] extreme(Term.Extreme extreme, double[] wanted) {
    Term holder = null;
    double[] values = wanted;
    for (Term term : extreme.terms()) {
      if (!isIn(term, fact)) {
        if (!(now(term) instanceof Estimate.Known other)) {
          return null;
        }
        values = unlessBeyond(values, other, extreme.greatest());
      } else if (holder != null) {
        return null;
      } else {
        holder = term;
      }
    }
    return holder == null ? null : value(holder, values);
  }

  private static double[] unlessBeyond(double[] wanted, Estimate.Known other, boolean greatest) {
    double[] values = new double[Math.max(wanted.length, other.size())];
    Arrays.setAll(
        values,
        draw -> {
          double want = at(wanted, draw, values.length);
          double value = other.at(draw, values.length);
          return (greatest ? value <= want : value >= want) ? want : Double.NaN;
        });
    return values;
  }

  private double @Nullable [] chosen(Term.Chosen chosen, double[] wanted) {
    boolean then = isIn(chosen.then(), fact);
    AtomicBoolean decides = new AtomicBoolean();
    chosen.condition().facts(one -> decides.compareAndSet(false, one.equals(fact)));
    if (decides.get() || then && isIn(chosen.otherwise(), fact)) {
      return null;
    }
    DrawTruth truth = chosen.condition().evaluate(readings, judgements);
    DrawSet taken = then ? truth.holds() : truth.fails();
    double[] values = new double[Math.max(wanted.length, truth.draws())];
    Arrays.setAll(
        values,
        draw ->
            taken.contains((int) ((long) draw * truth.draws() / values.length))
                ? at(wanted, draw, values.length)
                : Double.NaN);
    return value(then ? chosen.then() : chosen.otherwise(), values);
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

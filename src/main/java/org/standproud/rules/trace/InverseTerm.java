package org.standproud.rules.trace;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.ToDoubleFunction;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Estimate;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;
import org.standproud.setup.Band;

/**
 * Brings a fact to one side: what it would have to be for a term to come to a number, with every
 * other part of the term at one place of its band. Told for terms in which the fact stands once and
 * under arithmetic alone, which is nearly all; NaN for any other, and where the way there leads
 * through a division by zero.
 *
 * @param fact the fact
 * @param readings the values of the facts
 * @param judgements the judgements the term may read
 * @param place where in their bands the other parts are taken
 */
record InverseTerm(
    Fact fact, Readings readings, Judgements judgements, ToDoubleFunction<Band> place) {

  /** What the fact would have to be for the term to come to a number. */
  double value(Term term, double wanted) {
    if (isTheFact(term)) {
      return wanted;
    } else if (term instanceof Term.Arithmetic sum) {
      return within(sum, wanted);
    } else if (term instanceof Term.Opposite opposite) {
      return value(opposite.term(), -wanted);
    } else if (term instanceof Term.Magnitude size) {
      return wanted < 0 ? Double.NaN : value(size.term(), Math.copySign(wanted, now(size.term())));
    }
    return Double.NaN;
  }

  /** Whether the fact stands in a term. */
  static boolean isIn(Term term, Fact fact) {
    AtomicBoolean found = new AtomicBoolean();
    term.facts(one -> found.compareAndSet(false, one.equals(fact)));
    return found.get();
  }

  private boolean isTheFact(Term term) {
    return term instanceof Term.Measured measured && measured.fact().equals(fact)
        || term instanceof Term.Member member && member.list().equals(fact);
  }

  private double within(Term.Arithmetic sum, double wanted) {
    boolean left = isIn(sum.left(), fact);
    if (left && isIn(sum.right(), fact)) {
      return Double.NaN;
    }
    return left
        ? value(sum.left(), left(sum.operation(), now(sum.right()), wanted))
        : value(sum.right(), right(sum.operation(), now(sum.left()), now(sum.right()), wanted));
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

  private double now(Term term) {
    return term.estimate(readings, judgements) instanceof Estimate.Known known
        ? place.applyAsDouble(known.band())
        : Double.NaN;
  }
}

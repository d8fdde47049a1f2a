package org.standproud.rules.language;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.standproud.mechanics.evidence.Fact;

/**
 * A numeric expression, evaluated draw by draw, so that a fact that occurs twice has the same value
 * both times. An infinite value marks a draw in which it cannot be computed.
 */
public sealed interface Term {

  /** The reason for a number out of the computable range. */
  String TOO_LARGE = "the number is too large to be judged";

  /** The estimate with a function of each value. */
  private static Estimate each(Estimate estimate, DoubleUnaryOperator function) {
    if (!(estimate instanceof Estimate.Known known)) {
      return estimate;
    }
    double[] values = new double[known.size()];
    for (int draw = 0; draw < values.length; draw++) {
      values[draw] = function.applyAsDouble(known.at(draw, values.length));
    }
    String gap = known.gap();
    return Estimate.of(values, gap == null ? TOO_LARGE : gap);
  }

  /** The value of the expression for these readings. */
  Estimate estimate(Readings readings, Judgements judgements);

  /** The expression in words. */
  String toWords();

  /** Passes every fact read to the consumer. */
  void facts(Consumer<Fact> consumer);

  /** Passes every judgement read to the consumer. */
  default void judgements(Consumer<String> consumer) {}

  /**
   * A literal number.
   *
   * @param value the number, finite
   * @param text as written
   */
  record Literal(double value, String text) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return Estimate.Known.exactly(value);
    }

    @Override
    public String toWords() {
      return text;
    }

    @Override
    public void facts(Consumer<Fact> consumer) {}
  }

  /**
   * A named limit of the card.
   *
   * @param name its name
   * @param quantity its value
   * @param text its value as written in the card
   */
  record Limit(String name, Quantity quantity, String text) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return Estimate.Known.exactly(quantity.si());
    }

    @Override
    public String toWords() {
      return name + " (" + text + ")";
    }

    @Override
    public void facts(Consumer<Fact> consumer) {}
  }

  /**
   * A fact that is a number.
   *
   * @param fact the fact
   * @param slot its index in the readings
   */
  record Measured(Fact fact, int slot) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return readings.estimate(slot, fact);
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
   * The number of a list that a variable of some or every stands for.
   *
   * @param name the variable
   * @param list the list
   * @param slot index of the list in the readings, replaced by this number
   */
  record Member(String name, Fact list, int slot) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return readings.estimate(slot, list);
    }

    @Override
    public String toWords() {
      return name;
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      consumer.accept(list);
    }
  }

  /** The four operations of arithmetic on two terms. */
  enum Operation {
    /** Sum. */
    PLUS("+"),
    /** Difference. */
    MINUS("-"),
    /** Product. */
    TIMES("*"),
    /** Quotient. */
    PER("/");

    private final String sign;

    Operation(String sign) {
      this.sign = sign;
    }

    private double of(double a, double b) {
      double value =
          switch (this) {
            case PLUS -> a + b;
            case MINUS -> a - b;
            case TIMES -> a * b;
            case PER -> b == 0 ? Double.POSITIVE_INFINITY : a / b;
          };
      return Double.isFinite(value) && Double.isFinite(a) && Double.isFinite(b)
          ? value
          : Double.isNaN(a) || Double.isNaN(b) ? Double.NaN : Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A sum, difference, product or quotient.
   *
   * @param left first operand
   * @param operation which
   * @param right second operand
   */
  record Arithmetic(Term left, Operation operation, Term right) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      Estimate a = left.estimate(readings, judgements);
      Estimate b = right.estimate(readings, judgements);
      if (!(a instanceof Estimate.Known ka)) {
        return a;
      }
      if (!(b instanceof Estimate.Known kb)) {
        return b;
      }
      int draws = Math.max(ka.size(), kb.size());
      double[] values = new double[draws];
      boolean byZero = false;
      for (int draw = 0; draw < draws; draw++) {
        double divisor = kb.at(draw, draws);
        byZero |= operation == Operation.PER && divisor == 0;
        values[draw] = operation.of(ka.at(draw, draws), divisor);
      }
      String gap = ka.gap() == null ? kb.gap() : ka.gap();
      return Estimate.of(
          values, byZero ? right.toWords() + " may be zero" : gap == null ? TOO_LARGE : gap);
    }

    @Override
    public String toWords() {
      return inside(left) + " " + operation.sign + " " + inside(right);
    }

    private static String inside(Term term) {
      return term instanceof Arithmetic || term instanceof Chosen
          ? "(" + term.toWords() + ")"
          : term.toWords();
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
   * The opposite of a term.
   *
   * @param term the term
   */
  record Opposite(Term term) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return each(term.estimate(readings, judgements), value -> -value);
    }

    @Override
    public String toWords() {
      return "-" + (term instanceof Arithmetic ? "(" + term.toWords() + ")" : term.toWords());
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      term.facts(consumer);
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      term.judgements(consumer);
    }
  }

  /**
   * The absolute value of a term.
   *
   * @param term the term
   */
  record Magnitude(Term term) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return each(term.estimate(readings, judgements), Math::abs);
    }

    @Override
    public String toWords() {
      return "the size of " + term.toWords();
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      term.facts(consumer);
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      term.judgements(consumer);
    }
  }

  /**
   * The least or the greatest of some terms.
   *
   * @param greatest true for the greatest
   * @param terms the terms, at least one
   */
  record Extreme(boolean greatest, List<Term> terms) implements Term {
    /** Copies the list. */
    public Extreme {
      terms = List.copyOf(terms);
    }

    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      List<Estimate.Known> known = new ArrayList<>(terms.size());
      int draws = 1;
      for (Term term : terms) {
        Estimate estimate = term.estimate(readings, judgements);
        if (!(estimate instanceof Estimate.Known k)) {
          return estimate;
        }
        known.add(k);
        draws = Math.max(draws, k.size());
      }
      double[] values = new double[draws];
      for (int draw = 0; draw < draws; draw++) {
        values[draw] = pick(known, draw, draws);
      }
      return Estimate.of(values, TOO_LARGE);
    }

    private double pick(List<Estimate.Known> known, int draw, int draws) {
      double picked = greatest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
      boolean gap = false;
      for (Estimate.Known one : known) {
        double value = one.at(draw, draws);
        gap |= Double.isInfinite(value);
        picked = greatest ? Math.max(picked, value) : Math.min(picked, value);
      }
      return Double.isNaN(picked) ? picked : gap ? Double.POSITIVE_INFINITY : picked;
    }

    @Override
    public String toWords() {
      return (greatest ? "the greatest of " : "the least of ")
          + terms.stream().map(Term::toWords).collect(Collectors.joining(", "));
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      terms.forEach(t -> t.facts(consumer));
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      terms.forEach(t -> t.judgements(consumer));
    }
  }

  /**
   * One of two terms by a condition, draw by draw.
   *
   * @param condition the condition
   * @param then the term if it holds
   * @param otherwise the term if it does not
   */
  record Chosen(Condition condition, Term then, Term otherwise) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      DrawTruth truth = condition.evaluate(readings, judgements);
      if (truth.holds().isAll()) {
        return then.estimate(readings, judgements);
      }
      if (truth.fails().isAll()) {
        return otherwise.estimate(readings, judgements);
      }
      String gap = "it is not known whether " + condition.toWords();
      if (truth.unknown().isAll()) {
        return new Estimate.Unknown(gap);
      }
      Estimate a = then.estimate(readings, judgements);
      Estimate b = otherwise.estimate(readings, judgements);
      int draws = truth.draws();
      draws = a instanceof Estimate.Known known ? Math.max(draws, known.size()) : draws;
      draws = b instanceof Estimate.Known known ? Math.max(draws, known.size()) : draws;
      double[] values = new double[draws];
      for (int draw = 0; draw < draws; draw++) {
        int place = (int) ((long) draw * truth.draws() / draws);
        values[draw] =
            truth.holds().contains(place)
                ? at(a, draw, draws)
                : truth.fails().contains(place)
                    ? at(b, draw, draws)
                    : truth.unknown().contains(place) ? Double.POSITIVE_INFINITY : Double.NaN;
      }
      String missing =
          a instanceof Estimate.Unknown unknown
              ? unknown.reason()
              : b instanceof Estimate.Unknown unknown ? unknown.reason() : gap;
      return Estimate.of(values, missing);
    }

    private static double at(Estimate estimate, int draw, int draws) {
      return estimate instanceof Estimate.Known known
          ? known.at(draw, draws)
          : Double.POSITIVE_INFINITY;
    }

    @Override
    public String toWords() {
      return then.toWords() + " if " + condition.toWords() + ", otherwise " + otherwise.toWords();
    }

    @Override
    public void facts(Consumer<Fact> consumer) {
      condition.facts(consumer);
      then.facts(consumer);
      otherwise.facts(consumer);
    }

    @Override
    public void judgements(Consumer<String> consumer) {
      condition.judgements(consumer);
      then.judgements(consumer);
      otherwise.judgements(consumer);
    }
  }
}

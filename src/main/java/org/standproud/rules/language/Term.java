package org.standproud.rules.language;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;

/**
 * A numeric expression. Its value is the interval of all values it can take when each fact roams
 * its band on its own (interval arithmetic): never too narrow; too wide where one fact occurs
 * twice.
 */
public sealed interface Term {

  /** What the expression comes to for these readings. */
  Estimate estimate(Readings readings, Judgements judgements);

  /** The expression in words. */
  String toWords();

  /** Hands every fact read to the consumer. */
  void facts(Consumer<Fact> consumer);

  /** Hands every judgement read to the consumer. */
  default void judgements(Consumer<String> consumer) {}

  /**
   * A number written in the condition.
   *
   * @param value the number, finite
   * @param text as written
   */
  record Literal(double value, String text) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return new Estimate.Known(Band.exactly(value));
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
      return new Estimate.Known(Band.exactly(quantity.si()));
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
   * @param slot where it stands in the readings
   */
  record Measured(Fact fact, int slot) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return readings.at(slot) instanceof Value.Quantity q
          ? new Estimate.Known(q.band())
          : new Estimate.Unknown(fact.name() + " is not known");
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
   * The number of a list that a name stands for while some or every runs over the list.
   *
   * @param name the name
   * @param list the list
   * @param slot where the list stands in the readings, and in its place this number
   */
  record Member(String name, Fact list, int slot) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return readings.at(slot) instanceof Value.Quantity q
          ? new Estimate.Known(q.band())
          : new Estimate.Unknown(list.name() + " is not known");
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

    private Estimate of(Band a, Band b) {
      return switch (this) {
        case PLUS -> Estimate.of(a.low() + b.low(), a.likely() + b.likely(), a.high() + b.high());
        case MINUS -> Estimate.of(a.low() - b.high(), a.likely() - b.likely(), a.high() - b.low());
        case TIMES ->
            spanning(
                a.likely() * b.likely(),
                a.low() * b.low(),
                a.low() * b.high(),
                a.high() * b.low(),
                a.high() * b.high());
        case PER ->
            spanning(
                a.likely() / b.likely(),
                a.low() / b.low(),
                a.low() / b.high(),
                a.high() / b.low(),
                a.high() / b.high());
      };
    }

    private static Estimate spanning(double likely, double a, double b, double c, double d) {
      return Estimate.of(
          Math.min(Math.min(a, b), Math.min(c, d)),
          likely,
          Math.max(Math.max(a, b), Math.max(c, d)));
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
      if (operation == Operation.PER && kb.band().low() <= 0 && kb.band().high() >= 0) {
        return new Estimate.Unknown(right.toWords() + " may be zero");
      }
      return operation.of(ka.band(), kb.band());
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
      return term.estimate(readings, judgements) instanceof Estimate.Known k
          ? Estimate.of(-k.band().high(), -k.band().likely(), -k.band().low())
          : term.estimate(readings, judgements);
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
   * The size of a term without its sign.
   *
   * @param term the term
   */
  record Magnitude(Term term) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      Estimate estimate = term.estimate(readings, judgements);
      if (!(estimate instanceof Estimate.Known k)) {
        return estimate;
      }
      double low = Math.abs(k.band().low());
      double high = Math.abs(k.band().high());
      boolean mayBeZero = k.band().low() <= 0 && k.band().high() >= 0;
      return Estimate.of(
          mayBeZero ? 0 : Math.min(low, high), Math.abs(k.band().likely()), Math.max(low, high));
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
   * @param greatest whether the greatest is meant
   * @param terms the terms, at least one
   */
  record Extreme(boolean greatest, List<Term> terms) implements Term {
    /** Copies the list. */
    public Extreme {
      terms = List.copyOf(terms);
    }

    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      double low = start();
      double likely = start();
      double high = start();
      for (Term term : terms) {
        Estimate estimate = term.estimate(readings, judgements);
        if (!(estimate instanceof Estimate.Known k)) {
          return estimate;
        }
        low = pick(low, k.band().low());
        likely = pick(likely, k.band().likely());
        high = pick(high, k.band().high());
      }
      return Estimate.of(low, likely, high);
    }

    private double start() {
      return greatest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    private double pick(double a, double b) {
      return greatest ? Math.max(a, b) : Math.min(a, b);
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
   * One term or another by a condition; both where the condition may be either.
   *
   * @param condition what decides
   * @param then the term when it holds
   * @param otherwise the term when it does not
   */
  record Chosen(Condition condition, Term then, Term otherwise) implements Term {
    @Override
    public Estimate estimate(Readings readings, Judgements judgements) {
      return switch (condition.evaluate(readings, judgements)) {
        case TRUE -> then.estimate(readings, judgements);
        case FALSE -> otherwise.estimate(readings, judgements);
        case UNKNOWN -> new Estimate.Unknown("it is not known whether " + condition.toWords());
        case EITHER -> both(readings, judgements);
      };
    }

    private Estimate both(Readings readings, Judgements judgements) {
      Estimate a = then.estimate(readings, judgements);
      Estimate b = otherwise.estimate(readings, judgements);
      if (!(a instanceof Estimate.Known ka)) {
        return a;
      }
      if (!(b instanceof Estimate.Known kb)) {
        return b;
      }
      boolean likelyHolds = condition.evaluate(readings.atLikely(), judgements) == Truth.TRUE;
      return Estimate.of(
          Math.min(ka.band().low(), kb.band().low()),
          (likelyHolds ? ka : kb).band().likely(),
          Math.max(ka.band().high(), kb.band().high()));
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

package org.standproud.rules.engine;

import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.drools.model.Drools;
import org.drools.model.Index;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Truth;

/** A hearing joined with the judgements that one card reads, of which there are few. */
final class Joined {

  private final Variable<Hearing> hearing = declarationOf(Hearing.class);
  private final List<Variable<Judgement>> judgements = new ArrayList<>();
  private final List<RuleItemBuilder<?>> patterns = new ArrayList<>();

  /**
   * Joins.
   *
   * @param names of the judgements, three at most
   */
  Joined(List<String> names) {
    for (String name : names) {
      Variable<Judgement> variable = declarationOf(Judgement.class);
      judgements.add(variable);
      patterns.add(
          pattern(variable)
              .expr(
                  "judgement " + name,
                  j -> j.name().equals(name),
                  alphaIndexedBy(
                      String.class, Index.ConstraintType.EQUAL, 0, Judgement::name, name)));
    }
  }

  /** What is done when all of it is there. */
  interface Consequence {
    /** Does it. */
    void accept(Drools drools, Hearing hearing, Judgements judgements);
  }

  /** The patterns of the judgements. */
  List<RuleItemBuilder<?>> judgements() {
    return patterns;
  }

  /** A pattern of the hearing. */
  PatternDef<Hearing> hearing() {
    return pattern(hearing);
  }

  /** Constrains a pattern of the hearing by a test on it and on the judgements. */
  void constrain(
      PatternDef<Hearing> pattern, String id, BiPredicate<Hearing, Judgements> test) {
    switch (judgements.size()) {
      case 0 -> pattern.expr(id, h -> test.test(h, Judgements.NONE));
      case 1 -> pattern.expr(id, at(0), (h, a) -> test.test(h, of(a)));
      case 2 -> pattern.expr(id, at(0), at(1), (h, a, b) -> test.test(h, of(a, b)));
      case 3 ->
          pattern.expr(id, at(0), at(1), at(2), (h, a, b, c) -> test.test(h, of(a, b, c)));
      default -> throw new IllegalStateException("too many judgements in " + id);
    }
  }

  /** The consequence of a rule over all of it. */
  RuleItemBuilder<?> execute(Consequence then) {
    return switch (judgements.size()) {
      case 0 -> on(hearing).execute((d, h) -> then.accept(d, h, Judgements.NONE));
      case 1 -> on(hearing, at(0)).execute((d, h, a) -> then.accept(d, h, of(a)));
      case 2 -> on(hearing, at(0), at(1)).execute((d, h, a, b) -> then.accept(d, h, of(a, b)));
      case 3 ->
          on(hearing, at(0), at(1), at(2))
              .execute((d, h, a, b, c) -> then.accept(d, h, of(a, b, c)));
      default -> throw new IllegalStateException("too many judgements");
    };
  }

  private Variable<Judgement> at(int i) {
    return judgements.get(i);
  }

  private static Judgements of(Judgement... judgements) {
    return name -> {
      for (Judgement judgement : judgements) {
        if (judgement.name().equals(name)) {
          return judgement.truth();
        }
      }
      return Truth.UNKNOWN;
    };
  }
}

package org.standproud.rules.engine;

import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.drools.model.Drools;
import org.drools.model.Index;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Function1;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;

/**
 * The left-hand side of a card's rule: the judgements it reads and the finding it would change, or
 * else the evaluation itself. Most cards wait for one item only, so that nothing has to be joined.
 */
final class RulePattern {

  private final List<Variable<? extends WorkingMemoryItem>> variables = new ArrayList<>();
  private final List<PatternDef<? extends WorkingMemoryItem>> patterns = new ArrayList<>();

  /**
   * Waits for at most three judgements, and a finding, or if there are none for the evaluation.
   *
   * @param judgements their names
   * @param finding id of the card whose finding must exist, or null
   */
  RulePattern(List<String> judgements, @Nullable String finding) {
    if (finding != null) {
      named(Flagged.class, "finding", finding, Flagged::card);
    }
    for (String judgement : judgements) {
      named(Judgement.class, "judgement", judgement, Judgement::name);
    }
    if (patterns.isEmpty()) {
      plain(Evaluation.class);
    }
  }

  private <T extends WorkingMemoryItem> PatternDef<T> plain(Class<T> type) {
    Variable<T> variable = declarationOf(type);
    PatternDef<T> pattern = pattern(variable);
    variables.add(variable);
    patterns.add(pattern);
    return pattern;
  }

  private <T extends WorkingMemoryItem> void named(
      Class<T> type, String what, String name, Function1<T, String> of) {
    plain(type)
        .expr(
            what + " " + name,
            one -> of.apply(one).equals(name),
            alphaIndexedBy(String.class, Index.ConstraintType.EQUAL, 0, of, name));
  }

  /** Only evaluations whose fact is that word, or is missing if the word is empty. */
  void only(Condition.OneOf selector, String word) {
    only(last(), selector, word);
  }

  private static <T extends WorkingMemoryItem> void only(
      PatternDef<T> pattern, Condition.OneOf selector, String word) {
    pattern.expr(
        selector.fact().name() + " is " + (word.isEmpty() ? "not known" : word),
        one -> word.equals(one.evaluation().word(selector)),
        alphaIndexedBy(
            String.class,
            Index.ConstraintType.EQUAL,
            selector.slot(),
            one -> one.evaluation().word(selector),
            word));
  }

  /** Only evaluations that pass a test. */
  void test(String id, Predicate<Evaluation> test) {
    last().expr(id, one -> test.test(one.evaluation()));
  }

  /** Only evaluations that pass a test with the judgements. */
  void test(String id, BiPredicate<Evaluation, Judgements> test) {
    test(last(), variables, id, test);
  }

  private static <T extends WorkingMemoryItem> void test(
      PatternDef<T> last,
      List<Variable<? extends WorkingMemoryItem>> all,
      String id,
      BiPredicate<Evaluation, Judgements> test) {
    switch (all.size()) {
      case 1 -> last.expr(id, one -> test.test(one.evaluation(), in(one)));
      case 2 -> last.expr(id, all.get(0), (one, a) -> test.test(one.evaluation(), in(one, a)));
      case 3 ->
          last.expr(
              id,
              all.get(0),
              all.get(1),
              (one, a, b) -> test.test(one.evaluation(), in(one, a, b)));
      case 4 ->
          last.expr(
              id,
              all.get(0),
              all.get(1),
              all.get(2),
              (one, a, b, c) -> test.test(one.evaluation(), in(one, a, b, c)));
      default -> throw new IllegalStateException("too much awaited by " + id);
    }
  }

  private PatternDef<? extends WorkingMemoryItem> last() {
    return patterns.get(patterns.size() - 1);
  }

  /** The action when all of it is present. */
  interface Consequence {
    /** Runs the action. */
    void accept(Drools drools, Evaluation evaluation, Judgements judgements);
  }

  /** The parts of a rule with this pattern and an action. */
  RuleItemBuilder<?>[] then(Consequence then) {
    List<RuleItemBuilder<?>> items = new ArrayList<>(patterns);
    items.add(execute(then));
    return items.toArray(new RuleItemBuilder<?>[0]);
  }

  private RuleItemBuilder<?> execute(Consequence then) {
    List<Variable<? extends WorkingMemoryItem>> all = variables;
    return switch (all.size()) {
      case 1 -> on(all.get(0)).execute((d, a) -> then.accept(d, a.evaluation(), in(a)));
      case 2 ->
          on(all.get(0), all.get(1)).execute((d, a, b) -> then.accept(d, b.evaluation(), in(a, b)));
      case 3 ->
          on(all.get(0), all.get(1), all.get(2))
              .execute((d, a, b, c) -> then.accept(d, c.evaluation(), in(a, b, c)));
      case 4 ->
          on(all.get(0), all.get(1), all.get(2), all.get(3))
              .execute((d, a, b, c, e) -> then.accept(d, e.evaluation(), in(a, b, c, e)));
      default -> throw new IllegalStateException("too much awaited");
    };
  }

  private static Judgements in(WorkingMemoryItem... there) {
    return name -> {
      for (WorkingMemoryItem one : there) {
        if (one instanceof Judgement judgement && judgement.name().equals(name)) {
          return judgement.truth();
        }
      }
      return DrawTruth.UNKNOWN;
    };
  }
}

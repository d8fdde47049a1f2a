package org.standproud.rules.engine;

import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.execute;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.drools.model.Index;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;

/**
 * The cards as a Drools network. The readings of a set-up go in as one object; judgements are
 * inserted logically, so that they fall with what they stood on; a card that reads judgements joins
 * on them; a card that changes a finding joins on the finding. Every constraint of the network
 * calls a condition object of a card: there is no rule text and nothing is compiled.
 */
final class Network {

  /** More firings than this a card would mean a ring, which the compiler of cards refuses. */
  private static final int FIRINGS_A_CARD = 8;

  private static final Object BUILDING = new Object();

  private final KieBase base;
  private final int maxFirings;

  Network(List<CompiledCard> cards) {
    Map<String, Severity> severities = new HashMap<>();
    cards.forEach(c -> severities.put(c.id(), c.card().severity()));
    ModelImpl model = new ModelImpl();
    for (CompiledCard card : cards) {
      new CardRules(model, card).add(severities);
    }
    maxFirings = FIRINGS_A_CARD * (cards.size() + 1);
    // Parallel builds of the engine are known to disturb each other.
    synchronized (BUILDING) {
      base = KieBaseBuilder.createKieBaseFromModel(model);
    }
  }

  /**
   * What the engine found.
   *
   * @param judgements the judgements
   * @param flagged ids of the cards with a finding
   * @param acted ids of the cards that changed a finding
   */
  record Outcome(Map<String, Truth> judgements, Set<String> flagged, Set<String> acted) {}

  /** Runs one session over the readings. */
  Outcome run(Readings readings) {
    return run(List.of(readings));
  }

  /** Runs one session, each of the readings put in the place of the one before; the last counts. */
  Outcome run(List<Readings> successive) {
    KieSession session = base.newKieSession();
    try {
      FactHandle handle = null;
      for (Readings readings : successive) {
        if (handle == null) {
          handle = session.insert(readings);
        } else {
          session.update(handle, readings);
        }
        if (session.fireAllRules(maxFirings) == maxFirings) {
          throw new IllegalStateException("the cards do not come to rest");
        }
      }
      return outcome(session);
    } finally {
      session.dispose();
    }
  }

  private static Outcome outcome(KieSession session) {
    Map<String, Truth> judgements = new HashMap<>();
    Set<String> flagged = new HashSet<>();
    Set<String> acted = new HashSet<>();
    for (Object object : session.getObjects()) {
      if (object instanceof Judgement judgement) {
        judgements.put(judgement.name(), judgement.truth());
      } else if (object instanceof Flagged finding) {
        flagged.add(finding.card());
      } else if (object instanceof Acted change) {
        acted.add(change.card());
      }
    }
    return new Outcome(judgements, flagged, acted);
  }

  /** The rules of the engine that one card becomes. */
  private static final class CardRules {
    private final ModelImpl model;
    private final CompiledCard card;

    CardRules(ModelImpl model, CompiledCard card) {
      this.model = model;
      this.card = card;
    }

    void add(Map<String, Severity> severities) {
      if (card.card().derives() != null) {
        String judgement = card.card().derives().text();
        for (Truth truth : Truth.values()) {
          addRule(
              "judges " + truth,
              new Judgement(judgement, truth),
              false,
              (r, j) -> card.truth(r, j) == truth);
        }
      } else if (card.card().change() != null) {
        Severity other = severities.getOrDefault(card.card().change().card().text(), Severity.NOTE);
        boolean lowers = card.lowers(other);
        addRule(
            "changes",
            new Acted(card.id()),
            true,
            (r, j) -> lowers ? card.truth(r, j) == Truth.TRUE : card.truth(r, j).mayHold());
      } else {
        addRule("flags", new Flagged(card.id()), true, (r, j) -> card.truth(r, j) != Truth.FALSE);
        if (!card.scope().isEmpty()) {
          addRule(
              "scope is open",
              new Flagged(card.id()),
              false,
              (r, j) -> card.applies(r) == Truth.UNKNOWN && card.truth(r, j) != Truth.FALSE);
        }
      }
    }

    /**
     * One rule: the finding to change if there is one, the judgements read, then the readings with
     * the scope as an index and each condition as a constraint where it can be met early.
     */
    private void addRule(
        String name, Object yields, boolean scoped, BiPredicate<Readings, Judgements> test) {
      List<RuleItemBuilder<?>> items = new ArrayList<>();
      if (yields instanceof Acted && card.card().change() != null) {
        items.add(finding(card.card().change().card().text()));
      }
      List<Variable<Judgement>> joined = new ArrayList<>();
      for (String judgement : card.judgements()) {
        Variable<Judgement> variable = declarationOf(Judgement.class);
        joined.add(variable);
        items.add(
            pattern(variable)
                .expr(
                    "judgement " + judgement,
                    j -> j.name().equals(judgement),
                    alphaIndexedBy(
                        String.class, Index.ConstraintType.EQUAL, 0, Judgement::name, judgement)));
      }
      Variable<Readings> readings = declarationOf(Readings.class);
      PatternDef<Readings> pattern = pattern(readings);
      if (scoped) {
        scope(pattern);
        early(pattern);
      }
      constrain(pattern, card.id() + " " + name, joined, test);
      items.add(pattern);
      items.add(execute(drools -> drools.logicalInsert(yields)));
      model.addRule(rule(card.id() + " " + name).build(items.toArray(new RuleItemBuilder<?>[0])));
    }

    private static PatternDef<Flagged> finding(String other) {
      return pattern(declarationOf(Flagged.class))
          .expr(
              "finding " + other,
              f -> f.card().equals(other),
              alphaIndexedBy(String.class, Index.ConstraintType.EQUAL, 0, Flagged::card, other));
    }

    private void scope(PatternDef<Readings> pattern) {
      for (Condition selector : card.scope()) {
        if (selector instanceof Condition.OneOf one && one.words().size() == 1) {
          String word = one.words().get(0);
          pattern.expr(
              one.toWords(),
              r -> word.equals(one.word(r)),
              alphaIndexedBy(
                  String.class, Index.ConstraintType.EQUAL, one.slot(), one::word, word));
        } else {
          pattern.expr(
              selector.toWords(), r -> selector.evaluate(r, Judgements.NONE) == Truth.TRUE);
        }
      }
    }

    /** Conditions on facts alone cut the rule off before any judgement is joined. */
    private void early(PatternDef<Readings> pattern) {
      for (int i = 0; i < card.when().size(); i++) {
        Condition condition = card.when().get(i);
        List<String> reads = new ArrayList<>();
        condition.judgements(reads::add);
        if (reads.isEmpty()) {
          pattern.expr(
              card.id() + " condition " + i,
              r -> condition.evaluate(r, Judgements.NONE) != Truth.FALSE);
        }
      }
    }

    private static void constrain(
        PatternDef<Readings> pattern,
        String id,
        List<Variable<Judgement>> joined,
        BiPredicate<Readings, Judgements> test) {
      switch (joined.size()) {
        case 0 -> pattern.expr(id, r -> test.test(r, Judgements.NONE));
        case 1 -> pattern.expr(id, joined.get(0), (r, a) -> test.test(r, of(a)));
        case 2 ->
            pattern.expr(id, joined.get(0), joined.get(1), (r, a, b) -> test.test(r, of(a, b)));
        case 3 ->
            pattern.expr(
                id,
                joined.get(0),
                joined.get(1),
                joined.get(2),
                (r, a, b, c) -> test.test(r, of(a, b, c)));
        default -> throw new IllegalStateException("too many judgements in " + id);
      }
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
}

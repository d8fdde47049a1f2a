package org.standproud.rules.engine;

import static org.drools.model.DSL.declarationOf;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.drools.model.Drools;
import org.drools.model.Index;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.impl.ModelImpl;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Truth;

/**
 * The rules of the engine that one card becomes: one, or one for each word of its scope by which
 * the network keeps it away from other set-ups, and one for when that word is not known.
 */
final class CardRules {

  private final ModelImpl model;
  private final CompiledCard card;
  private final int place;
  private final Depth depth;

  /**
   * For one card.
   *
   * @param model takes the rules
   * @param card the card
   * @param place its place in the rule base
   * @param depth how judgements hang on each other
   */
  CardRules(ModelImpl model, CompiledCard card, int place, Depth depth) {
    this.model = model;
    this.card = card;
    this.place = place;
    this.depth = depth;
  }

  /**
   * Adds them.
   *
   * @param severities of every card as written
   * @param changed the cards of which another may change the finding
   */
  void add(Map<String, Severity> severities, Set<String> changed) {
    Written derives = card.card().derives();
    if (derives != null) {
      derive(derives.text());
    } else if (card.card().change() != null) {
      String other = card.card().change().card().text();
      boolean lowers = card.lowers(severities.getOrDefault(other, Severity.NOTE));
      addScoped(
          finding(other),
          -1,
          lowers ? t -> t == Truth.TRUE : Truth::mayHold,
          (drools, hearing) -> hearing.act(place));
    } else {
      Flagged flagged = changed.contains(card.id()) ? new Flagged(card.id()) : null;
      addScoped(
          null,
          0,
          t -> t != Truth.FALSE,
          (drools, hearing) -> {
            hearing.flag(place);
            if (flagged != null) {
              drools.logicalInsert(flagged);
            }
          });
    }
  }

  private static PatternDef<Flagged> finding(String other) {
    return pattern(declarationOf(Flagged.class))
        .expr(
            "finding " + other,
            f -> f.card().equals(other),
            alphaIndexedBy(String.class, Index.ConstraintType.EQUAL, 0, Flagged::card, other));
  }

  /** A judgement is always derived: that it does not hold is a judgement too. */
  private void derive(String judgement) {
    Joined joined = new Joined(card.judgements());
    List<RuleItemBuilder<?>> items = new ArrayList<>(joined.judgements());
    items.add(joined.hearing());
    items.add(
        joined.execute(
            (drools, hearing, judgements) -> {
              Truth early = hearing.early(place);
              boolean done = early == Truth.FALSE || !card.judges();
              Truth truth = done ? early : hearing.whole(place, judgements);
              hearing.judge(judgement, truth);
              drools.logicalInsert(new Judgement(judgement, truth));
            }));
    // What is derived comes before what reads it, that which reads nothing first of all.
    addRule(card.id(), Integer.MAX_VALUE - depth.of(card), items);
  }

  private void addScoped(
      @Nullable PatternDef<Flagged> first,
      int salience,
      Predicate<Truth> wanted,
      BiConsumer<Drools, Hearing> then) {
    Condition.OneOf key = key();
    if (key == null) {
      addRule("", pattern -> {}, first, salience, wanted, then);
      return;
    }
    for (String word : key.words()) {
      addRule(" " + word, pattern -> only(pattern, key, word), first, salience, wanted, then);
    }
    addRule(" unknown", pattern -> only(pattern, key, ""), first, salience, wanted, then);
  }

  /** The selector by whose words the network tells set-ups apart, if there is one. */
  private Condition.@Nullable OneOf key() {
    return card.scope().stream()
        .filter(Condition.OneOf.class::isInstance)
        .map(Condition.OneOf.class::cast)
        .findFirst()
        .orElse(null);
  }

  /** Lets only hearings through whose fact is that word, or is missing if the word is empty. */
  private static void only(PatternDef<Hearing> pattern, Condition.OneOf key, String word) {
    pattern.expr(
        key.fact().name() + " is " + (word.isEmpty() ? "not known" : word),
        h -> word.equals(h.word(key)),
        alphaIndexedBy(
            String.class, Index.ConstraintType.EQUAL, key.slot(), h -> h.word(key), word));
  }

  private void addRule(
      String name,
      Consumer<PatternDef<Hearing>> scope,
      @Nullable PatternDef<Flagged> first,
      int salience,
      Predicate<Truth> wanted,
      BiConsumer<Drools, Hearing> then) {
    Joined joined = new Joined(card.judgements());
    List<RuleItemBuilder<?>> items = new ArrayList<>();
    if (first != null) {
      items.add(first);
    }
    items.addAll(joined.judgements());
    PatternDef<Hearing> hearing = joined.hearing();
    scope.accept(hearing);
    // What hangs on facts alone cuts the rule off before any judgement is joined.
    hearing.expr(
        card.id() + " on facts",
        h -> card.judges() ? h.early(place) != Truth.FALSE : wanted.test(h.early(place)));
    if (card.judges()) {
      joined.constrain(
          hearing, card.id(), (h, judgements) -> wanted.test(h.whole(place, judgements)));
    }
    items.add(hearing);
    items.add(joined.execute((drools, heard, judgements) -> then.accept(drools, heard)));
    addRule(card.id() + name, salience, items);
  }

  private void addRule(String name, int salience, List<RuleItemBuilder<?>> items) {
    model.addRule(
        rule(name)
            .attribute(Rule.Attribute.SALIENCE, salience)
            .build(items.toArray(new RuleItemBuilder<?>[0])));
  }
}

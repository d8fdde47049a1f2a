package org.standproud.rules.engine;

import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.drools.model.Drools;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.impl.ModelImpl;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;

/**
 * The engine rules of one card: one, or one for each word of the selector by which the network
 * excludes other set-ups, plus one for an unknown word.
 */
final class CardRules {

  private final ModelImpl model;
  private final CompiledCard card;
  private final int place;
  private final Depth depth;

  /**
   * Creates the rules of one card.
   *
   * @param model receives the rules
   * @param card the card
   * @param place its index in the rule base
   * @param depth the depth of judgements
   */
  CardRules(ModelImpl model, CompiledCard card, int place, Depth depth) {
    this.model = model;
    this.card = card;
    this.place = place;
    this.depth = depth;
  }

  /**
   * Adds the rules.
   *
   * @param byId every card
   * @param levels the levels at which cards fire
   * @param changed the cards whose finding another may change
   */
  void add(Map<String, CompiledCard> byId, Levels levels, Set<String> changed) {
    Written derives = card.card().derives();
    if (derives != null) {
      derive(derives.text());
    } else if (card.card().change() != null) {
      SeverityChange change = card.card().change();
      String other = change.card().text();
      CompiledCard changing = byId.get(other);
      boolean lowers = changing != null && card.lowers(changing.card().severity());
      double level = changing != null && lowers ? changing.level(levels) : levels.of(change.to());
      addRule(
          "",
          new RulePattern(card.judgements(), other),
          -1,
          lowers ? t -> t.holdsBut(level) : t -> t.exceeds(level),
          (drools, evaluation) -> evaluation.act(place));
    } else {
      flag(changed.contains(card.id()));
    }
  }

  /** A judgement is always derived, also when it does not hold. */
  private void derive(String judgement) {
    RulePattern awaited = new RulePattern(card.judgements(), null);
    RuleItemBuilder<?>[] items =
        awaited.then(
            (drools, evaluation, judgements) -> {
              DrawTruth early = evaluation.early(place);
              boolean done = early.isFalse() || !card.judges();
              DrawTruth truth = done ? early : evaluation.whole(place, judgements);
              evaluation.judge(judgement, truth);
              drools.logicalInsert(new Judgement(evaluation, judgement, truth));
            });
    // Producers fire before readers, beginning with cards that read no judgement.
    int salience = Integer.MAX_VALUE - depth.of(card);
    model.addRule(rule(card.id()).attribute(Rule.Attribute.SALIENCE, salience).build(items));
  }

  private void flag(boolean changed) {
    BiConsumer<Drools, Evaluation> then =
        (drools, evaluation) -> {
          evaluation.flag(place);
          if (changed) {
            drools.logicalInsert(new Flagged(evaluation, card.id()));
          }
        };
    Condition.OneOf key = key();
    if (key == null) {
      addRule("", new RulePattern(card.judgements(), null), 0, t -> !t.isFalse(), then);
      return;
    }
    List<String> words = new ArrayList<>(key.words());
    words.add("");
    for (String word : words) {
      RulePattern awaited = new RulePattern(List.of(), null);
      awaited.only(key, word);
      addRule(", " + word, awaited, 0, t -> !t.isFalse(), then);
    }
  }

  /**
   * The selector by which the network distinguishes set-ups, if there is one. A card that reads
   * judgements has none: each of its rules would have to be joined with them.
   */
  private Condition.@Nullable OneOf key() {
    if (card.judges()) {
      return null;
    }
    return card.scope().stream()
        .filter(Condition.OneOf.class::isInstance)
        .map(Condition.OneOf.class::cast)
        .findFirst()
        .orElse(null);
  }

  private void addRule(
      String name,
      RulePattern awaited,
      int salience,
      Predicate<DrawTruth> wanted,
      BiConsumer<Drools, Evaluation> then) {
    if (card.judges()) {
      // Conditions on facts alone exclude the card before judgements are joined.
      awaited.test(card.id() + " on facts", h -> !h.early(place).isFalse());
      awaited.test(card.id(), (h, judgements) -> wanted.test(h.whole(place, judgements)));
    } else {
      awaited.test(card.id(), h -> wanted.test(h.early(place)));
    }
    model.addRule(
        rule(card.id() + name)
            .attribute(Rule.Attribute.SALIENCE, salience)
            .build(
                awaited.then((drools, evaluation, judgements) -> then.accept(drools, evaluation))));
  }
}

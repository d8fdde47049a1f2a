package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;

/** A card with compiled conditions; immutable. */
public final class CompiledCard {

  private final Card card;
  private final List<Condition> scope;
  private final List<Condition> when;
  private final Map<String, Term.Limit> limits;
  private final List<String> placeholders;
  private final Condition.Joined scopeAsOne;
  private final Condition.Joined whole;
  private final Condition.Joined onFacts;
  private final Condition.Joined onJudgements;
  private final List<PreparedCondition> prepared = new ArrayList<>();

  /**
   * Creates a compiled card.
   *
   * @param card the card
   * @param scope one condition for each selector of appliesTo
   * @param when the conditions in the order written
   * @param limits its limits by name
   * @param placeholders the names in its message, in order
   */
  CompiledCard(
      Card card,
      List<Condition> scope,
      List<Condition> when,
      Map<String, Term.Limit> limits,
      List<String> placeholders) {
    this.card = card;
    this.scope = List.copyOf(scope);
    this.when = List.copyOf(when);
    this.limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    this.placeholders = List.copyOf(placeholders);
    List<Condition> all = new ArrayList<>(scope);
    all.addAll(when);
    scopeAsOne = Condition.all(scope);
    whole = Condition.all(all);
    prepare();
    onFacts = joined(false);
    onJudgements = joined(true);
  }

  private Condition.Joined joined(boolean judging) {
    return Condition.all(
        preparedWhen().stream()
            .filter(p -> p.judges() == judging)
            .map(PreparedCondition::condition)
            .toList());
  }

  private void prepare() {
    List<List<Written>> words = List.copyOf(card.appliesTo().values());
    for (int i = 0; i < Math.min(scope.size(), words.size()); i++) {
      Written at = words.get(i).get(0);
      Written text = new Written(scope.get(i).toWords(), at.line(), at.column());
      prepared.add(PreparedCondition.of(text, scope.get(i)));
    }
    for (int i = 0; i < Math.min(when.size(), card.when().size()); i++) {
      prepared.add(PreparedCondition.of(card.when().get(i), when.get(i)));
    }
  }

  /** The card as written. */
  public Card card() {
    return card;
  }

  /** The id of the card. */
  public String id() {
    return card.id().text();
  }

  /** One condition for each selector of appliesTo. */
  public List<Condition> scope() {
    return scope;
  }

  /** The conditions in the order written. */
  public List<Condition> when() {
    return when;
  }

  /** Its limits by name. */
  public Map<String, Term.Limit> limits() {
    return limits;
  }

  /** The names in its message, in order. */
  public List<String> placeholders() {
    return placeholders;
  }

  /** Scope, then conditions. */
  List<PreparedCondition> prepared() {
    return prepared;
  }

  List<PreparedCondition> preparedWhen() {
    return prepared.subList(scope.size(), prepared.size());
  }

  /** The judgements it reads, in alphabetical order. */
  public List<String> judgements() {
    TreeSet<String> names = new TreeSet<>();
    when.forEach(c -> c.judgements(names::add));
    return List.copyOf(names);
  }

  /** The facts its scope and its conditions read, each once. */
  public List<Fact> facts() {
    return PreparedCondition.of(card.id(), whole).facts();
  }

  /** The draws in which the card applies to this set-up. */
  DrawTruth applies(Readings readings) {
    return scopeAsOne.evaluate(readings, Judgements.NONE);
  }

  /** Its conditions on facts alone. */
  Condition onFacts() {
    return onFacts;
  }

  /** Its conditions that read judgements. */
  Condition onJudgements() {
    return onJudgements;
  }

  /** Whether it reads judgements. */
  boolean judges() {
    return !onJudgements.conditions().isEmpty();
  }

  /** Scope and conditions as one condition. */
  Condition whole() {
    return whole;
  }

  /** Scope and conditions, in that order. */
  List<Condition> all() {
    return whole.conditions();
  }

  /**
   * The share of the draws above which it fires at its written severity; a card without a finding
   * of its own fires as soon as it holds in any draw.
   */
  double level(Levels levels) {
    Double own = card.speaksAbove();
    return !card.flags() ? 0 : own != null ? own : levels.of(card.severity());
  }

  /** Whether it lowers the severity of the other card's finding. */
  boolean lowers(Severity severityOfOther) {
    return card.change() != null && card.change().to().compareTo(severityOfOther) < 0;
  }
}

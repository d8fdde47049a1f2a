package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;
import org.standproud.rules.language.Truth;

/**
 * A card with its conditions ready to be evaluated.
 *
 * @param card the card
 * @param scope one condition for each selector of appliesTo
 * @param when the conditions in the order written
 * @param limits its limits by name
 * @param placeholders the names in its message, in order
 */
public record CompiledCard(
    Card card,
    List<Condition> scope,
    List<Condition> when,
    Map<String, Term.Limit> limits,
    List<String> placeholders) {

  /** Copies the collections. */
  public CompiledCard {
    scope = List.copyOf(scope);
    when = List.copyOf(when);
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    placeholders = List.copyOf(placeholders);
  }

  /** The id of the card. */
  public String id() {
    return card.id().text();
  }

  /** The judgements it reads, in alphabetical order. */
  List<String> judgements() {
    TreeSet<String> names = new TreeSet<>();
    when.forEach(c -> c.judgements(names::add));
    return List.copyOf(names);
  }

  /** Whether the card is about this set-up. */
  Truth applies(Readings readings) {
    return new Condition.All(scope).evaluate(readings, Judgements.NONE);
  }

  /** Scope and conditions together. */
  Truth truth(Readings readings, Judgements judgements) {
    return whole().evaluate(readings, judgements);
  }

  /** Scope and conditions as one condition. */
  Condition whole() {
    List<Condition> all = new ArrayList<>(scope);
    all.addAll(when);
    return new Condition.All(all);
  }

  /** The facts its conditions and its scope read. */
  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    whole().facts(facts::add);
    return facts.stream().distinct().toList();
  }

  /** Whether it lowers the severity of the other card's finding. */
  boolean lowers(Severity severityOfOther) {
    return card.change() != null && card.change().to().compareTo(severityOfOther) < 0;
  }
}

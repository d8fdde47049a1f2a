package org.standproud.rules.language;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;

/** The facts of conditions, each with its index in {@link Readings}; immutable. */
public final class FactTable {

  private final List<Fact> facts;
  private final Map<String, Integer> slots = new LinkedHashMap<>();

  /**
   * Creates the table.
   *
   * @param vocabulary the facts
   * @throws IllegalArgumentException if two facts have one name
   */
  public FactTable(List<Fact> vocabulary) {
    facts = List.copyOf(vocabulary);
    for (Fact fact : facts) {
      if (slots.put(fact.name(), slots.size()) != null) {
        throw new IllegalArgumentException("two facts are named " + fact.name());
      }
    }
  }

  /** All facts in the order of the vocabulary. */
  public List<Fact> facts() {
    return facts;
  }

  /** The fact of that name, if there is one. */
  public @Nullable Fact find(String name) {
    Integer slot = slots.get(name);
    return slot == null ? null : facts.get(slot);
  }

  /** The condition that a word fact is one of some words. */
  public Condition oneOf(Fact fact, List<String> words) {
    return new Condition.OneOf(fact, slot(fact), words);
  }

  /** The condition that a yes-or-no fact has a value. */
  public Condition yes(Fact fact, boolean wanted) {
    Condition yes = new Condition.Yes(fact, slot(fact));
    return wanted ? yes : new Condition.Not(yes);
  }

  /**
   * The index of the fact.
   *
   * @throws IllegalArgumentException if the table has no such fact
   */
  int slot(Fact fact) {
    Integer slot = slots.get(fact.name());
    if (slot == null) {
      throw new IllegalArgumentException("no fact is named " + fact.name());
    }
    return slot;
  }
}

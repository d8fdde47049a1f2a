package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.Condition;

/**
 * A condition with the parts of its trace that are the same for every set-up.
 *
 * @param text as written
 * @param condition the condition
 * @param words in words
 * @param facts the facts it reads, each once
 * @param judges whether it reads judgements
 */
record PreparedCondition(
    Written text, Condition condition, String words, List<Fact> facts, boolean judges) {

  static PreparedCondition of(Written text, Condition condition) {
    List<Fact> facts = new ArrayList<>();
    condition.facts(facts::add);
    List<String> judgements = new ArrayList<>();
    condition.judgements(judgements::add);
    return new PreparedCondition(
        text,
        condition,
        condition.toWords(),
        facts.stream().distinct().toList(),
        !judgements.isEmpty());
  }

  /** The facts it depends on, including those behind its judgements. */
  List<Fact> reads(Map<String, List<Fact>> behind) {
    Set<Fact> all = new LinkedHashSet<>(facts);
    condition.judgements(name -> all.addAll(behind.getOrDefault(name, List.of())));
    return List.copyOf(all);
  }
}

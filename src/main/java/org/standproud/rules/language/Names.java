package org.standproud.rules.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;

/** The meaning of the names in a condition. */
record Names(FactTable facts, Set<String> judgements, Map<String, Term.Limit> limits) {

  List<String> all() {
    List<String> names = new ArrayList<>();
    facts.facts().forEach(f -> names.add(f.name()));
    names.addAll(judgements);
    names.addAll(limits.keySet());
    return names;
  }

  /** The first fact that allows this word. */
  @Nullable Fact factAllowing(String word) {
    for (Fact fact : facts.facts()) {
      if (fact.type() instanceof Fact.Word allowed && allowed.allowed().contains(word)) {
        return fact;
      }
    }
    return null;
  }

  /** A working condition with these names, using a limit of the card if possible. */
  String example() {
    String plain = "";
    for (Fact fact : facts.facts()) {
      if (fact.type() instanceof Fact.Number number) {
        plain = plain.isEmpty() ? fact.name() + " > 0" : plain;
        for (Term.Limit limit : limits.values()) {
          if (limit.quantity().dimension() == number.dimension()) {
            return fact.name() + " > " + limit.name();
          }
        }
      }
    }
    return plain;
  }
}

package org.standproud.mechanics.evidence;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All facts of one set-up, in the order of the vocabulary; immutable. */
public final class Evidence {

  private final Map<String, EvidenceValue> byName;

  /**
   * Keeps the values in the order given.
   *
   * @param values one value a fact
   * @throws IllegalArgumentException if two values are of the same fact
   */
  public Evidence(Collection<EvidenceValue> values) {
    Map<String, EvidenceValue> map = new LinkedHashMap<>();
    for (EvidenceValue value : values) {
      if (map.put(value.fact().name(), value) != null) {
        throw new IllegalArgumentException("two values of the fact " + value.fact().name());
      }
    }
    this.byName = map;
  }

  /** All values, in order. */
  public List<EvidenceValue> values() {
    return List.copyOf(byName.values());
  }

  /**
   * The value of a fact; missing if the evidence does not hold it.
   *
   * @param fact the fact asked for
   */
  public Value get(Fact fact) {
    EvidenceValue value = byName.get(fact.name());
    return value == null ? new Value.Missing(fact.name()) : value.value();
  }

  /**
   * The value of a fact with what it stood on.
   *
   * @param fact the fact asked for
   */
  public EvidenceValue detail(Fact fact) {
    EvidenceValue value = byName.get(fact.name());
    return value == null
        ? new EvidenceValue(fact, new Value.Missing(fact.name()), List.of(), List.of())
        : value;
  }

  /** This evidence with some values put in the place of others of the same facts. */
  public Evidence with(Collection<EvidenceValue> replacements) {
    Map<String, EvidenceValue> map = new LinkedHashMap<>(byName);
    replacements.forEach(r -> map.put(r.fact().name(), r));
    return new Evidence(map.values());
  }
}

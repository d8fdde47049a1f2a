package org.standproud.rules.language;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;

/** The values of one set-up in an array indexed by {@link FactTable}; immutable. */
public final class Readings {

  private final FactTable table;
  private final Value[] values;

  /** The estimate of each number, computed when first read; two threads write the same. */
  private final @Nullable Estimate[] estimates;

  /** One value that overrides the array, which would be expensive to copy. */
  private final int changedSlot;

  private final @Nullable Value changed;

  /** Whether every other value is read without its band; few of them are ever read. */
  private final boolean shrunk;

  /**
   * Creates readings; facts that the evidence does not contain are missing.
   *
   * @param table the vocabulary
   * @param evidence the values of one set-up
   * @throws IllegalArgumentException if a value is not of the type of its fact
   */
  public Readings(FactTable table, Evidence evidence) {
    this.table = table;
    changedSlot = -1;
    changed = null;
    shrunk = false;
    List<Fact> facts = table.facts();
    values = new Value[facts.size()];
    estimates = new Estimate[values.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = typed(facts.get(i), evidence.get(facts.get(i)));
    }
  }

  private Readings(
      FactTable table,
      Value[] values,
      @Nullable Estimate[] estimates,
      int changedSlot,
      @Nullable Value changed,
      boolean shrunk) {
    this.table = table;
    this.values = values;
    this.estimates = estimates;
    this.changedSlot = changedSlot;
    this.changed = changed;
    this.shrunk = shrunk;
  }

  private static Value typed(Fact fact, Value value) {
    boolean fits =
        value instanceof Value.Missing
            || (fact.type() instanceof Fact.Number && value instanceof Value.Quantity)
            || (fact.type() instanceof Fact.Numbers && value instanceof Value.Quantities)
            || (fact.type() instanceof Fact.Word && value instanceof Value.Text)
            || (fact.type() instanceof Fact.YesNo && value instanceof Value.Truth);
    if (!fits) {
      throw new IllegalArgumentException("the value of " + fact.name() + " is of another type");
    }
    return value;
  }

  /** The value of a fact of the table. */
  public Value value(Fact fact) {
    return at(table.slot(fact));
  }

  /** The word of a fact, or null if it is missing or not a word. */
  public @Nullable String word(Fact fact) {
    return value(fact) instanceof Value.Text text ? text.word() : null;
  }

  /**
   * The fact with this name.
   *
   * @throws IllegalArgumentException if the vocabulary has none
   */
  public Fact fact(String name) {
    Fact fact = table.find(name);
    if (fact == null) {
      throw new IllegalArgumentException("no fact is named " + name);
    }
    return fact;
  }

  Value at(int slot) {
    if (changed != null && slot == changedSlot) {
      return changed;
    }
    return shrunk ? likely(values[slot]) : values[slot];
  }

  /** The estimate of the number at an index. */
  Estimate estimate(int slot, Fact fact) {
    if (changed != null && slot == changedSlot) {
      return estimate(changed, fact);
    }
    Estimate known = estimates[slot];
    if (known == null) {
      known = estimate(at(slot), fact);
      estimates[slot] = known;
    }
    return known;
  }

  private static Estimate estimate(Value value, Fact fact) {
    if (value instanceof Value.Quantity q) {
      return Estimate.Known.of(q.sample());
    }
    return value instanceof Value.Missing missing && missing.letsGo()
        ? Estimate.Known.NOWHERE
        : new Estimate.Unknown(fact.name() + " is not known");
  }

  /** A copy with one number replaced. */
  public Readings with(Fact fact, Band band) {
    return with(table.slot(fact), band);
  }

  private Readings with(int slot, Band band) {
    Value value = new Value.Quantity(band);
    return changed == null || slot == changedSlot
        ? new Readings(table, values, estimates, slot, value, shrunk)
        : new Readings(table, all(), new Estimate[values.length], slot, value, false);
  }

  /**
   * For each number of a list, a copy with that number in place of the list; empty if the list is
   * missing.
   */
  List<Readings> each(int slot) {
    if (!(at(slot) instanceof Value.Quantities list)) {
      return List.of();
    }
    return list.bands().stream().map(band -> with(slot, band)).toList();
  }

  /** A copy with every number, word or answer at its likely value in every draw. */
  public Readings atLikely() {
    Value one = changed == null ? null : likely(changed);
    return new Readings(table, values, new Estimate[values.length], changedSlot, one, true);
  }

  private static Value likely(Value value) {
    if (value instanceof Value.Quantity q && !q.band().isExact()) {
      return new Value.Quantity(Band.exactly(q.band().likely()));
    }
    if (value instanceof Value.Text text && !text.draws().isEmpty()) {
      return new Value.Text(text.word());
    }
    if (value instanceof Value.Truth truth && truth.draws().draws() > 1) {
      return new Value.Truth(truth.yes());
    }
    return value instanceof Value.Quantities list
        ? new Value.Quantities(list.bands().stream().map(b -> Band.exactly(b.likely())).toList())
        : value;
  }

  private Value[] all() {
    Value[] all = new Value[values.length];
    Arrays.setAll(all, this::at);
    return all;
  }
}

package org.standproud.rules.beside;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.Truth;
import org.standproud.setup.Band;

/**
 * One set-up laid out as a person would for hand-written conditions: arrays, by place of a fact.
 */
public final class Case {
  /** Least, likely and greatest value of each number, in SI. */
  public final double[] low;

  /** Likely values. */
  public final double[] likely;

  /** Greatest values. */
  public final double[] high;

  /** Whether the value is known. */
  public final boolean[] known;

  /** Words of facts that are words. */
  public final @Nullable String[] word;

  /** Answers of facts that are a yes or a no. */
  public final boolean[] yes;

  /** Lists of numbers. */
  public final @Nullable List<Band>[] list;

  /** Judgements found so far, by their place. */
  public final Truth[] judged;

  private @Nullable Case shrunk;

  /** Lays out the evidence. */
  @SuppressWarnings({"unchecked", "rawtypes"})
  public Case(List<Fact> facts, Evidence evidence, int judgements) {
    int n = facts.size();
    low = new double[n];
    likely = new double[n];
    high = new double[n];
    known = new boolean[n];
    word = new String[n];
    yes = new boolean[n];
    list = new List[n];
    judged = new Truth[judgements];
    for (int i = 0; i < n; i++) {
      Value value = evidence.get(facts.get(i));
      known[i] = !(value instanceof Value.Missing) && !(value instanceof Value.Quantities);
      if (value instanceof Value.Quantity q) {
        put(i, q.band());
      } else if (value instanceof Value.Text text) {
        word[i] = text.word();
      } else if (value instanceof Value.Truth truth) {
        yes[i] = truth.yes();
      } else if (value instanceof Value.Quantities many) {
        list[i] = many.bands();
      }
    }
  }

  private Case(Case of) {
    low = of.likely;
    likely = of.likely;
    high = of.likely;
    known = of.known;
    word = of.word;
    yes = of.yes;
    list = of.list;
    judged = of.judged;
    shrunk = this;
  }

  /** The same with every number at its likely value. */
  public Case atLikely() {
    if (shrunk == null) {
      shrunk = new Case(this);
    }
    return shrunk;
  }

  /** Puts a number in the place of a fact; the likely value last, for it may be the only one. */
  public void put(int place, Band band) {
    low[place] = band.low();
    high[place] = band.high();
    likely[place] = band.likely();
    known[place] = true;
  }

  /** Takes it out again. */
  public void clear(int place) {
    known[place] = false;
  }
}

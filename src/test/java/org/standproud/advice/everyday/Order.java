package org.standproud.advice.everyday;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;

/**
 * An order that a practitioner of the trade puts set-ups in, tried on a grid of everyday set-ups.
 *
 * @param id short name
 * @param claim what is better than what
 * @param pairs the set-ups compared, where one thing is changed and all else is the same
 * @param tries compares the set-ups of the grid
 */
record Order(String id, String claim, List<Pair> pairs, Function<Trials, List<Outcome>> tries) {

  /** An order in which one thing is changed and all else is the same. */
  static Order of(String id, String claim, Relation relation, List<Pair> pairs) {
    return new Order(
        id,
        claim,
        pairs,
        trials -> pairs.stream().map(pair -> tried(pair, relation, trials)).toList());
  }

  /** What has to hold of a pair. */
  enum Relation {
    /** The first scores strictly higher. */
    BETTER,
    /** The first gets no more severe verdict than the second. */
    NO_GRAVER
  }

  /**
   * Two set-ups that differ in one thing.
   *
   * @param label what they have in common
   * @param better the one a practitioner prefers
   * @param worse the other
   */
  record Pair(String label, EverydaySetup better, EverydaySetup worse) {

    /** A pair of one set-up with the fields of each side laid over it. */
    static Pair of(EverydaySetup base, Map<String, String> better, Map<String, String> worse) {
      return new Pair(base.get("id"), with(base, better), with(base, worse));
    }

    private static EverydaySetup with(EverydaySetup base, Map<String, String> fields) {
      Map<String, String> all = new TreeMap<>(base.fields());
      all.putAll(fields);
      return new EverydaySetup(all);
    }
  }

  /**
   * What came of one pair.
   *
   * @param label what the two have in common
   * @param better score of the first, 0 to 100, not rounded
   * @param worse score of the second
   * @param betterVerdict verdict on the first
   * @param worseVerdict verdict on the second
   * @param holds whether the relation holds
   */
  record Outcome(
      String label,
      double better,
      double worse,
      String betterVerdict,
      String worseVerdict,
      boolean holds) {

    String row() {
      return String.format(
          Locale.ROOT,
          "| %s | %.1f | %.1f | %s | %s | %s |",
          label,
          better,
          worse,
          betterVerdict,
          worseVerdict,
          holds ? "" : "**the other way**");
    }
  }

  @Override
  public String toString() {
    return id;
  }

  private static Outcome tried(Pair pair, Relation relation, Trials trials) {
    Judged better = trials.of(pair.better().setup());
    Judged worse = trials.of(pair.worse().setup());
    boolean holds =
        switch (relation) {
          case BETTER -> better.left() > worse.left();
          case NO_GRAVER -> better.verdict().compareTo(worse.verdict()) <= 0;
        };
    return new Outcome(
        pair.label(),
        100 * better.left(),
        100 * worse.left(),
        better.verdict().words(),
        worse.verdict().words(),
        holds);
  }
}

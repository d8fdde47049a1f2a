package org.standproud.advice.remedy;

import java.util.Comparator;
import java.util.List;
import org.standproud.advice.Verdict;
import org.standproud.advice.trial.Judged;
import org.standproud.advice.trial.Trials;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * What would put a set-up right; everything in it was judged again by the same cards.
 *
 * @param verdict what to do with the set-up as it is
 * @param score its score
 * @param ways sets of one to three changes that clear every stop, or every caution where there is
 *     no stop, best first; none can lose a change
 * @param byCard for each stop and caution, what clears it alone
 * @param nearest where there is no way: the single changes that come nearest
 * @param conclusion what comes of it, in one sentence
 * @param judged how many set-ups were judged
 */
public record Remedies(
    String verdict,
    int score,
    List<Remedy> ways,
    List<CardRemedies> byCard,
    List<Remedy> nearest,
    String conclusion,
    int judged) {

  /** Copies the lists. */
  public Remedies {
    ways = List.copyOf(ways);
    byCard = List.copyOf(byCard);
    nearest = List.copyOf(nearest);
  }

  /**
   * The remedies for a set-up.
   *
   * @param setup the set-up
   * @param ruleBase the cards
   * @param shop the cutters there are
   */
  public static Remedies of(Setup setup, RuleBase ruleBase, Catalogue shop) {
    return of(setup, new Trials(ruleBase), shop);
  }

  /**
   * The same, with trials that may already know some set-ups.
   *
   * @param setup the set-up
   * @param trials judged set-ups
   * @param shop the cutters there are
   */
  public static Remedies of(Setup setup, Trials trials, Catalogue shop) {
    RemedySearch search = new RemedySearch(setup, trials, shop);
    RemedyWriter writer = new RemedyWriter(setup, search.base());
    List<Remedy> ways = told(search.ways(), writer);
    List<CardRemedies> byCard =
        search.singles().entrySet().stream()
            .map(
                e ->
                    new CardRemedies(
                        e.getKey().id(),
                        e.getKey().card().title(),
                        e.getKey().severity().words(),
                        told(e.getValue(), writer)))
            .toList();
    Judged base = search.base();
    boolean right = base.verdict() == Verdict.RUN || base.ids().isEmpty();
    List<Remedy> nearest =
        ways.isEmpty() && !right ? told(search.nearest(), writer) : List.<Remedy>of();
    return new Remedies(
        base.verdict().words(),
        base.score(),
        ways,
        byCard,
        nearest,
        conclusion(base, ways),
        trials.count());
  }

  private static List<Remedy> told(List<Proved> proved, RemedyWriter writer) {
    return proved.stream()
        .sorted(
            Comparator.comparing((Proved p) -> p.judged().verdict())
                .thenComparing(p -> writer.cost(p).added())
                .thenComparing(p -> -p.judged().left()))
        .map(writer::remedy)
        .toList();
  }

  private static String conclusion(Judged base, List<Remedy> ways) {
    String what = base.isStopped() ? "stop" : "caution";
    if (base.stops().isEmpty() && base.cautions().isEmpty()) {
      return "Nothing has to be changed.";
    }
    if (ways.isEmpty()) {
      return "No change tried, up to three together, clears every "
          + what
          + (base.isStopped() ? ": hold it another way." : ".");
    }
    int changes = ways.get(0).kinds().size();
    return changes == 1
        ? "One change clears every " + what + "."
        : changes + " changes together clear every " + what + "; none of them does so alone.";
  }
}

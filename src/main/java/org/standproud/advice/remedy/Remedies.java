package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * How to fix a set-up; every change was judged again by the same cards.
 *
 * @param verdict verdict of the set-up as it is
 * @param score its score
 * @param ways sets of one to three changes that clear every stop, or every caution if there is no
 *     stop, best first; no change in a set is superfluous
 * @param alsoWorthDoing quick changes that clear a caution on top of the first way
 * @param byCard for each stop and caution, what clears it alone
 * @param nearest if there is no way, the single changes that come nearest
 * @param conclusion the conclusion, in one sentence
 * @param judged how many set-ups were judged
 */
public record Remedies(
    Verdict verdict,
    int score,
    List<Remedy> ways,
    List<Remedy> alsoWorthDoing,
    List<CardRemedies> byCard,
    List<Remedy> nearest,
    String conclusion,
    int judged) {

  /** Copies the lists. */
  public Remedies {
    ways = List.copyOf(ways);
    alsoWorthDoing = List.copyOf(alsoWorthDoing);
    byCard = List.copyOf(byCard);
    nearest = List.copyOf(nearest);
  }

  /** Whether it has no stop, as it is or after one of the ways. */
  public boolean viseHolds() {
    return !ways.isEmpty() || verdict != Verdict.DO_NOT_RUN && verdict != Verdict.NOT_JUDGED;
  }

  /**
   * The remedies for a set-up.
   *
   * @param setup the set-up
   * @param ruleBase the rule base
   * @param shop the shop's cutters
   */
  public static Remedies of(Setup setup, RuleBase ruleBase, Catalogue shop) {
    return of(setup, new Trials(ruleBase), shop);
  }

  /**
   * The same, with trials that may already have judged some set-ups.
   *
   * @param setup the set-up
   * @param trials judged set-ups
   * @param shop the shop's cutters
   */
  public static Remedies of(Setup setup, Trials trials, Catalogue shop) {
    RemedySearch search = new RemedySearch(setup, trials, shop);
    Judged base = search.base();
    RemedyWriter writer = new RemedyWriter(setup, base, trials.ruleBase());
    List<ProvenChange> ways = worthListing(search.ways(), writer);
    List<CardRemedies> byCard =
        search.singles().entrySet().stream()
            .map(e -> byCard(e.getKey(), e.getValue(), trials.ruleBase(), writer))
            .toList();
    List<ProvenChange> nearest = ways.isEmpty() ? search.nearest() : List.<ProvenChange>of();
    return new Remedies(
        base.verdict(),
        base.score(),
        ways.stream().map(writer::remedy).toList(),
        ways.isEmpty() ? List.of() : alsoWorthDoing(ways.get(0), trials, shop),
        byCard,
        nearest.stream().map(writer::remedy).toList(),
        conclusion(setup, base, ways),
        trials.count());
  }

  private static CardRemedies byCard(
      CardKind finding, List<ProvenChange> cleared, RuleBase ruleBase, RemedyWriter writer) {
    Set<List<String>> kinds = new HashSet<>();
    return new CardRemedies(
        finding.id(),
        ruleBase.card(finding.id()).card().title(),
        finding.severity(),
        cleared.stream()
            .sorted(bestFirst(writer))
            // Only the best is explained with numbers: the card's reason is shown with its finding.
            .map(p -> writer.remedy(p, kinds.isEmpty() ? Set.of(finding.id()) : Set.of()))
            .filter(remedy -> kinds.add(remedy.kinds()))
            .toList());
  }

  private static List<Remedy> alsoWorthDoing(ProvenChange way, Trials trials, Catalogue shop) {
    RemedyWriter writer = new RemedyWriter(way.setup(), way.judged(), trials.ruleBase());
    return FollowUpChanges.onTopOf(way, trials, shop).stream().map(writer::remedy).toList();
  }

  /**
   * Better verdicts first, then what a toolmaker tries first, then fewer changes, then less time,
   * then the better score.
   */
  private static Comparator<ProvenChange> bestFirst(RemedyWriter writer) {
    return Comparator.comparing((ProvenChange p) -> p.judged().verdict())
        .thenComparing(Remedies::turn)
        .thenComparing(p -> p.steps().size())
        .thenComparing(p -> writer.cost(p).added())
        .thenComparing(p -> -p.judged().left());
  }

  private static int turn(ProvenChange change) {
    return change.steps().stream().mapToInt(step -> step.kind().turn()).max().orElse(0);
  }

  /** The best first, without those that a better one beats in score and number of changes too. */
  private static List<ProvenChange> worthListing(List<ProvenChange> ways, RemedyWriter writer) {
    List<ProvenChange> kept = new ArrayList<>();
    ways.stream()
        .sorted(bestFirst(writer))
        .forEach(
            way -> {
              if (kept.stream().noneMatch(better -> beats(better, way))) {
                kept.add(way);
              }
            });
    return kept;
  }

  private static boolean beats(ProvenChange better, ProvenChange way) {
    return better.steps().size() <= way.steps().size()
        && better.judged().score() >= way.judged().score();
  }

  /** The effect of single changes, so that the sentence agrees with the list below it. */
  private static String alone(List<ProvenChange> ways) {
    return ways.stream()
        .filter(way -> way.steps().size() == 1)
        .findFirst()
        .map(way -> way.steps().get(0).kind().words() + " does so alone, further down the list.")
        .orElse("no single change tried does so alone.");
  }

  private static String conclusion(Setup setup, Judged base, List<ProvenChange> ways) {
    String what = base.isStopped() ? "stop" : "caution";
    if (base.stops().isEmpty() && base.cautions().isEmpty()) {
      return "Nothing has to be changed.";
    }
    if (ways.isEmpty()) {
      return "No change tried, up to three together, clears every "
          + what
          + (base.isStopped() ? ": hold it another way." : ".");
    }
    int changes = ways.get(0).steps().size();
    String first = ChangeWording.of(setup, ways.get(0)) + ". ";
    String cleared =
        changes == 1
            ? first + "That one change clears every " + what + "."
            : first + "These " + changes + " together clear every " + what + "; " + alone(ways);
    return base.verdict() == Verdict.NOT_JUDGED
        ? "Measure first what is not known. With what is known: " + cleared
        : cleared;
  }
}

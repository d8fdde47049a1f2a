package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Cutter;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;

/**
 * Plans a job: compares the orders of the faces in the vises on hand, each face with the ways to
 * hold it, and keeps the best route by verdict, then chance, then minutes. The route is then
 * written out and every pass of it judged again as it would be sent.
 */
public final class JobPlanner {

  /** Set-ups judged before the search only finishes what it began. */
  public static final int USUAL_BUDGET = 600;

  private static final int MOST_VISES = 2;

  private final MillingJob job;
  private final RuleBase ruleBase;
  private final Catalogue shop;
  private final PassTrials trials;
  private final ClampingSearch search;

  private JobPlanner(MillingJob job, RuleBase ruleBase, Catalogue shop, int budget) {
    this.job = job;
    this.ruleBase = ruleBase;
    this.shop = shop;
    this.trials = new PassTrials(ruleBase, budget);
    this.search = new ClampingSearch(job, trials);
  }

  /**
   * The best route found for a job.
   *
   * @param job the job
   * @param ruleBase the rule base
   * @param shop the shop's cutters, for other holds
   * @throws UnreachableFaceException if nothing on hand reaches one of its faces
   */
  public static JobPlan plan(MillingJob job, RuleBase ruleBase, Catalogue shop) {
    return plan(job, ruleBase, shop, USUAL_BUDGET);
  }

  /**
   * The same with a given budget.
   *
   * @param budget set-ups judged before the search only finishes what it began
   */
  public static JobPlan plan(MillingJob job, RuleBase ruleBase, Catalogue shop, int budget) {
    return new JobPlanner(job, ruleBase, shop, budget).plan();
  }

  private JobPlan plan() {
    List<Route> routes = new ArrayList<>();
    boolean complete = true;
    for (Vise vise : vises()) {
      Set<List<FaceCut>> tried = new HashSet<>();
      for (Sequence sequence : Sequence.values()) {
        if (!tried.add(sequence.cuts(Removal.of(job)))) {
          continue;
        }
        if (!routes.isEmpty() && trials.isSpent()) {
          complete = false;
          continue;
        }
        Route route = Route.of(job, sequence, vise, search);
        if (route != null) {
          routes.add(route);
        }
      }
    }
    Route best = routes.stream().min(Route.BEST_FIRST).orElseThrow(this::unreachable);
    JobPlan.SearchCount count =
        new JobPlan.SearchCount(routes.size(), trials.count(), complete && !trials.isSpent());
    return new RouteWriter(job, ruleBase, shop, best, count).plan();
  }

  /** The strongest of the vises first. */
  private List<Vise> vises() {
    return job.shelf().vises().stream()
        .sorted(
            Comparator.comparing(Vise::greatestClampingForceN).reversed().thenComparing(Vise::name))
        .limit(MOST_VISES)
        .toList();
  }

  private UnreachableFaceException unreachable() {
    Piece piece = Piece.of(job.blank());
    for (FaceCut cut : Sequence.values()[0].cuts(Removal.of(job))) {
      boolean reached = vises().stream().anyMatch(v -> search.found(piece, cut, v).best() != null);
      if (!reached) {
        return lacking(piece, cut);
      }
    }
    return lacking(piece, Sequence.values()[0].cuts(Removal.of(job)).get(0));
  }

  private UnreachableFaceException lacking(Piece piece, FaceCut cut) {
    Holding usual = Holding.of(cut.face()).get(0);
    double acrossM = PassBuilder.acrossM(piece, usual);
    boolean opens = vises().stream().anyMatch(v -> v.greatestOpeningM() >= acrossM);
    boolean reaches = job.shelf().cutters().stream().anyMatch(c -> reaches(piece, usual, c));
    UnreachableFaceException.Lack lack =
        !opens
            ? UnreachableFaceException.Lack.OPENING
            : reaches ? UnreachableFaceException.Lack.GRIP : UnreachableFaceException.Lack.DIAMETER;
    return new UnreachableFaceException(
        cut.face(),
        lack,
        lack == UnreachableFaceException.Lack.GRIP
            ? ClampingSearch.leastHeightM(cut)
            : lack == UnreachableFaceException.Lack.OPENING
                ? acrossM
                : PassBuilder.leastDiameterM(piece, usual));
  }

  private static boolean reaches(Piece piece, Holding holding, Cutter cutter) {
    return ClampingSearch.isUsable(cutter) && PassBuilder.strips(piece, holding, cutter) > 0;
  }
}

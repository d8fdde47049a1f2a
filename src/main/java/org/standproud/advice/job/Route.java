package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.setup.Cutter;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Vise;

/**
 * A whole route as found by the search: by verdict, then chance, then minutes, it is better or
 * worse than another.
 *
 * @param sequence the order of the faces
 * @param faces what was found for each cut, in order
 * @param verdict the worst of its passes
 * @param chance the least of its passes
 * @param minutes likely time with clamping and changes of cutter
 */
record Route(
    Sequence sequence,
    List<ClampingSearch.Found> faces,
    Verdict verdict,
    double chance,
    double minutes) {

  static final Comparator<Route> BEST_FIRST =
      Comparator.comparing(Route::verdict)
          .thenComparing(route -> -route.chance())
          .thenComparing(Route::minutes);

  Route {
    faces = List.copyOf(faces);
  }

  /** The route of one sequence in one vise; null if a face is out of reach. */
  static @Nullable Route of(MillingJob job, Sequence sequence, Vise vise, ClampingSearch search) {
    Piece piece = Piece.of(job.blank());
    List<ClampingSearch.Found> faces = new ArrayList<>();
    Verdict worst = Verdict.RUN;
    double chance = 1;
    double minutes = 0;
    Cutter inSpindle = null;
    for (FaceCut cut : sequence.cuts(Removal.of(job))) {
      ClampingSearch.Found found = search.found(piece, cut, vise);
      ClampingPlan plan = found.best();
      if (plan == null) {
        return null;
      }
      faces.add(found);
      worst = plan.verdict().compareTo(worst) > 0 ? plan.verdict() : worst;
      chance = Math.min(chance, plan.chance());
      minutes += plan.minutes();
      minutes +=
          plan.clamping().cutter().equals(inSpindle) ? 0 : BenchStep.CUTTER.minutes().likely();
      inSpindle = plan.clamping().cutter();
      piece = piece.after(cut.face(), cut.wholeM());
    }
    return new Route(sequence, faces, worst, chance, minutes);
  }
}

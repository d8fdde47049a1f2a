package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.List;
import org.standproud.setup.Setup;

/**
 * The effect of one change alone, judged or estimated.
 *
 * @param step the change
 * @param shortfalls its remaining shortfalls
 * @param passes number of passes that replace one
 * @param onceS likely time of one pass in s
 */
record SingleChangeEffect(Step step, double[] shortfalls, int passes, double onceS) {

  ChangeKind kind() {
    return step.kind();
  }

  /** The probed rungs of a ladder that change something. */
  static List<SingleChangeEffect> probed(Ladder ladder, RemedySearch search) {
    List<SingleChangeEffect> members = new ArrayList<>();
    for (int rung : ladder.probes()) {
      ProvenChange proved = search.prove(List.of(ladder.at(rung)));
      if (!proved.setup().equals(search.setup())) {
        members.add(
            new SingleChangeEffect(
                ladder.at(rung),
                search.shortfalls().of(proved.judged()),
                Passes.of(search.setup(), proved.setup()),
                Passes.onceS(proved.judged())));
      }
    }
    return members;
  }

  /**
   * Every rung of a lighter cut: those between two probes are interpolated by the ratio of their
   * passes.
   */
  static List<SingleChangeEffect> everyRung(Ladder ladder, RemedySearch search) {
    List<SingleChangeEffect> probed = probed(ladder, search);
    List<SingleChangeEffect> all = new ArrayList<>();
    SingleChangeEffect below =
        new SingleChangeEffect(
            ladder.at(0), search.shortfalls().of(search.base()), 1, Passes.onceS(search.base()));
    int rung = 0;
    for (SingleChangeEffect above : probed) {
      for (; rung <= above.step.rung(); rung++) {
        Setup changed = Step.all(List.of(ladder.at(rung)), search.setup());
        all.add(between(below, above, ladder.at(rung), Passes.of(search.setup(), changed)));
      }
      below = above;
    }
    return all;
  }

  private static SingleChangeEffect between(
      SingleChangeEffect below, SingleChangeEffect above, Step step, int passes) {
    double span = Math.log((double) above.passes / below.passes);
    double part = span > 0 ? Math.log((double) passes / below.passes) / span : 1;
    double[] shortfalls = above.shortfalls.clone();
    for (int i = 0; i < shortfalls.length; i++) {
      if (!Double.isNaN(below.shortfalls[i]) && !Double.isNaN(shortfalls[i])) {
        shortfalls[i] = below.shortfalls[i] + part * (shortfalls[i] - below.shortfalls[i]);
      }
    }
    return new SingleChangeEffect(step, shortfalls, passes, above.onceS);
  }
}

package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * Quick changes that clear a caution left by a chosen way: each is judged on top of the way, and
 * listed only if it makes nothing worse.
 */
final class FollowUpChanges {

  private static final Set<ChangeKind> QUICK =
      EnumSet.of(
          ChangeKind.DEBURR,
          ChangeKind.SEAT,
          ChangeKind.PACKING,
          ChangeKind.STOP,
          ChangeKind.SLIDES,
          ChangeKind.DRIVE);

  private static final int ENOUGH = 4;

  private FollowUpChanges() {}

  /**
   * The changes, the quickest first, one of each kind.
   *
   * @param way the way chosen
   * @param trials judged set-ups
   * @param shop the shop's cutters
   */
  static List<ProvenChange> onTopOf(ProvenChange way, Trials trials, Catalogue shop) {
    Setup setup = way.setup();
    Set<ChangeKind> done = EnumSet.noneOf(ChangeKind.class);
    way.steps().forEach(step -> done.add(step.kind()));
    List<ProvenChange> more = new ArrayList<>();
    Stream.concat(HoldLadders.of(setup, trials).stream(), CutLadders.of(setup, shop).stream())
        .filter(ladder -> QUICK.contains(ladder.kind()) && !done.contains(ladder.kind()))
        .sorted(Comparator.comparing(ladder -> ladder.kind().setUpS().likely()))
        .forEach(
            ladder ->
                ladder.probes().stream()
                    .map(rung -> changed(ladder.at(rung), setup, trials))
                    .filter(proved -> onlyGood(proved.judged(), way.judged()))
                    .findFirst()
                    .filter(proved -> done.add(ladder.kind()))
                    .ifPresent(more::add));
    return more.stream().limit(ENOUGH).toList();
  }

  private static ProvenChange changed(Step step, Setup setup, Trials trials) {
    Setup changed = Step.all(List.of(step), setup);
    return new ProvenChange(List.of(step), changed, trials.of(changed));
  }

  private static boolean onlyGood(Judged judged, Judged way) {
    Set<String> gone = new HashSet<>(way.cautions());
    gone.removeAll(judged.cautions());
    return !gone.isEmpty()
        && way.cautions().containsAll(judged.cautions())
        && judged.noWorseThan(way);
  }
}

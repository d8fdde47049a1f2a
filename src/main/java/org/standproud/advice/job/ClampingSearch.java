package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.PassHandling;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Cutter;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.MillingJob;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.SparePacking;
import org.standproud.setup.Spin;
import org.standproud.setup.Stage;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;

/**
 * Finds how to hold and mill one face of a piece: each way to hold it, with the likeliest cutters,
 * the deepest grip, packing, and as few roughing passes as run; then one change at a time as long
 * as it gets better.
 */
final class ClampingSearch {

  private static final int MOST_CUTTERS = 3;
  private static final int MOST_GRIPS = 2;

  /** More passes than this on one face are not planned. */
  private static final int MOST_ROUGHING = 40;

  /** Thinner and thicker roughing passes are not taken; common practice, no source. */
  private static final double LEAST_ROUGHING_M = 0.2e-3;

  private static final double MOST_ROUGHING_M = 3e-3;

  /** What stays between the finished face and the jaws; common practice, no source. */
  private static final double OVER_THE_JAWS_M = 3e-3;

  private static final double LEAST_GRIP_M = 3e-3;

  /** Depths are dialled in such steps; common practice, no source. */
  private static final double STEP_M = 0.05e-3;

  private static final double STEP_INCH_M = 0.002 * 0.0254;

  /** A machinist first tries a cutter a third wider than the face; common practice, no source. */
  private static final double WIDER = 1.33;

  private static final double SQUARE_RAD = Math.toRadians(89);

  private final MillingJob job;
  private final PassTrials trials;
  private final Map<Asked, Found> known = new HashMap<>();

  private record Asked(Piece piece, FaceCut cut, Vise vise) {}

  /**
   * What was found for one face.
   *
   * @param best the best; null if no way to hold it reaches the face
   * @param ways the best of each way to hold it, best first
   */
  record Found(@Nullable ClampingPlan best, List<ClampingPlan> ways) {
    Found {
      ways = List.copyOf(ways);
    }
  }

  ClampingSearch(MillingJob job, PassTrials trials) {
    this.job = job;
    this.trials = trials;
  }

  Found found(Piece piece, FaceCut cut, Vise vise) {
    Asked asked = new Asked(piece, cut, vise);
    Found found = known.get(asked);
    if (found == null) {
      found = search(asked);
      known.put(asked, found);
    }
    return found;
  }

  /** Another way to hold it is tried only where the usual one is not sure to hold. */
  private Found search(Asked asked) {
    List<ClampingPlan> ways = new ArrayList<>();
    for (Holding holding : Holding.of(asked.cut().face())) {
      if (ways.stream().noneMatch(ClampingSearch::isSure)) {
        best(asked, holding).ifPresent(ways::add);
      }
    }
    ways.sort(ClampingPlan.BEST_FIRST);
    return new Found(ways.isEmpty() ? null : ways.get(0), ways);
  }

  private Optional<ClampingPlan> best(Asked asked, Holding holding) {
    List<Double> grips = gripsM(asked, holding);
    List<Cutter> cutters = cutters(asked, holding);
    if (grips.isEmpty() || cutters.isEmpty() || !opens(asked, holding, null)) {
      return Optional.empty();
    }
    List<SparePacking> packings =
        asked.piece().isFlat(holding.gripped())
            ? List.of()
            : job.shelf().packing().stream()
                .filter(packing -> opens(asked, holding, packing))
                .toList();
    boolean bare = packings.isEmpty() || holding == Holding.FLAT;
    Clamping start =
        new Clamping(
            holding,
            asked.vise(),
            grips.get(0),
            cutters.get(0),
            bare ? null : packings.get(0),
            firstPull());
    ClampingPlan best = fewest(asked, start);
    for (Cutter cutter : cutters.subList(1, cutters.size())) {
      best = better(asked, best, best.clamping().with(cutter));
    }
    for (SparePacking packing : packings) {
      best = better(asked, best, best.clamping().with(packing));
    }
    if (!bare) {
      best = better(asked, best, best.clamping().with((SparePacking) null));
    }
    best = best.holds() ? best : shallower(asked, best);
    for (HandleEffort effort : harderPulls()) {
      best = isSure(best) ? best : better(asked, best, best.clamping().with(effort));
    }
    for (double gripM : grips.subList(1, grips.size())) {
      best = isSure(best) ? best : better(asked, best, best.clamping().with(gripM));
    }
    return Optional.of(lighter(asked, best));
  }

  /** A firm pull, or the hardest if that is less. */
  private HandleEffort firstPull() {
    return job.hardestPull().compareTo(HandleEffort.FIRM) < 0
        ? job.hardestPull()
        : HandleEffort.FIRM;
  }

  private List<HandleEffort> harderPulls() {
    return Arrays.stream(HandleEffort.values())
        .filter(e -> e.compareTo(firstPull()) > 0 && e.compareTo(job.hardestPull()) <= 0)
        .toList();
  }

  /** Whether a better grip could not improve it. */
  private static boolean isSure(ClampingPlan plan) {
    return plan.holds() && plan.chance() >= 1;
  }

  private ClampingPlan better(Asked asked, ClampingPlan best, Clamping other) {
    boolean same = other.equals(best.clamping());
    if (same || best.verdict() == Verdict.RUN && isSure(best) || trials.isSpent()) {
      return best;
    }
    ClampingPlan plan = fewest(asked, other);
    return ClampingPlan.BEST_FIRST.compare(plan, best) < 0 ? plan : best;
  }

  /** Whether the vise opens wide enough. */
  private static boolean opens(Asked asked, Holding holding, @Nullable SparePacking packing) {
    double acrossM = PassBuilder.acrossM(asked.piece(), holding);
    return acrossM + (packing == null ? 0 : packing.sizeM()) <= asked.vise().greatestOpeningM();
  }

  /** Grip depths that parallels and bed give, the deepest first. */
  private List<Double> gripsM(Asked asked, Holding holding) {
    double jawM = asked.vise().jawHeightM();
    double tallM = PassBuilder.tallM(asked.piece(), holding);
    double mostM =
        tallM - PassBuilder.axialM(asked.piece(), asked.cut(), holding) - OVER_THE_JAWS_M;
    return Stream.concat(Stream.of(0.0), job.shelf().parallelsM().stream())
        .map(parallelM -> jawM - parallelM)
        .filter(gripM -> gripM >= LEAST_GRIP_M && gripM <= mostM)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .limit(MOST_GRIPS)
        .toList();
  }

  /** The cutters that reach, the likeliest first. */
  List<Cutter> cutters(Asked asked, Holding holding) {
    double wideM = WIDER * PassBuilder.acrossM(asked.piece(), holding);
    boolean side = holding == Holding.STANDING_SIDE;
    Comparator<Cutter> likeliest =
        side
            ? Comparator.comparingDouble(c -> c.stickOutM() / c.diameterM())
            : Comparator.comparingInt((Cutter c) -> PassBuilder.strips(asked.piece(), holding, c))
                .thenComparing(c -> Math.abs(Math.log(c.diameterM() / wideM)));
    double deepM =
        side
            ? PassBuilder.axialM(asked.piece(), asked.cut(), holding)
            : Math.min(LEAST_ROUGHING_M, asked.cut().wholeM());
    return job.shelf().cutters().stream()
        .filter(ClampingSearch::isUsable)
        .filter(c -> c.greatestDepthM() >= deepM)
        .filter(c -> !side || c.enteringAngleRad() > SQUARE_RAD)
        .filter(c -> PassBuilder.strips(asked.piece(), holding, c) > 0)
        .sorted(likeliest.thenComparing(Cutter::name))
        .limit(MOST_CUTTERS)
        .toList();
  }

  /** Whole, not worn, and of the hand of an ordinary spindle. */
  static boolean isUsable(Cutter c) {
    boolean worn = c.edge() == EdgeCondition.WORN || c.edge() == EdgeCondition.CHIPPED;
    boolean whole = c.missingTeeth().isEmpty() && c.chippedTeeth().isEmpty();
    return !worn && whole && c.spin() == Spin.CLOCKWISE;
  }

  /** The least height of a stock that can be gripped below a cut, in m. */
  static double leastHeightM(FaceCut cut) {
    return cut.wholeM() + OVER_THE_JAWS_M + LEAST_GRIP_M;
  }

  /** The plan of one clamping with as few roughing passes as the cutter can take. */
  private ClampingPlan fewest(Asked asked, Clamping clamping) {
    return divided(asked, clamping, fewest(asked.cut(), clamping));
  }

  private static int fewest(FaceCut cut, Clamping clamping) {
    int least = (int) Math.ceil(cut.roughM() / most(clamping) - 1e-9);
    return Math.max(1, Math.min(least, MOST_ROUGHING));
  }

  /** The same with as few lighter passes as run. */
  private ClampingPlan shallower(Asked asked, ClampingPlan stopped) {
    int first = fewest(asked.cut(), stopped.clamping());
    ClampingPlan best = stopped;
    for (int count : new int[] {first + 1, first + 2, 2 * first + 2, 3 * first + 3}) {
      if (best.holds() || trials.isSpent()) {
        break;
      }
      best = better(best, asked, stopped.clamping(), count);
    }
    return best;
  }

  /** Where it runs already, one roughing pass more may clear a caution. */
  private ClampingPlan lighter(Asked asked, ClampingPlan best) {
    boolean clear = best.verdict() == Verdict.RUN || !best.holds();
    long count = best.passes().stream().filter(p -> p.stage() == Stage.ROUGH).count();
    int levels = (int) count / best.passes().get(0).parts();
    return clear || levels == 0 || trials.isSpent()
        ? best
        : better(best, asked, best.clamping(), levels + 1);
  }

  private ClampingPlan better(ClampingPlan best, Asked asked, Clamping clamping, int count) {
    if (asked.cut().roughM() / count < LEAST_ROUGHING_M || count > MOST_ROUGHING) {
      return best;
    }
    ClampingPlan plan = divided(asked, clamping, count);
    return ClampingPlan.BEST_FIRST.compare(plan, best) < 0 ? plan : best;
  }

  private static double most(Clamping clamping) {
    boolean side = clamping.holding() == Holding.STANDING_SIDE;
    return side
        ? Math.min(MOST_ROUGHING_M, clamping.cutter().diameterM() / 4)
        : Math.min(MOST_ROUGHING_M, clamping.cutter().greatestDepthM());
  }

  private ClampingPlan divided(Asked asked, Clamping clamping, int count) {
    PassBuilder builder = builder(asked, clamping);
    List<Double> roughs = depths(asked.cut().roughM(), count);
    double finishM = asked.cut().finishM();
    List<PlannedCut> planned = new ArrayList<>();
    roughs.forEach(depthM -> planned.add(builder.planned(depthM, Stage.ROUGH)));
    if (finishM > 0) {
      planned.add(builder.planned(finishM, Stage.FINISH));
    }
    List<PassDraft> passes = new ArrayList<>();
    int parts = builder.strips();
    int[] ways = new int[parts + 1];
    double goneM = 0;
    for (double depthM : roughs) {
      for (int part = 1; part <= parts; part++) {
        List<Setup> variants = builder.variants(goneM, depthM, Stage.ROUGH, part, planned);
        if (goneM == 0) {
          ways[part] = best(variants);
        }
        passes.add(draft(variants.get(ways[part]), Stage.ROUGH, depthM, part, parts));
      }
      goneM += depthM;
    }
    for (int part = 1; finishM > 0 && part <= parts; part++) {
      List<Setup> variants = builder.variants(goneM, finishM, Stage.FINISH, part, planned);
      passes.add(draft(variants.get(best(variants)), Stage.FINISH, finishM, part, parts));
    }
    return judged(asked.cut(), clamping, passes);
  }

  /** Equal depths to the step of a dial; the last takes what is left. */
  private List<Double> depths(double wholeM, int count) {
    double step = job.units() == UnitSystem.INCH ? STEP_INCH_M : STEP_M;
    double eachM = Math.ceil(wholeM / count / step - 1e-6) * step;
    List<Double> depths = new ArrayList<>();
    double leftM = wholeM;
    while (leftM > eachM * (1 + 1e-6)) {
      depths.add(eachM);
      leftM -= eachM;
    }
    if (wholeM > 0) {
      depths.add(leftM);
    }
    return depths;
  }

  private PassBuilder builder(Asked asked, Clamping clamping) {
    PassBuilder plain =
        new PassBuilder(job, asked.piece(), asked.cut(), clamping, clamping.gripM() / 2);
    SparePacking packing = clamping.packing();
    boolean line =
        packing != null
            && (packing.kind() == PackingKind.WIRE || packing.kind() == PackingKind.STRIP);
    if (packing == null || !line) {
      return plain;
    }
    return new PassBuilder(
        job, asked.piece(), asked.cut(), clamping, lineDepthM(asked, plain, clamping, packing));
  }

  /** The depth of a wire that makes both tip margins equal, within the grip. */
  private double lineDepthM(
      Asked asked, PassBuilder plain, Clamping clamping, SparePacking packing) {
    boolean rough = asked.cut().roughM() > 0;
    Setup first =
        plain
            .variants(
                0,
                rough ? Math.min(asked.cut().roughM(), most(clamping)) : asked.cut().finishM(),
                rough ? Stage.ROUGH : Stage.FINISH,
                1,
                List.of())
            .get(0);
    double bestM = trials.of(first).likely(Vocabulary.BEST_PACKING_DEPTH, clamping.gripM() / 2);
    double roundedM = Math.round(bestM * 1e3) / 1e3;
    double edgeM = packing.sizeM() / 2;
    return Math.max(edgeM, Math.min(roundedM, clamping.gripM() - edgeM));
  }

  private PassDraft draft(Setup setup, Stage stage, double takesM, int part, int parts) {
    return new PassDraft(trials.of(setup), stage, takesM, part, parts);
  }

  /** The index of the best variant; the same way is then kept from level to level. */
  private int best(List<Setup> variants) {
    Comparator<Integer> bestFirst =
        Comparator.comparing((Integer i) -> trials.of(variants.get(i)).verdict())
            .thenComparing(i -> -twoFigures(trials.of(variants.get(i)).chance()))
            .thenComparing(i -> -trials.of(variants.get(i)).left());
    return IntStream.range(0, variants.size()).boxed().min(bestFirst).orElseThrow();
  }

  private static double twoFigures(double chance) {
    return Math.round(100 * chance) / 100.0;
  }

  private ClampingPlan judged(FaceCut cut, Clamping clamping, List<PassDraft> passes) {
    Verdict worst = Verdict.RUN;
    double chance = 1;
    double seconds = 0;
    for (PassDraft draft : passes) {
      JudgedPass pass = draft.pass();
      worst = pass.verdict().compareTo(worst) > 0 ? pass.verdict() : worst;
      chance = Math.min(chance, twoFigures(pass.chance()));
      seconds += pass.likely(Vocabulary.PASS_TIME, 0);
    }
    seconds += (passes.size() - 1) * PassHandling.betweenS(job.machine()).likely();
    double eachMin = seconds / 60 + BenchStep.CLAMP.minutes().likely();
    return new ClampingPlan(
        cut, clamping, passes, worst, chance, clamping.holding().clampings() * eachMin);
  }
}

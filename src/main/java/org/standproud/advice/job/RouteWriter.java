package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Cautions;
import org.standproud.advice.Verdict;
import org.standproud.advice.Wording;
import org.standproud.advice.workholding.OtherHold;
import org.standproud.advice.workholding.OtherHolds;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;
import org.standproud.setup.SparePacking;
import org.standproud.setup.Stage;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.units.QuantityKind;

/**
 * Writes a route out: numbers its set-ups and passes, judges each pass as sent, adds bench work.
 */
final class RouteWriter {

  /** With a tolerance this tight the last pass is run twice; common practice, no source. */
  private static final double SPRING_PASS_FROM_M = 0.05e-3;

  private final MillingJob job;
  private final RuleBase ruleBase;
  private final Catalogue shop;
  private final Route route;
  private final JobPlan.SearchCount count;
  private final Wording wording;
  private final PassWriter passes;

  private final List<RouteSetUp> setUps = new ArrayList<>();
  private Piece piece;
  private Band benchMin = Band.exactly(0);
  private double cutMin;
  private @Nullable Cutter inSpindle;
  private boolean packed;

  RouteWriter(
      MillingJob job, RuleBase ruleBase, Catalogue shop, Route route, JobPlan.SearchCount count) {
    this.job = job;
    this.ruleBase = ruleBase;
    this.shop = shop;
    this.route = route;
    this.count = count;
    this.wording = new Wording(job.units());
    this.passes = new PassWriter(job, ruleBase, wording);
    this.piece = Piece.of(job.blank());
  }

  JobPlan plan() {
    route.faces().forEach(this::write);
    List<RoutePass> all = setUps.stream().flatMap(s -> s.passes().stream()).toList();
    RoutePass riskiest = all.stream().max(RISK).orElseThrow();
    Verdict verdict = riskiest.verdict();
    boolean runs = verdict == Verdict.RUN || verdict == Verdict.RUN_WITH_CARE;
    List<OtherHold> others =
        runs ? List.of() : OtherHolds.of(riskiest.held(), false, ruleBase, shop).holds();
    return new JobPlan(
        verdict,
        summary(verdict, riskiest, others),
        risk(riskiest),
        leastChance(all),
        route.sequence().words(),
        Minutes.of(benchMin.plus(Band.exactly(cutMin))),
        cutMin,
        setUps,
        new ToleranceReport(job, all, passes, wording).checks(),
        others,
        count,
        assumptions(),
        Cautions.all());
  }

  /** The worst verdict is the riskiest; of equal ones the least chance, then the lowest score. */
  static final Comparator<RoutePass> RISK =
      Comparator.comparing(RoutePass::verdict)
          .thenComparing(pass -> -chanceOrNone(pass))
          .thenComparing(pass -> -pass.score())
          .thenComparing(pass -> -pass.number());

  private static double chanceOrNone(RoutePass pass) {
    Double chance = pass.chance();
    return chance == null ? 0 : chance;
  }

  private static @Nullable Double leastChance(List<RoutePass> all) {
    double least = 1;
    for (RoutePass pass : all) {
      Double chance = pass.chance();
      if (chance == null) {
        return null;
      }
      least = Math.min(least, chance);
    }
    return least;
  }

  private JobPlan.RiskiestPass risk(RoutePass pass) {
    return new JobPlan.RiskiestPass(
        pass.number(),
        setUps.stream().filter(s -> s.passes().contains(pass)).findFirst().orElseThrow().number(),
        pass.verdict(),
        "Riskiest: pass " + pass.number() + ", " + named(pass) + ". " + pass.summary());
  }

  private static String named(RoutePass pass) {
    String part = pass.parts() > 1 ? ", part " + pass.part() + " of " + pass.parts() : "";
    return pass.stage() + " on " + pass.face() + part;
  }

  private String summary(Verdict verdict, RoutePass riskiest, List<OtherHold> others) {
    String size =
        setUps.size()
            + " set-ups, "
            + passes.count()
            + " passes, about "
            + Math.round(benchMin.likely() + cutMin)
            + " min.";
    return switch (verdict) {
      case RUN -> "OK to run: " + size;
      case RUN_WITH_CARE -> "Run with care: " + size;
      case NOT_JUDGED ->
          "Can't tell yet, so don't run: pass "
              + riskiest.number()
              + " ("
              + named(riskiest)
              + ") could not be judged. "
              + elsewhere(others);
      case DO_NOT_RUN ->
          "Do not run this route: pass "
              + riskiest.number()
              + " ("
              + named(riskiest)
              + ") stops it, in the best of "
              + count.routes()
              + (count.routes() == 1 ? " route" : " routes")
              + " compared. "
              + elsewhere(others);
    };
  }

  private static String elsewhere(List<OtherHold> others) {
    return others.stream()
        .filter(hold -> hold.verdict() == Verdict.RUN || hold.verdict() == Verdict.RUN_WITH_CARE)
        .findFirst()
        .map(
            hold ->
                "Tried too: "
                    + hold.way()
                    + ", "
                    + hold.verdict()
                    + " by the cards that are not about jaws.")
        .orElse("Angle plate, side of the vise and flat on the table were tried too: none holds.");
  }

  private void write(ClampingSearch.Found found) {
    ClampingPlan plan = found.best();
    if (plan == null) {
      throw new IllegalStateException("a route has a face that nothing reaches");
    }
    int clampings = plan.clamping().holding().clampings();
    Piece atFirst = piece;
    for (int clamping = 1; clamping <= clampings; clamping++) {
      setUps.add(setUp(plan, found.ways(), clamping, atFirst));
    }
    piece = atFirst.after(plan.cut().face(), plan.cut().wholeM());
  }

  private RouteSetUp setUp(ClampingPlan plan, List<ClampingPlan> ways, int part, Piece atFirst) {
    Clamping clamping = plan.clamping();
    int number = setUps.size() + 1;
    Setup first = plan.passes().get(0).pass().setup();
    List<RouteStep> before = before(plan, part, first);
    List<RoutePass> written = passes.write(plan, number, part, atFirst);
    List<RouteStep> after = after(plan, written);
    double inCut = passes.cutMinutes(written);
    cutMin += inCut;
    double bench = 0;
    for (List<RouteStep> steps : List.of(before, after)) {
      for (RouteStep step : steps) {
        benchMin =
            benchMin.plus(
                step.kind() == BenchStep.SPRING_PASS
                    ? Band.exactly(step.minutes())
                    : step.kind().minutes());
        bench += step.minutes();
      }
    }
    inSpindle = clamping.cutter();
    packed = clamping.packing() != null;
    return new RouteSetUp(
        number,
        plan.cut().face().words(),
        clamping.holding().words(),
        clamping.vise().name(),
        wording.quantity("grip depth", QuantityKind.LENGTH, Band.exactly(clamping.gripM())),
        wording.quantity("stick-out", QuantityKind.LENGTH, Band.exactly(first.stickOutM())),
        clamping.onBed()
            ? null
            : wording.quantity(
                "parallels",
                QuantityKind.LENGTH,
                Band.exactly(clamping.vise().jawHeightM() - clamping.gripM())),
        packingWords(first),
        clamping.effort().words(),
        clamping.cutter().name(),
        before,
        written,
        after,
        written.stream().map(RoutePass::verdict).max(Comparator.naturalOrder()).orElseThrow(),
        bench + inCut,
        ways.stream().filter(way -> way != plan).map(this::tried).toList());
  }

  private TriedHold tried(ClampingPlan way) {
    Set<String> stops = way.holds() ? Set.of() : passes.stops(worst(way).pass().evidence());
    return new TriedHold(
        way.clamping().holding().words(),
        way.verdict(),
        way.chance(),
        way.clamping().cutter().name(),
        way.minutes(),
        stops.stream().findFirst().orElse(null));
  }

  private static PassDraft worst(ClampingPlan way) {
    return way.passes().stream()
        .max(Comparator.comparing(draft -> draft.pass().verdict()))
        .orElseThrow();
  }

  private List<RouteStep> before(ClampingPlan plan, int part, Setup first) {
    List<RouteStep> steps = new ArrayList<>();
    Clamping clamping = plan.clamping();
    if (setUps.isEmpty()) {
      steps.add(step(BenchStep.DEBURR, "Deburr the blank all round; wipe it and the jaws clean."));
      steps.add(
          step(
              BenchStep.INDICATE,
              "Indicate the fixed jaw within "
                  + length(PassBuilder.JAW_RUN_OUT_M)
                  + " over its width."));
    }
    if (!clamping.cutter().equals(inSpindle)) {
      steps.add(step(BenchStep.CUTTER, "Put in: " + clamping.cutter().name() + "."));
    }
    String packing = packingWords(first);
    if (packing != null) {
      steps.add(step(BenchStep.PACKING, packing + ": the gripped faces are not milled yet."));
    } else if (packed) {
      steps.add(step(BenchStep.PACKING, "Packing out: it would only soften this grip."));
    }
    steps.add(
        step(
            clamping.holding() == Holding.ON_END ? BenchStep.SQUARE_UP : BenchStep.CLAMP,
            place(plan, part)
                + " "
                + seat(clamping)
                + " Clamping: "
                + clamping.effort().words()
                + ". A stop at each end, below the jaw top; lock the slides that do not feed"
                + (Boolean.TRUE.equals(first.cut().slideLocked())
                    ? " and snug the table lock for drag."
                    : ".")));
    return steps;
  }

  private String place(ClampingPlan plan, int part) {
    Face face = plan.cut().face();
    String down = face.opposite().words();
    return switch (plan.clamping().holding()) {
      case FLAT -> "Lay the plate flat, " + down + " down.";
      case STANDING_SIDE ->
          (part == 1
                  ? "Stand the plate on a long edge"
                  : "Turn the plate end for end, other edge down")
              + ", "
              + down
              + " against the fixed jaw.";
      case ON_EDGE ->
          "Stand the plate on "
              + down
              + ", "
              + (piece.milled().contains(Face.SIDE_A) ? "broad side A" : "the flatter broad side")
              + " against the fixed jaw.";
      case ON_END ->
          "Stand the plate on " + down + ", true to a square, a broad side against the fixed jaw.";
    };
  }

  private String seat(Clamping clamping) {
    return clamping.onBed()
        ? "It sits on the bed of the vise."
        : "Parallels "
            + length(clamping.vise().jawHeightM() - clamping.gripM())
            + " high, so that the jaws grip "
            + length(clamping.gripM())
            + "; both tight after clamping.";
  }

  private List<RouteStep> after(ClampingPlan plan, List<RoutePass> written) {
    List<RouteStep> steps = new ArrayList<>();
    RoutePass last = written.get(written.size() - 1);
    steps.add(
        step(
            BenchStep.MEASURE,
            "Stop the spindle, clear the chips and measure at both ends and in the middle before"
                + " unclamping."));
    Double tolerance = ToleranceReport.toleranceM(job.finished(), plan.cut().face());
    boolean finished = last.stage().equals(Stage.FINISH.words());
    if (finished && tolerance != null && tolerance <= SPRING_PASS_FROM_M) {
      steps.add(
          new RouteStep(
              BenchStep.SPRING_PASS,
              "Spring pass: run pass "
                  + last.number()
                  + " again at the same setting, without a new depth; it takes no more than that"
                  + " pass did.",
              last.minutes()));
    }
    steps.add(
        step(BenchStep.DEBURR, "Take off the burr before the plate is turned or gripped again."));
    return steps;
  }

  private static RouteStep step(BenchStep kind, String text) {
    return new RouteStep(kind, text, kind.minutes().likely());
  }

  private @Nullable String packingWords(Setup setup) {
    if (setup.hold().packing().isEmpty()) {
      return null;
    }
    Packing piece = setup.hold().packing().get(0);
    SparePacking spare = new SparePacking(piece.kind(), piece.material(), piece.sizeM());
    return String.format(
        Locale.ROOT,
        "%s %s, %s, between stock and movable jaw, its middle %s below the jaw top",
        capital(spare.material().words()),
        spare.kind().words(),
        length(spare.sizeM()),
        length(piece.depthM()));
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private String length(double lengthM) {
    return wording.words(QuantityKind.LENGTH, lengthM);
  }

  private List<String> assumptions() {
    return List.of(
        "Half of the stock comes off each of two opposite faces, and the last "
            + length(Removal.of(job).allowanceM())
            + " of it in a finishing pass (common practice, no source).",
        "Speeds and feeds lie in the middle of the published range of stock and cutter, as far as"
            + " the machine has them.",
        "The bench steps are done as written: deburred, wiped, fixed jaw indicated, stops and locks"
            + " set. Each pass is judged with them.",
        "Bench times are rules of thumb: common practice, no source.",
        "Whether the plate springs when one side is opened is not computed: measure it after each"
            + " turn.");
  }
}

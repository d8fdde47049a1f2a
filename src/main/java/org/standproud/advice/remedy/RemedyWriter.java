package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.standproud.advice.Wording;
import org.standproud.advice.compare.SetupFields;
import org.standproud.advice.whatif.Judged;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.setup.Band;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.units.QuantityKind;

/** Writes proven changes in the caller's units. */
final class RemedyWriter {

  private static final double MINUTE_S = 60;

  private final Setup setup;
  private final Judged base;
  private final Wording wording;
  private final RemedyRationale argument;

  RemedyWriter(Setup setup, Judged base, RuleBase ruleBase) {
    this.setup = setup;
    this.base = base;
    this.wording = new Wording(setup.units());
    this.argument = new RemedyRationale(setup, base, ruleBase);
  }

  /** A change, explained by the most severe finding it clears. */
  Remedy remedy(ProvenChange proved) {
    Set<String> stops = without(base.stops(), proved.judged().ids());
    return remedy(
        proved, stops.isEmpty() ? without(base.cautions(), proved.judged().ids()) : stops);
  }

  private static Set<String> without(Set<String> before, Set<String> after) {
    Set<String> gone = new TreeSet<>(before);
    gone.removeAll(after);
    return gone;
  }

  /** A change, explained by some of the cards that it clears. */
  Remedy remedy(ProvenChange proved, Set<String> cleared) {
    Map<String, CardKind> before = byId(base);
    Map<String, CardKind> after = byId(proved.judged());
    List<String> clears = new ArrayList<>();
    List<String> eases = new ArrayList<>();
    before.forEach(
        (id, was) -> {
          CardKind is = after.get(id);
          if (is == null) {
            clears.add(id);
          } else if (is.severity().compareTo(was.severity()) < 0) {
            eases.add(id);
          }
        });
    List<String> appears = new ArrayList<>();
    after.forEach(
        (id, is) -> {
          CardKind was = before.get(id);
          if (was == null || is.severity().compareTo(was.severity()) > 0) {
            appears.add(id);
          }
        });
    return new Remedy(
        proved.steps().stream().map(Step::kind).sorted().map(ChangeKind::words).toList(),
        SetupFields.changes(setup, proved.setup()),
        argument.of(proved, cleared),
        proved.judged().verdict(),
        proved.judged().score(),
        clears.stream().sorted().toList(),
        eases.stream().sorted().toList(),
        appears.stream().sorted().toList(),
        List.copyOf(proved.judged().stops()),
        cost(proved),
        needs(proved),
        proved.setup());
  }

  private static Map<String, CardKind> byId(Judged judged) {
    Map<String, CardKind> byId = new HashMap<>();
    for (CardKind finding : judged.findings()) {
      if (finding.severity() != Severity.NOTE) {
        byId.put(finding.id(), finding);
      }
    }
    return byId;
  }

  Cost cost(ProvenChange proved) {
    Band setUpS =
        proved.steps().stream()
            .map(step -> step.kind().setUpS())
            .reduce(Band.exactly(0), Band::plus);
    double beforeS = Passes.onceS(base);
    double afterS = Passes.allS(setup, proved);
    return new Cost(
        Passes.of(setup, proved.setup()),
        minutes(beforeS),
        minutes(afterS),
        minutes(setUpS.low()),
        minutes(setUpS.likely()),
        minutes(setUpS.high()),
        minutes(setUpS.likely() + afterS - beforeS),
        "times to set up and between passes: common practice, no source");
  }

  private static double minutes(double seconds) {
    return Math.round(seconds / MINUTE_S * 100) / 100.0;
  }

  private List<String> needs(ProvenChange proved) {
    List<String> needs = new ArrayList<>();
    for (Step step : proved.steps()) {
      switch (step.kind()) {
        case GRIP -> needs.add(lower(proved.setup()));
        case CLAMP -> needs.add("a torque wrench on the screw: the force is calculated, not felt");
        case CUTTER -> needs.add("that cutter at the machine, with good edges");
        case PACKING -> needs.add("packing of that size, laid level along the whole grip");
        case FACES -> needs.add("a straight edge to prove the faces by: no light under it");
        case JAWS -> needs.add("the jaws, bolted down and indicated along and upright");
        case BACKING ->
            needs.add(
                "a solid one, bolted down and brought up until it just touches: an indicator on"
                    + " the plate must not move");
        case STOP -> needs.add("a stop bolted down, not a clamped one, touching the stock");
        default -> {}
      }
    }
    return needs;
  }

  private String lower(Setup after) {
    double lowerM = after.hold().gripDepthM() - setup.hold().gripDepthM();
    String by = wording.words(QuantityKind.LENGTH, lowerM);
    return setup.hold().seat() == Seat.BED
        ? "the stock " + by + " lower: look what it sits on, the jaw is deeper than the grip"
        : "parallels lower by " + by;
  }
}

package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.AXIAL_DEPTHS;
import static org.standproud.mechanics.evidence.Vocabulary.EARLIER_DEPTHS;
import static org.standproud.mechanics.evidence.Vocabulary.FEEDS_OF_PASSES;
import static org.standproud.mechanics.evidence.Vocabulary.FINISHING_DEPTHS;
import static org.standproud.mechanics.evidence.Vocabulary.LAST_PASS_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.NUMBER_OF_PASSES;
import static org.standproud.mechanics.evidence.Vocabulary.PASSES_TOLD;
import static org.standproud.mechanics.evidence.Vocabulary.RADIAL_DEPTHS;
import static org.standproud.mechanics.evidence.Vocabulary.ROUGHING_DEPTHS;
import static org.standproud.mechanics.evidence.Vocabulary.ROUGHING_RISES;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.setup.Band;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;
import org.standproud.setup.request.RequestFields;

/** The passes planned on a set-up, by the numbers they are told in; nothing is computed of them. */
final class PlanFacts {

  private static final Basis PASSES = Basis.on(RequestFields.PASSES);

  private final List<PlannedCut> passes;
  private final FactSheet sheet;

  private PlanFacts(List<PlannedCut> passes, FactSheet sheet) {
    this.passes = passes;
    this.sheet = sheet;
  }

  /** States them; all but whether they are told is missing if they are not. */
  static void state(Setup setup, FactSheet sheet) {
    new PlanFacts(setup.passes(), sheet).state();
  }

  private void state() {
    sheet.yesNo(PASSES_TOLD, !passes.isEmpty(), PASSES);
    sheet.stated(NUMBER_OF_PASSES, known((double) passes.size()));
    list(AXIAL_DEPTHS, pass -> Band.exactly(pass.axialDepthM()));
    list(RADIAL_DEPTHS, PlanFacts::radialDepth);
    list(FEEDS_OF_PASSES, PlannedCut::feedPerToothM);
    List<Double> roughing = takes(Stage.ROUGH);
    depths(ROUGHING_DEPTHS, roughing);
    depths(FINISHING_DEPTHS, takes(Stage.FINISH));
    depths(ROUGHING_RISES, rises(roughing));
    List<Double> all = passes.stream().map(PlannedCut::takesM).toList();
    int last = all.size() - 1;
    depths(EARLIER_DEPTHS, all.subList(0, Math.max(0, last)));
    if (last < 0) {
      sheet.missing(LAST_PASS_DEPTH, PASSES);
    } else {
      sheet.number(LAST_PASS_DEPTH, all.get(last), PASSES);
    }
  }

  private @Nullable Double known(double number) {
    return passes.isEmpty() ? null : (Double) number;
  }

  private static @Nullable Band radialDepth(PlannedCut pass) {
    return pass.radialDepthM() == null ? null : Band.exactly(pass.radialDepthM());
  }

  /** One number a pass; the list is missing if that of any pass is. */
  private void list(Fact fact, Function<PlannedCut, @Nullable Band> number) {
    List<Band> told = passes.stream().map(number).filter(Objects::nonNull).toList();
    if (passes.isEmpty() || told.size() < passes.size()) {
      sheet.missing(fact, PASSES);
    } else {
      sheet.numbers(fact, told, PASSES);
    }
  }

  private void depths(Fact fact, List<Double> depthsM) {
    if (passes.isEmpty()) {
      sheet.missing(fact, PASSES);
    } else {
      sheet.numbers(fact, depthsM.stream().map(Band::exactly).toList(), PASSES);
    }
  }

  private List<Double> takes(Stage stage) {
    return passes.stream().filter(p -> p.stage() == stage).map(PlannedCut::takesM).toList();
  }

  private static List<Double> rises(List<Double> depthsM) {
    List<Double> rises = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (double depthM : depthsM) {
      if (least < Double.POSITIVE_INFINITY) {
        rises.add(depthM - least);
      }
      least = Math.min(least, depthM);
    }
    return rises;
  }
}

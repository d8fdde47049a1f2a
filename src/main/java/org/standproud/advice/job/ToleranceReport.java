package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Wording;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.FinishedPart;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Stage;
import org.standproud.setup.units.QuantityKind;

/**
 * Compares what the finishing passes leave with what is asked for. The spread of the setting itself
 * is not computed: the machinist measures before the last pass.
 */
final class ToleranceReport {

  private static final String WITHIN = "within";
  private static final String DOUBT = "in doubt";
  private static final String EXCEEDED = "exceeded";
  private static final String NOT_JUDGED = "not judged";

  private final MillingJob job;
  private final List<RoutePass> finishing;
  private final PassWriter facts;
  private final Wording wording;

  ToleranceReport(MillingJob job, List<RoutePass> all, PassWriter facts, Wording wording) {
    this.job = job;
    this.finishing = all.stream().filter(p -> p.stage().equals(Stage.FINISH.words())).toList();
    this.facts = facts;
    this.wording = wording;
  }

  /** The tolerance of the size that milling a face decides, in m; null if none is asked for. */
  static @Nullable Double toleranceM(FinishedPart finished, Face face) {
    return switch (face) {
      case SIDE_A, SIDE_B -> finished.thicknessToleranceM();
      case EDGE_A, EDGE_B -> finished.heightToleranceM();
      case END_A, END_B -> finished.lengthToleranceM();
    };
  }

  List<ToleranceCheck> checks() {
    List<ToleranceCheck> checks = new ArrayList<>();
    FinishedPart finished = job.finished();
    size("thickness", finished.thicknessToleranceM(), Face.SIDE_A, checks);
    size("height", finished.heightToleranceM(), Face.EDGE_A, checks);
    size("length", finished.lengthToleranceM(), Face.END_A, checks);
    Double flatness = finished.flatnessM();
    if (flatness != null) {
      // A plate springs by stresses that no formula here knows.
      checks.add(
          new ToleranceCheck(
              "flatness",
              wording.quantity("flatness", QuantityKind.LENGTH, Band.exactly(flatness)),
              null,
              NOT_JUDGED,
              null));
    }
    Double roughness = finished.roughnessM();
    if (roughness != null) {
      checks.add(
          check("roughness", QuantityKind.ROUGHNESS, roughness, Vocabulary.ROUGHNESS, finishing));
    }
    return checks;
  }

  private void size(
      String what, @Nullable Double toleranceM, Face face, List<ToleranceCheck> into) {
    if (toleranceM != null) {
      into.add(
          check(
              what,
              QuantityKind.LENGTH,
              toleranceM,
              Vocabulary.SIZE_ERROR,
              finishing.stream()
                  .filter(
                      p ->
                          p.face().equals(face.words()) || p.face().equals(face.opposite().words()))
                  .toList()));
    }
  }

  /** The pass with the greatest value decides; one that is not known decides before it. */
  private ToleranceCheck check(
      String what, QuantityKind kind, double wanted, Fact fact, List<RoutePass> passes) {
    RoutePass deciding =
        passes.stream().max(Comparator.comparingDouble(pass -> high(pass, fact))).orElse(null);
    boolean known =
        deciding != null && facts.evidence(deciding.number()).get(fact) instanceof Value.Quantity;
    return new ToleranceCheck(
        what,
        wording.quantity(what, kind, Band.exactly(wanted)),
        known && deciding != null
            ? wording.quantity(fact, facts.evidence(deciding.number()).get(fact))
            : null,
        known && deciding != null ? judgement(deciding, fact, wanted) : NOT_JUDGED,
        deciding == null ? null : deciding.number());
  }

  private String judgement(RoutePass pass, Fact fact, double wanted) {
    if (facts.evidence(pass.number()).get(fact) instanceof Value.Quantity q) {
      return q.band().high() <= wanted ? WITHIN : q.band().likely() <= wanted ? DOUBT : EXCEEDED;
    }
    return NOT_JUDGED;
  }

  private double high(RoutePass pass, Fact fact) {
    return facts.evidence(pass.number()).get(fact) instanceof Value.Quantity q
        ? q.band().high()
        : Double.POSITIVE_INFINITY;
  }
}

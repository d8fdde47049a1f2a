package org.standproud.api.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** The mechanics of this program, and of programs that would work a number out differently. */
final class Mechanics {

  static final Function<Setup, Evidence> THIS = EvidenceGathering::of;

  private Mechanics() {}

  /** A program whose formula for one fact gave another number, by a factor. */
  static Function<Setup, Evidence> scaled(String fact, double factor) {
    return setup -> {
      List<EvidenceValue> values = new ArrayList<>();
      for (EvidenceValue value : EvidenceGathering.of(setup).values()) {
        values.add(value.fact().name().equals(fact) ? scaled(value, factor) : value);
      }
      return new Evidence(values);
    };
  }

  /** A program that did not know a fact yet. */
  static Function<Setup, Evidence> without(String fact) {
    return setup ->
        new Evidence(
            EvidenceGathering.of(setup).values().stream()
                .filter(v -> !v.fact().name().equals(fact))
                .toList());
  }

  private static EvidenceValue scaled(EvidenceValue value, double factor) {
    Band band = ((Value.Quantity) value.value()).band();
    Fact fact = value.fact();
    Band other = new Band(band.low() * factor, band.likely() * factor, band.high() * factor);
    return new EvidenceValue(fact, new Value.Quantity(other), value.inputs(), value.assumptions());
  }
}

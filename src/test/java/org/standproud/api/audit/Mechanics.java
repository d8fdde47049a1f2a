package org.standproud.api.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.setup.Setup;

/** The mechanics of this program, and of programs that would work a number out differently. */
final class Mechanics {

  static final Function<Setup, JointEvidence> THIS = EvidenceGathering::jointly;

  private Mechanics() {}

  /** A program whose formula for one fact gave another number, by a factor. */
  static Function<Setup, JointEvidence> scaled(String fact, double factor) {
    return setup -> {
      JointEvidence joint = EvidenceGathering.jointly(setup);
      List<EvidenceValue> values = new ArrayList<>();
      for (EvidenceValue value : joint.evidence().values()) {
        values.add(value.fact().name().equals(fact) ? scaled(value, factor) : value);
      }
      return new JointEvidence(new Evidence(values), joint.chance(), joint.lettingGo());
    };
  }

  /** A program that did not know a fact yet. */
  static Function<Setup, JointEvidence> without(String fact) {
    return setup -> {
      JointEvidence joint = EvidenceGathering.jointly(setup);
      List<EvidenceValue> rest =
          joint.evidence().values().stream().filter(v -> !v.fact().name().equals(fact)).toList();
      return new JointEvidence(new Evidence(rest), joint.chance(), joint.lettingGo());
    };
  }

  private static EvidenceValue scaled(EvidenceValue value, double factor) {
    Sample sample = ((Value.Quantity) value.value()).sample();
    double[] scaled = new double[sample.size()];
    Arrays.setAll(scaled, draw -> sample.at(draw) * factor);
    Value other = new Value.Quantity(Sample.of(scaled));
    return new EvidenceValue(value.fact(), other, value.inputs(), value.assumptions());
  }
}

package org.standproud.mechanics.evidence;

import java.util.List;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.request.FieldPointer;

/**
 * A fact with its value for one set-up and what it stood on.
 *
 * @param fact which fact
 * @param value its value
 * @param inputs the fields of the request it was computed from
 * @param assumptions what was assumed on the way
 */
public record EvidenceValue(
    Fact fact, Value value, List<FieldPointer> inputs, List<Assumption> assumptions) {

  /** Copies the lists. */
  public EvidenceValue {
    inputs = List.copyOf(inputs);
    assumptions = List.copyOf(assumptions);
  }
}

package org.standproud.audit.chain;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.standproud.audit.Withholding;

/**
 * Compares missing texts with the records that state who removed them: nothing may be missing
 * without such a record, and the rest must be what that record states.
 */
final class WithheldTexts {

  private final Map<Long, Remainder> found = new TreeMap<>();
  private final Map<Long, Withholding.Taken> stated = new HashMap<>();

  void see(Link link) {
    if (link.withheld() != null) {
      found.put(link.sequence(), link.withheld());
    } else {
      Withholding.in(Objects.requireNonNull(link.body()))
          .ifPresent(order -> order.taken().forEach(t -> stated.put(t.sequence(), t)));
    }
  }

  void report(ChainCheck check) {
    found.forEach(
        (place, left) -> {
          Withholding.Taken order = stated.get(place);
          if (order == null || !order.digest().equals(left.digest())) {
            check.fault(
                ChainFault.Kind.WITHHELD_SILENTLY,
                place,
                "The text of this record is missing and no record states who removed it");
          } else if (!order.remainder().equals(left.text().sha256())) {
            check.fault(
                ChainFault.Kind.EDITED, place, "The rest of this record is not what was left");
          }
        });
  }
}

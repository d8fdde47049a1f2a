package org.standproud.audit.chain;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.standproud.audit.Withholding;

/**
 * Holds texts that are gone against the records in the chain that say who took them away: nothing
 * may be missing silently, and what is left must be what was said to be left.
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
                "The text of this record is gone and no record says who took it away");
          } else if (!order.remainder().equals(left.text().sha256())) {
            check.fault(
                ChainFault.Kind.EDITED, place, "What is left of this record is not what was left");
          }
        });
  }
}

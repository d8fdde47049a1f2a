package org.standproud.advice.compare;

import org.jspecify.annotations.Nullable;
import org.standproud.advice.DecidingNumber;
import org.standproud.advice.Quantity;
import org.standproud.advice.Wording;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Margin;
import org.standproud.setup.Band;
import org.standproud.setup.units.QuantityKind;

/**
 * How far a card was from flipping in one set-up, in the caller's units.
 *
 * @param value likely value compared
 * @param limit the value it is compared with
 * @param clearance distance between them, positive on the good side
 * @param adverse the same at the worst ends of the bands
 */
public record Reserve(Quantity value, Quantity limit, Quantity clearance, Quantity adverse) {

  /** The distance of a card; null if no number decides it. */
  static @Nullable Reserve of(CardTrace card, Wording wording) {
    Margin margin = card.margin();
    if (margin == null || margin.dimension() == null) {
      return null;
    }
    QuantityKind kind = DecidingNumber.kind(card, margin.dimension());
    return new Reserve(
        wording.quantity("value", kind, Band.exactly(margin.value())),
        wording.quantity("limit", kind, Band.exactly(margin.threshold())),
        wording.quantity("clearance", kind, Band.exactly(margin.clearance())),
        wording.quantity("adverse", kind, Band.exactly(margin.adverse())));
  }
}

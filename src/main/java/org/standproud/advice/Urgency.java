package org.standproud.advice;

import java.util.Comparator;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;

/**
 * The order of findings, as a foreman would give them: first what must not run; among those, what
 * does not fit or collides, then an impossible number, then what happens in more draws; among
 * equals, what lets go, then what is farther past its limit.
 */
final class Urgency {

  static final Comparator<CardTrace> FIRST =
      Comparator.comparing(CardTrace::severity, Comparator.reverseOrder())
          .thenComparing(card -> card.kind() == Kind.OPEN)
          .thenComparing(Urgency::place)
          .thenComparing(CardTrace::share, Comparator.reverseOrder())
          .thenComparing(card -> !lets(card))
          .thenComparing(Urgency::past, Comparator.reverseOrder())
          .thenComparing(CardTrace::id);

  private Urgency() {}

  private static int place(CardTrace card) {
    if (card.severity() != Severity.STOP) {
      return 0;
    }
    Protects protects = card.card().protects();
    return switch (protects) {
      case REACH -> 0;
      case DATA -> 1;
      default -> 2;
    };
  }

  /** Whether it is about the stock letting go. */
  private static boolean lets(CardTrace card) {
    Protects protects = card.card().protects();
    return protects == Protects.HOLDING || protects == Protects.DIRECTION;
  }

  /** Likely distance past its limit, as a fraction of the larger; 1 if no number decides. */
  private static double past(CardTrace card) {
    Margin margin = card.margin();
    if (margin == null) {
      return 1;
    }
    double larger = Math.max(Math.abs(margin.value()), Math.abs(margin.threshold()));
    return larger == 0 ? 0 : -margin.clearance() / larger;
  }
}

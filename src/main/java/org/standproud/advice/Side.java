package org.standproud.advice;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Condition.Comparison;
import org.standproud.rules.language.Condition.Relation;
import org.standproud.rules.language.Term;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Margin;

/** The bad end of a number's draws. */
public enum Side {
  /** Less is worse. */
  LOW,
  /** More is worse. */
  HIGH,
  /** Neither, or not known. */
  BOTH;

  /** The bad side of a fact for one card: the side where the card begins to fire. */
  static Side of(Fact fact, CardTrace trace) {
    Side whole = of(fact, trace.margin());
    if (whole != BOTH) {
      return whole;
    }
    for (ConditionTrace condition : trace.conditions()) {
      Side side = of(fact, condition.margin());
      if (side != BOTH) {
        return side;
      }
    }
    return BOTH;
  }

  private static Side of(Fact fact, @Nullable Margin margin) {
    if (margin == null) {
      return BOTH;
    }
    Comparison compared = margin.compared();
    Side left = ofLeft(margin);
    return is(compared.left(), fact) ? left : is(compared.right(), fact) ? left.other() : BOTH;
  }

  /** The bad side of the left side of a comparison. */
  static Side ofLeft(Margin margin) {
    Relation relation = margin.compared().relation();
    return switch (relation) {
      case LESS, AT_MOST -> margin.holds() ? LOW : HIGH;
      case MORE, AT_LEAST -> margin.holds() ? HIGH : LOW;
      case EQUAL, NOT_EQUAL -> BOTH;
    };
  }

  private Side other() {
    return this == LOW ? HIGH : this == HIGH ? LOW : BOTH;
  }

  private static boolean is(Term term, Fact fact) {
    return term instanceof Term.Measured measured && measured.fact().equals(fact)
        || term instanceof Term.Member member && member.list().equals(fact);
  }
}

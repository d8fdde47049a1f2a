package org.standproud.rules.trace;

import org.standproud.rules.language.Condition;
import org.standproud.setup.Band;

/** How far a comparison is from holding. */
enum Clearance {
  BELOW,
  ABOVE,
  APART,
  TOGETHER;

  static Clearance of(Condition.Relation relation, boolean holds) {
    return switch (relation) {
      case LESS, AT_MOST -> holds ? ABOVE : BELOW;
      case MORE, AT_LEAST -> holds ? BELOW : ABOVE;
      case EQUAL -> holds ? APART : TOGETHER;
      case NOT_EQUAL -> holds ? TOGETHER : APART;
    };
  }

  double likely(Band left, Band right) {
    return adverse(Band.exactly(left.likely()), Band.exactly(right.likely()));
  }

  double adverse(Band left, Band right) {
    return switch (this) {
      case BELOW -> right.low() - left.high();
      case ABOVE -> left.low() - right.high();
      case APART -> Math.max(0, Math.max(right.low() - left.high(), left.low() - right.high()));
      case TOGETHER -> -Math.max(left.high() - right.low(), right.high() - left.low());
    };
  }
}

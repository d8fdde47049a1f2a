package org.standproud.rules.trace;

import java.util.Arrays;
import org.hipparchus.util.KthSelector;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Estimate;
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
    return of(left.likely(), right.likely());
  }

  double of(double left, double right) {
    return switch (this) {
      case BELOW -> right - left;
      case ABOVE -> left - right;
      case APART -> Math.abs(left - right);
      case TOGETHER -> -Math.abs(left - right);
    };
  }

  /**
   * The clearance left when a share of the draws is left out, the worst first: where it turns
   * negative, the card's condition holds in more draws than that share. A draw in which the set-up
   * lets go counts as clear. NaN if no draw has a number.
   */
  double adverse(Estimate.Known left, Estimate.Known right, double level) {
    int draws = Math.max(left.size(), right.size());
    if (draws == 1) {
      return of(left.at(0, 1), right.at(0, 1));
    }
    double[] each = new double[draws];
    int finite = 0;
    for (int draw = 0; draw < draws; draw++) {
      double clearance = of(left.at(draw, draws), right.at(draw, draws));
      if (Double.isFinite(clearance)) {
        each[finite++] = clearance;
      }
    }
    int place = Math.min(finite - 1, (int) (level * draws));
    return finite == 0
        ? Double.NaN
        : new KthSelector()
            .select(finite == draws ? each : Arrays.copyOf(each, finite), null, place);
  }
}

package org.standproud.rules.beside;

import org.jspecify.annotations.Nullable;
import org.standproud.rules.language.Condition.Relation;
import org.standproud.rules.language.Truth;
import org.standproud.setup.Band;

/** How far hand-written conditions are from flipping: the numbers compared, kept as they are. */
public record Distance(Relation relation, boolean holds, int place, Band left, Band right) {

  /** What can be said of the comparison. */
  public Truth truth() {
    return relation.of(left, right);
  }

  /** Distance between the likely values, negative by how much the comparison holds. */
  public double clearance() {
    double gap = left.likely() - right.likely();
    double toHold =
        switch (relation) {
          case LESS, AT_MOST -> gap;
          case MORE, AT_LEAST -> -gap;
          case EQUAL -> Math.abs(gap);
          case NOT_EQUAL -> -Math.abs(gap);
        };
    return holds ? toHold : -toHold;
  }

  double relative() {
    double larger = Math.max(Math.abs(left.likely()), Math.abs(right.likely()));
    return larger == 0 ? 0 : Math.abs(clearance()) / larger;
  }

  /** The one that decides among several: see the javadoc of the margin finder. */
  public static @Nullable Distance among(
      Truth[] likely, @Nullable Distance[] of, boolean holds, boolean allNeeded) {
    Distance farthest = null;
    Distance nearest = null;
    boolean against = false;
    for (int i = 0; i < of.length; i++) {
      Distance one = of[i];
      if ((holds ? likely[i] : likely[i].not()) == Truth.of(!allNeeded)) {
        against = true;
        if (one == null) {
          return null;
        }
        farthest = farthest == null || one.relative() >= farthest.relative() ? one : farthest;
      }
      nearest =
          one != null && (nearest == null || one.relative() < nearest.relative()) ? one : nearest;
    }
    return against ? farthest : nearest;
  }
}

package org.standproud.mechanics.cutter;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.request.CutterFields;

/**
 * Rounding of an edge after use over its rounding when new. Common practice, no source: the factors
 * order the states of an edge. An unknown state spans all of them.
 */
public final class EdgeRounding {

  /** What is taken for the edge after use. */
  public static final Assumption ASSUMPTION =
      new Assumption(
          CutterFields.EDGE,
          "the rounding of an edge in use is 1 to 4 times that of a new one, by its state",
          "common practice, no source");

  private EdgeRounding() {}

  /**
   * Rounding in use over rounding when new, at least 1.
   *
   * @param edge state of the edges; null if not known
   */
  public static Band growth(@Nullable EdgeCondition edge) {
    if (edge == null) {
      return new Band(1, 1.5, 4);
    }
    return switch (edge) {
      case FRESH -> Band.exactly(1);
      case USED -> new Band(1, 1.5, 2);
      case WORN, CHIPPED -> new Band(1.5, 2, 4);
    };
  }
}

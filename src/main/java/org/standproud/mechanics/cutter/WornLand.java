package org.standproud.mechanics.cutter;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.request.CutterFields;

/**
 * Width of the land worn behind an edge. The greatest is the uniform wear of 0.3 mm at which ISO
 * 8688-1:1989 and 8688-2:1989 end the life of a milling tool (from memory); between new and worn:
 * common practice, no source.
 */
public final class WornLand {

  /** What is taken for the land. */
  public static final Assumption ASSUMPTION =
      new Assumption(
          CutterFields.EDGE,
          "a land of 0.01 to 0.3 mm, by the state of the edges, rubs on the waves of the cut",
          "ISO 8688-1:1989, greatest value; else common practice, no source");

  private WornLand() {}

  /**
   * Width in m.
   *
   * @param edge state of the edges; null if not known
   */
  public static Band widthM(@Nullable EdgeCondition edge) {
    if (edge == null) {
      return new Band(0.01e-3, 0.05e-3, 0.3e-3);
    }
    return switch (edge) {
      case FRESH -> new Band(0.01e-3, 0.02e-3, 0.05e-3);
      case USED -> new Band(0.03e-3, 0.08e-3, 0.15e-3);
      case WORN, CHIPPED -> new Band(0.1e-3, 0.2e-3, 0.3e-3);
    };
  }
}

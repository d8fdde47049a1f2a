package org.standproud.mechanics.finish;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;

/**
 * How much rougher a surface comes out than its feed marks alone, by the state of the edges.
 *
 * <p>Geometry is the least roughness; tearing, built-up edge and wear add to it. The factors are
 * common practice, no source: they order the states, they do not measure them. An unknown state
 * spans all of them.
 */
public final class EdgeRoughening {

  private EdgeRoughening() {}

  /**
   * Ra over the Ra of the feed marks, at least 1.
   *
   * @param edge state of the edges; null if not known
   */
  public static Band factor(@Nullable EdgeCondition edge) {
    if (edge == null) {
      return new Band(1, 2, 8);
    }
    return switch (edge) {
      case FRESH -> new Band(1, 1.5, 2);
      case USED -> new Band(1, 2, 3);
      case WORN -> new Band(1.5, 3, 5);
      case CHIPPED -> new Band(2, 4, 8);
    };
  }
}

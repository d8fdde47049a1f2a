package org.standproud.advice.job;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Blank;
import org.standproud.setup.StockSurface;

/**
 * The piece between two passes.
 *
 * @param blank what it started from
 * @param lengthM length in m
 * @param thicknessM thickness in m
 * @param heightM height in m
 * @param milled the faces that have been milled
 */
record Piece(Blank blank, double lengthM, double thicknessM, double heightM, Set<Face> milled) {

  Piece {
    milled = Set.copyOf(milled);
  }

  static Piece of(Blank blank) {
    return new Piece(blank, blank.lengthM(), blank.thicknessM(), blank.heightM(), Set.of());
  }

  /** The piece after something was taken off one face, in m. */
  Piece after(Face face, double takenM) {
    Set<Face> all = EnumSet.of(face);
    all.addAll(milled);
    return switch (face) {
      case SIDE_A, SIDE_B -> new Piece(blank, lengthM, thicknessM - takenM, heightM, all);
      case EDGE_A, EDGE_B -> new Piece(blank, lengthM, thicknessM, heightM - takenM, all);
      case END_A, END_B -> new Piece(blank, lengthM - takenM, thicknessM, heightM, all);
    };
  }

  /** The condition of the worse of a face and its opposite; null if either is not known. */
  @Nullable StockSurface surface(Face face) {
    StockSurface one = surfaceOf(face);
    StockSurface other = surfaceOf(face.opposite());
    if (one == null || other == null) {
      return null;
    }
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** The high spot of a face and its opposite in m; null if it is not known. */
  @Nullable Double highSpotM(Face face) {
    boolean side = face == Face.SIDE_A || face == Face.SIDE_B;
    boolean milledBoth = milled.contains(face) && milled.contains(face.opposite());
    return side && !milledBoth ? blank.highSpotM() : null;
  }

  /** Whether a face and its opposite are milled or as flat as that: packing would not help. */
  boolean isFlat(Face face) {
    return surface(face) == StockSurface.MACHINED;
  }

  private @Nullable StockSurface surfaceOf(Face face) {
    if (milled.contains(face)) {
      return StockSurface.MACHINED;
    }
    boolean side = face == Face.SIDE_A || face == Face.SIDE_B;
    return side || blank.edges() == null ? blank.surface() : blank.edges();
  }
}

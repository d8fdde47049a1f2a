package org.standproud.advice.job;

import java.util.List;
import org.standproud.setup.Worded;

/** The ways to hold the plate in a vise while one of its faces is milled. */
enum Holding implements Worded {
  /** Lying on parallels, gripped by its long edges, a broad side up. */
  FLAT("flat on parallels in the vise, gripped by the long edges"),
  /** Standing on a long edge; the broad side is milled above the jaws, in two clampings. */
  STANDING_SIDE(
      "standing in the vise, half of the broad side at a time with the side of the cutter"),
  /** Standing on a long edge, the other edge up. */
  ON_EDGE("standing on a long edge in the vise"),
  /** Standing on an end, the other end up. */
  ON_END("standing on end in the vise, squared up");

  private final String words;

  Holding(String words) {
    this.words = words;
  }

  /** The ways that reach a face, the usual one first. */
  static List<Holding> of(Face face) {
    return switch (face) {
      case SIDE_A, SIDE_B -> List.of(FLAT, STANDING_SIDE);
      case EDGE_A, EDGE_B -> List.of(ON_EDGE);
      case END_A, END_B -> List.of(ON_END);
    };
  }

  /** One of the two faces that the jaws grip. */
  Face gripped() {
    return this == FLAT ? Face.EDGE_A : Face.SIDE_A;
  }

  /** Clampings that it takes for the whole face. */
  int clampings() {
    return this == STANDING_SIDE ? 2 : 1;
  }

  @Override
  public String words() {
    return words;
  }
}

package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.List;
import org.standproud.setup.Worded;

/**
 * The order in which the faces are milled. All of them are common practice, no source: broad sides
 * before edges, edges before ends, opposite faces one after the other, the finished face down or
 * against the fixed jaw.
 */
enum Sequence implements Worded {
  /** Broad sides in turn, the first one finished last, so that the plate may warp before it is. */
  ALTERNATE_SIDES("broad sides in turn, then edges, then ends"),
  /** One broad side to locate from, the edges square to it, then the other side. */
  ONE_SIDE_FIRST("one broad side, the edges square to it, the other side, then ends"),
  /** The edges first, so that the plate can be gripped by milled faces when it lies flat. */
  EDGES_FIRST("edges, then broad sides in turn, then ends");

  private final String words;

  Sequence(String words) {
    this.words = words;
  }

  /** The cuts in order. */
  List<FaceCut> cuts(Removal removal) {
    List<FaceCut> cuts = new ArrayList<>();
    switch (this) {
      case ALTERNATE_SIDES -> {
        alternate(removal, cuts);
        both(removal, Face.EDGE_A, cuts);
      }
      case ONE_SIDE_FIRST -> {
        removal.whole(Face.SIDE_A).ifPresent(cuts::add);
        both(removal, Face.EDGE_A, cuts);
        removal.whole(Face.SIDE_B).ifPresent(cuts::add);
      }
      case EDGES_FIRST -> {
        both(removal, Face.EDGE_A, cuts);
        alternate(removal, cuts);
      }
    }
    both(removal, Face.END_A, cuts);
    return cuts;
  }

  private static void both(Removal removal, Face first, List<FaceCut> into) {
    removal.whole(first).ifPresent(into::add);
    removal.whole(first.opposite()).ifPresent(into::add);
  }

  private static void alternate(Removal removal, List<FaceCut> into) {
    if (removal.rough(Face.SIDE_A).isEmpty()) {
      both(removal, Face.SIDE_A, into);
      return;
    }
    removal.rough(Face.SIDE_A).ifPresent(into::add);
    removal.whole(Face.SIDE_B).ifPresent(into::add);
    removal.finish(Face.SIDE_A).ifPresent(into::add);
  }

  @Override
  public String words() {
    return words;
  }
}

package org.standproud.setup;

import org.jspecify.annotations.Nullable;

/**
 * A support that touches the side of the standing plate above the jaws. It pushes and never pulls.
 *
 * @param kind what it is
 * @param side the side of the plate on which it stands: on the side of the fixed jaw it takes a
 *     push toward the fixed jaw
 * @param alongM place of its middle along X from the middle of the stock in m
 * @param lengthM how long it is along the jaws in m
 * @param heightM height above the jaw top at which it touches, which is its top, in m
 * @param stiffnessNPerM its stiffness across the jaws there in N/m; null if not known
 * @param holdsN push that it withstands before it slides or tips in N; null if not known
 * @param preloadN push with which it was set against the plate in N; null if it just touches
 */
public record Backing(
    BackingKind kind,
    JawSide side,
    double alongM,
    double lengthM,
    double heightM,
    @Nullable Band stiffnessNPerM,
    @Nullable Band holdsN,
    @Nullable Band preloadN) {

  /** The room it takes beside the stock. */
  public Clamp body() {
    return new Clamp(side, alongM, lengthM, null, heightM);
  }
}

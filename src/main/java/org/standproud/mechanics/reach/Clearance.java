package org.standproud.mechanics.reach;

/**
 * Room between two bodies along the whole pass.
 *
 * @param moving a body that goes with the cutter
 * @param standing a body that stands on the table
 * @param marginM least distance in m; negative: how far one goes into the other, measured along Y
 *     or Z, whichever is less
 */
public record Clearance(Body moving, Body standing, double marginM) {

  /** Whether the two run into each other. */
  public boolean collides() {
    return marginM < 0;
  }
}

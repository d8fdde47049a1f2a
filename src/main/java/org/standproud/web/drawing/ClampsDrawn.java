package org.standproud.web.drawing;

import org.standproud.setup.Clamp;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;

/** Shared by the drawings of clamps beside the stock: their outer ends are cut short. */
final class ClampsDrawn {

  /** Drawn depth of a clamp in px; its real outward reach is not known. */
  static final double DEEP = 14;

  private ClampsDrawn() {}

  /** Distance from the middle of the stock to the farthest face of a clamp on a side, in m. */
  static double farthestM(Setup setup, JawSide side) {
    double thicknessM = setup.stock().thicknessM();
    return setup.hold().beside().stream()
        .filter(clamp -> clamp.side() == side)
        .mapToDouble(clamp -> clamp.faceM(thicknessM))
        .max()
        .orElse(0);
  }

  /** Height of the highest clamp and of a stop whose height is given above the jaw top, in m. */
  static double highestM(Setup setup) {
    Double stopM = setup.hold().stopHeightM();
    double clampM = setup.hold().beside().stream().mapToDouble(Clamp::heightM).max().orElse(0);
    return Math.max(clampM, stopM == null ? 0 : stopM);
  }
}
